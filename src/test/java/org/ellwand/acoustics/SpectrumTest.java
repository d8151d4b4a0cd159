package org.ellwand.acoustics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

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
