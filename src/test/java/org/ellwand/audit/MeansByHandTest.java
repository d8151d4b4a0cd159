package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalInt;
import org.ellwand.acoustics.Resolution;
import org.ellwand.measurement.SharedBy;
import org.junit.jupiter.api.Test;

/** Means over ears, heads and units and what their scatter leaves, worked by hand; levels are invented. */
class MeansByHandTest {
    private static final String RULE =
            "quantity: attenuation, level: 94 dB SPL, bands: 1 kHz, statistic: mean, limit: at least 10 dB, ";

    private final Bench bench = new Bench("yard", Resolution.OCTAVE)
            .cause("calibration", 0.7, SharedBy.SESSION, false)
            .cause("insertion", 0.5, SharedBy.INSERTION, false)
            .cause("reading", 0.2, SharedBy.READING, true);

    private MeansByHandTest worn(String who, double attenuationDb) {
        bench.reading("device=open ear, stimulus=n94, " + who, 1000, 80)
                .reading("device=Skerry, stimulus=n94, insertion=1, " + who, 1000, 80 - attenuationDb);
        return this;
    }

    /** Ears of 20 and 22 dB are one head of 21 dB, the other head has 25 dB: 23 dB, s/√2 = 2 dB with one degree of freedom. */
    @Test
    void earsAreAveragedWithinAHead() {
        worn("head=a, ear=left, side=left", 20)
                .worn("head=a, ear=right, side=right", 22)
                .worn("head=b, ear=left b, side=left", 25);
        Judgement judgement = Bench.judge(RULE + "ears: mean", bench.session());
        assertThat(judgement.value().orElseThrow()).isCloseTo(23, within(1e-9));
        List<Contribution> parts = judgement.cells().get(0).contributions();
        assertThat(parts).hasSize(1);
        assertThat(parts.get(0).effect()).isCloseTo(2, within(1e-9));
        assertThat(parts.get(0).instance()).isEqualTo("heads");
        assertThat(parts.get(0).degreesOfFreedom()).isEqualTo(OptionalInt.of(1));
        assertThat(judgement.cells().get(0).insertions()).isEqualTo(3);
        assertThat(judgement.cells()).hasSize(1);
        assertThat(judgement.cells().get(0).conditions().get("head")).isEmpty();
        Judgement each = Bench.judge(RULE + "ears: each", bench.session());
        assertThat(each.cells()).hasSize(3);
        assertThat(each.value().orElseThrow()).isCloseTo(20, within(1e-9));
    }

    /** Three units of 20, 21 and 25 dB, of which the first was measured in two sessions: 22 dB, s/√3 = √7/√3 dB. */
    @Test
    void unitsOfAMeanScatter() {
        bench.reading("device=open ear, stimulus=n94", 1000, 80);
        double[] attenuations = {20, 21, 25};
        for (int i = 0; i < attenuations.length; i++) {
            bench.reading("device=Skerry, stimulus=n94, insertion=1, unit=" + i, 1000, 80 - attenuations[i]);
        }
        Judgement judgement = Bench.judge(RULE + "units: mean", bench.session());
        assertThat(judgement.value().orElseThrow()).isCloseTo(22, within(1e-9));
        List<Contribution> parts = judgement.cells().get(0).contributions();
        assertThat(parts.get(0).effect()).isCloseTo(Math.sqrt(7 / 3.0), within(1e-9));
        assertThat(parts.get(0).instance()).isEqualTo("units");
        assertThat(parts.get(0).degreesOfFreedom()).isEqualTo(OptionalInt.of(2));
        // The one reading of the open ear is in all units alike.
        assertThat(parts.get(1).cause()).isEqualTo("reading");
        assertThat(parts.get(1).effect()).isCloseTo(0.2, within(1e-9));
        assertThat(parts).hasSize(2);
    }

    /** Of levels at the ear the calibration of the session is in all heads alike. */
    @Test
    void whatASessionSharesStaysBesideTheScatter() {
        worn("head=a, ear=a", 20).worn("head=b, ear=b", 24);
        Judgement judgement = Bench.judge(
                "quantity: output level, referred to: eardrum, level: 94 dB SPL, bands: 1 kHz, statistic: mean,"
                        + " ears: mean, limit: at most 90 dB SPL",
                bench.session());
        List<Contribution> parts = judgement.cells().get(0).contributions();
        assertThat(parts).extracting(Contribution::cause).containsExactly("observed scatter", "calibration");
        assertThat(parts.get(0).effect()).isCloseTo(2, within(1e-9));
        assertThat(parts.get(1).effect()).isCloseTo(0.7, within(1e-9));
    }

    /** One head of two ears: insertions and readings of each count half, and the declared scatter of ears beside them. */
    @Test
    void ofOneHeadDeclaredSizesServe() {
        bench.cause("ear", 2, SharedBy.EAR, false);
        worn("head=a, ear=left, side=left", 20).worn("head=a, ear=right, side=right", 22);
        Judgement judgement = Bench.judge(RULE + "ears: mean", bench.session());
        assertThat(judgement.value().orElseThrow()).isCloseTo(21, within(1e-9));
        double square = judgement.cells().get(0).contributions().stream()
                .mapToDouble(c -> c.effect() * c.effect())
                .sum();
        // Two ears, two insertions and four readings, each over two.
        assertThat(square).isCloseTo((2 * 4 + 2 * 0.25 + 4 * 0.04) / 4, within(1e-9));
        assertThat(judgement.standardUncertainty().orElseThrow()).isCloseTo(Math.sqrt(square), within(1e-9));
    }

    @Test
    void twoEarsWithoutHeadsAreRefused() {
        worn("ear=left", 20).worn("ear=right", 22);
        assertThatThrownBy(() -> Bench.judge(RULE + "ears: mean", bench.session()))
                .hasMessageContaining("'ears: mean' over several ears needs 'head' in the session files");
    }

    /** Between firmwares, unit by unit: differences of 2 and 4 dB, mean 3 dB and 2/√2/√2 = 1 dB. */
    @Test
    void pairsOfUnitsAreAveragedAsDifferences() {
        bench.reading("device=open ear, stimulus=n94", 1000, 80);
        double[][] levels = {{50, 52}, {51, 55}};
        for (int unit = 0; unit < 2; unit++) {
            String of = "device=Skerry, stimulus=n94, insertion=1, unit=" + unit + ", firmware=";
            bench.reading(of + "2.0", 1000, levels[unit][1]).reading(of + "2.1", 1000, levels[unit][0]);
        }
        Judgement judgement = Bench.judge(
                "quantity: attenuation, level: 94 dB SPL, bands: 1 kHz, statistic: mean, units: mean,"
                        + " between: {firmware: [\"2.1\", \"2.0\"]}, limit: at least 1 dB",
                bench.session());
        assertThat(judgement.value().orElseThrow()).isCloseTo(3, within(1e-9));
        assertThat(judgement.cells().get(0).contributions().get(0).effect()).isCloseTo(1, within(1e-9));
    }
}
