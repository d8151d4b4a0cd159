package org.ellwand.acoustics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.ellwand.acoustics.Spectrum.Level;
import org.junit.jupiter.api.Test;

class SpectrumTest {
    private static final Band OCTAVE_1K = new Band(Resolution.OCTAVE, 0);

    /** Sums by hand: n equal sources add 10 lg n dB; 60 dB and 50 dB make 10 lg 1.1 + 60 = 60.414 dB. */
    @Test
    void energiesAdd() {
        assertThat(Energy.sumDb(60, 60)).isCloseTo(63.0103, within(1e-4));
        assertThat(Energy.sumDb(60, 50)).isCloseTo(60.4139, within(1e-4));
        assertThat(Energy.sumDb(-20)).isCloseTo(-20, within(1e-12));
        assertThat(Energy.sumDb()).isEqualTo(Double.NEGATIVE_INFINITY);
    }

    @Test
    void threeThirdsMakeAnOctave() {
        Spectrum thirds =
                Spectrum.of(Resolution.THIRD_OCTAVE, Map.of(800.0, 60.0, 1000.0, 60.0, 1250.0, 60.0, 1600.0, 60.0));
        Spectrum octaves = thirds.sumTo(Resolution.OCTAVE);
        assertThat(octaves.bandList()).containsExactly(OCTAVE_1K);
        assertThat(octaves.at(OCTAVE_1K).orElseThrow().levelDb()).isCloseTo(64.7712, within(1e-4));
        assertThat(octaves.at(OCTAVE_1K).orElseThrow().bound()).isEqualTo(Bound.MEASURED);
    }

    @Test
    void fourTwelfthsMakeAThird() {
        Map<Band, Level> twelfths = new java.util.TreeMap<>();
        for (int x = -2; x <= 1; x++) {
            twelfths.put(new Band(Resolution.TWELFTH_OCTAVE, x), Level.measured(50));
        }
        Spectrum third = new Spectrum(Resolution.TWELFTH_OCTAVE, twelfths).sumTo(Resolution.THIRD_OCTAVE);
        assertThat(third.bandList()).containsExactly(new Band(Resolution.THIRD_OCTAVE, 0));
        assertThat(third.at(new Band(Resolution.THIRD_OCTAVE, 0)).orElseThrow().levelDb())
                .isCloseTo(56.0206, within(1e-4));
    }

    @Test
    void aBoundInTheSumMakesItABound() {
        assertThat(octaveOf(Bound.AT_LEAST, Bound.MEASURED)).isEqualTo(Bound.AT_LEAST);
        assertThat(octaveOf(Bound.AT_MOST, Bound.AT_MOST)).isEqualTo(Bound.AT_MOST);
    }

    @Test
    void boundsOfBothKindsSayNothing() {
        assertThat(thirds(Bound.AT_LEAST, Bound.AT_MOST)
                        .sumTo(Resolution.OCTAVE)
                        .bands())
                .isEmpty();
    }

    @Test
    void sameResolutionIsTheSameSpectrumAndFinerIsNone() {
        Spectrum octave = Spectrum.of(Resolution.OCTAVE, Map.of(1000.0, 60.0));
        assertThat(octave.sumTo(Resolution.OCTAVE)).isSameAs(octave);
        assertThatThrownBy(() -> octave.sumTo(Resolution.THIRD_OCTAVE))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("octave levels have no third-octave sums");
    }

    @Test
    void spectraOfTheSameLevelsAndBoundsAreEqual() {
        Spectrum spectrum = Spectrum.of(Resolution.OCTAVE, Map.of(500.0, 58.0, 1000.0, 60.0));
        Spectrum same = Spectrum.measured(
                Resolution.OCTAVE, List.of(new Band(Resolution.OCTAVE, -1), OCTAVE_1K), new double[] {58, 60});
        assertThat(same).isEqualTo(spectrum).hasSameHashCodeAs(spectrum);
        assertThat(Spectrum.of(Resolution.OCTAVE, Map.of(500.0, 58.0, 1000.0, 61.0)))
                .isNotEqualTo(spectrum)
                .doesNotHaveSameHashCodeAs(spectrum);
        assertThat(Spectrum.of(Resolution.OCTAVE, Map.of(500.0, 58.0, 2000.0, 60.0)))
                .isNotEqualTo(spectrum)
                .doesNotHaveSameHashCodeAs(spectrum);
        assertThat(Spectrum.of(Resolution.OCTAVE, Map.of()))
                .isNotEqualTo(Spectrum.of(Resolution.THIRD_OCTAVE, Map.of()));
        assertThat(thirds(Bound.MEASURED, Bound.AT_MOST)).isNotEqualTo(thirds(Bound.MEASURED, Bound.MEASURED));
    }

