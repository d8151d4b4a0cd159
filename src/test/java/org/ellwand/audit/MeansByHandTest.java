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

    private static final String FIRMWARES = "quantity: attenuation, level: 94 dB SPL, bands: 1 kHz, statistic: mean,"
            + " between: {firmware: [\"2.1\", \"2.0\"]}, units: mean, ";

    private MeansByHandTest units(String firmware, int from, double... attenuationsDb) {
        for (int i = 0; i < attenuationsDb.length; i++) {
            bench.reading(
                    "device=Skerry, stimulus=n94, insertion=1, firmware=" + firmware + ", unit=" + (from + i),
                    1000,
                    80 - attenuationsDb[i]);
        }
        return this;
    }

    /** Other units on either side: 20, 22 and 17, 18, 19 dB; 3 dB, with 1 dB of one and 1/√3 dB of the other degree. */
    @Test
    void meansOverOtherUnitsAreComparedWithTheScatterOfBoth() {
        bench.reading("device=open ear, stimulus=n94", 1000, 80);
        units("2.1", 0, 20, 22).units("2.0", 5, 17, 18, 19);
        Judgement judgement = Bench.judge(FIRMWARES + "limit: at least 1 dB", bench.session());
        assertThat(judgement.value().orElseThrow()).isCloseTo(3, within(1e-9));
        List<Contribution> parts = judgement.cells().get(0).contributions();
        assertThat(parts).hasSize(2);
        assertThat(parts.get(0).effect()).isCloseTo(1, within(1e-9));
        assertThat(parts.get(0).degreesOfFreedom()).isEqualTo(OptionalInt.of(1));
        assertThat(parts.get(1).effect()).isCloseTo(1 / Math.sqrt(3), within(1e-9));
        assertThat(parts.get(1).degreesOfFreedom()).isEqualTo(OptionalInt.of(2));
        assertThat(judgement.cells().get(0).insertions()).isEqualTo(5);
    }

    /** As a ratio 21/18: the scatter of the first over 18; that of the second as it makes 21/17, 21/18 and 21/19. */
    @Test
    void aRatioOfMeansOverOtherUnits() {
        bench.reading("device=open ear, stimulus=n94", 1000, 80);
        units("2.1", 0, 20, 22).units("2.0", 5, 17, 18, 19);
        Judgement judgement = Bench.judge(FIRMWARES + "compared by: ratio, limit: 1, sense: at least", bench.session());
        assertThat(judgement.value().orElseThrow()).isCloseTo(21 / 18.0, within(1e-9));
        List<Contribution> parts = judgement.cells().get(0).contributions();
        assertThat(parts.get(0).effect()).isCloseTo(1 / 18.0, within(1e-9));
        double mean = (21 / 17.0 + 21 / 18.0 + 21 / 19.0) / 3;
        double squares = Math.pow(21 / 17.0 - mean, 2) + Math.pow(21 / 18.0 - mean, 2) + Math.pow(21 / 19.0 - mean, 2);
        assertThat(parts.get(1).effect()).isCloseTo(Math.sqrt(squares / 6), within(1e-9));
    }

    /** One unit against two: no scatter of the one, so declared sizes serve for both sides, and it is not firm. */
    @Test
    void oneUnitOnASideHasNoScatter() {
        bench.reading("device=open ear, stimulus=n94", 1000, 80);
        units("2.1", 0, 20, 22).units("2.0", 5, 18);
        Judgement judgement = Bench.judge(FIRMWARES + "limit: at least 1 dB", bench.session());
        assertThat(judgement.value().orElseThrow()).isCloseTo(3, within(1e-9));
        // Insertions of 0.5 and readings of 0.2 dB: (0.25 + 0.04)(1/2 + 1).
        double square = judgement.cells().get(0).contributions().stream()
                .mapToDouble(c -> c.effect() * c.effect())
                .sum();
        assertThat(square).isCloseTo(0.29 * 1.5, within(1e-9));
        assertThat(judgement.verdict()).isEqualTo(Verdict.MARGINAL);
    }

    /** Two ears of one head, one with insertions 2 dB apart, of which its mean has 1 dB and the head half; nothing declared. */
    @Test
    void scatterOfInsertionsWithinAHeadCountsByItsWeight() {
        Bench plain = new Bench("yard", Resolution.OCTAVE).cause("ear", 2, SharedBy.EAR, false);
        for (String who : List.of("head=a, ear=left", "head=a, ear=right")) {
            double apart = who.contains("left") ? 2 : 0;
            plain.reading("device=open ear, take=1, stimulus=n94, " + who, 1000, 80)
                    .reading("device=open ear, take=2, stimulus=n94, " + who, 1000, 80)
                    .reading("device=Skerry, stimulus=n94, insertion=1, " + who, 1000, 60)
                    .reading("device=Skerry, stimulus=n94, insertion=2, " + who, 1000, 60 + apart);
        }
        List<Contribution> parts =
                Bench.judge(RULE + "ears: mean", plain.session()).cells().get(0).contributions();
        assertThat(parts)
                .filteredOn(c -> c.instance().equals("insertions"))
                .singleElement()
                .satisfies(c -> assertThat(c.effect()).isCloseTo(0.5, within(1e-9)));
        assertThat(parts)
                .filteredOn(c -> c.cause().equals("ear"))
                .hasSize(2)
                .allSatisfy(c -> assertThat(c.effect()).isCloseTo(1, within(1e-9)));
    }

    /** Sounds of two levels are not averaged with one another. */
    @Test
    void eachSoundHasAMeanOfItsOwn() {
        worn("head=a, ear=a", 20).worn("head=b, ear=b", 22);
        for (String who : List.of("head=a, ear=a", "head=b, ear=b")) {
            bench.reading("device=open ear, stimulus=n78, " + who, 1000, 64)
                    .reading("device=Skerry, stimulus=n78, insertion=1, " + who, 1000, 34);
        }
        Judgement judgement =
                Bench.judge(RULE.replace("level: 94 dB SPL", "level: all") + "ears: mean", bench.session());
        assertThat(judgement.cells()).extracting(CellResult::value).containsExactlyInAnyOrder(21.0, 30.0);
    }
}