    @Test
    void oneBoundIsEnoughNotToBeMeasured() {
        Spectrum bounded = thirds(Bound.AT_LEAST, Bound.MEASURED);
        assertThat(bounded.isMeasured()).isFalse();
        assertThat(bounded.boundOf(0)).isEqualTo(Bound.AT_LEAST);
        assertThat(bounded.boundOf(1)).isEqualTo(Bound.MEASURED);
        assertThat(thirds(Bound.MEASURED, Bound.MEASURED).isMeasured()).isTrue();
        assertThat(thirds(Bound.MEASURED, Bound.MEASURED).boundOf(0)).isEqualTo(Bound.MEASURED);
    }

    /** What is at least so much is, with its sign turned, at most that. */
    @Test
    void aTurnedSignTurnsABound() {
        assertThat(Bound.AT_LEAST.negated()).isEqualTo(Bound.AT_MOST);
        assertThat(Bound.AT_MOST.negated()).isEqualTo(Bound.AT_LEAST);
        assertThat(Bound.MEASURED.negated()).isEqualTo(Bound.MEASURED);
    }

    @Test
    void bandsStandLowestFirstAndAMissingOneIsNotThere() {
        Spectrum spectrum = Spectrum.of(Resolution.OCTAVE, Map.of(2000.0, 61.0, 500.0, 58.0));
        assertThat(spectrum.levelsDb()).containsExactly(58, 61);
        assertThat(spectrum.levels().keySet()).extracting(Band::nominalHz).containsExactly(500.0, 2000.0);
        assertThat(spectrum.indexOf(Band.nearest(Resolution.OCTAVE, 2000))).isEqualTo(1);
        assertThat(spectrum.at(OCTAVE_1K)).isEmpty();
    }

    @Test
    void itsNumbersAreItsOwn() {
        double[] levels = {58};
        Spectrum spectrum = Spectrum.measured(Resolution.OCTAVE, List.of(OCTAVE_1K), levels);
        levels[0] = 0;
        spectrum.levelsDb()[0] = 0;
        assertThat(spectrum.levelDb(0)).isEqualTo(58);
    }

    @Test
    void whatIsNoSpectrumIsRefused() {
        List<Band> third = List.of(new Band(Resolution.THIRD_OCTAVE, 0));
        assertThatThrownBy(() -> Spectrum.measured(Resolution.OCTAVE, third, new double[] {60}))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageEndingWith("is not a band of octave");
        assertThatThrownBy(() -> Spectrum.measured(Resolution.THIRD_OCTAVE, third, new double[] {60, 61}))
                .hasMessage("one finite level for each band");
        assertThatThrownBy(() -> Spectrum.measured(Resolution.THIRD_OCTAVE, third, new double[] {Double.NaN}))
                .hasMessage("one finite level for each band");
        assertThatThrownBy(() -> Level.measured(Double.NEGATIVE_INFINITY)).hasMessage("a level is a finite number");
    }

    private static Bound octaveOf(Bound first, Bound second) {
        return thirds(first, second)
                .sumTo(Resolution.OCTAVE)
                .at(OCTAVE_1K)
                .orElseThrow()
                .bound();
    }

    private static Spectrum thirds(Bound first, Bound second) {
        return new Spectrum(
                Resolution.THIRD_OCTAVE,
                Map.of(
                        new Band(Resolution.THIRD_OCTAVE, -1),
                        new Level(60, first),
                        new Band(Resolution.THIRD_OCTAVE, 0),
                        new Level(60, second),
                        new Band(Resolution.THIRD_OCTAVE, 1),
                        Level.measured(60)));
    }
}
