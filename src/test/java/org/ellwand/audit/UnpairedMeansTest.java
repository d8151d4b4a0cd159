package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.ellwand.acoustics.Resolution;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.SharedBy;
import org.ellwand.statistics.NormalStream;
import org.ellwand.statistics.Seeds;
import org.junit.jupiter.api.Test;

/**
 * Two firmwares in different units: the difference of the means, whose error is the sum of two scaled t, one for the scatter of
 * either side (Behrens 1929, Fisher 1935; JCGM 101:2008, 6.4.9). Its numbers were integrated with SciPy 1.17 from the densities
 * and the distribution function of t. With many units on either side it is what Welch (1947) approximates.
 */
class UnpairedMeansTest {
    private static final double[] NEW_DB = {20.1, 19.4, 20.9, 20.3, 19.8, 20.5};
    private static final double[] OLD_DB = {19.2, 19.9, 18.7, 19.6};

    private static final String RULE = "quantity: attenuation, level: 94 dB SPL, bands: 1 kHz, statistic: mean,"
            + " between: {firmware: [\"2.1\", \"2.0\"]}, limit: at least 0.3 dB, units: ";

    private static Bench bench(String id) {
        return new Bench(id, Resolution.OCTAVE)
                .cause("calibration", 0.7, SharedBy.SESSION, false)
                .cause("insertion", 0.5, SharedBy.INSERTION, false)
                .cause("reading", 0.2, SharedBy.READING, true)
                .reading("device=open ear, stimulus=n94", 1000, 80);
    }

    private static void units(Bench bench, String firmware, int from, double... attenuationsDb) {
        for (int i = 0; i < attenuationsDb.length; i++) {
            bench.reading(
                    "device=Skerry, stimulus=n94, insertion=1, firmware=" + firmware + ", unit=SN-" + (from + i),
                    1000,
                    80 - attenuationsDb[i]);
        }
    }

    private static Session bothInOne(int firstOld) {
        Bench bench = bench("line-01");
        units(bench, "2.1", 100, NEW_DB);
        units(bench, "2.0", firstOld, OLD_DB);
        return bench.session();
    }

    @Test
    void theDifferenceOfTheMeansHasTheScatterOfBothSides() {
        Judgement judgement = Bench.judge(RULE + "mean", bothInOne(200));
        assertThat(judgement.value().orElseThrow()).isCloseTo(20.16666667 - 19.35, within(1e-8));
        assertThat(judgement.standardUncertainty().orElseThrow()).isCloseTo(0.42062933, within(1e-5));
        assertThat(judgement.upper().orElseThrow() - judgement.value().orElseThrow())
                .isCloseTo(0.99391617, within(1e-5));
        assertThat(judgement.probability().orElseThrow()).isCloseTo(0.88440123, within(1e-5));
        assertThat(judgement.verdict()).isEqualTo(Verdict.MARGINAL);
        assertThat(judgement.notes())
                .contains(
                        "other units on either side: the mean over 6 is held against the mean over 4, and the scatter of"
                                + " both counts");
    }

    /** se = √(s₁²/n₁ + s₂²/n₂); with 200 and 300 units t and Behrens's numbers are normal but for 0.5 %. */
    @Test
    void ofManyUnitsItIsWelchsStandardError() {
        NormalStream draw = new NormalStream(Seeds.of("welch"));
        double[] one = draws(draw, 200, 20, 0.5);
        double[] other = draws(draw, 300, 20.6, 0.7);
        Bench bench = bench("line-01");
        units(bench, "2.1", 1000, one);
        units(bench, "2.0", 5000, other);
        Judgement judgement = Bench.judge(RULE + "mean", bench.session());
        double se = Math.sqrt(variance(one) / one.length + variance(other) / other.length);
        assertThat(judgement.standardUncertainty().orElseThrow()).isCloseTo(se, within(0.005 * se));
        assertThat(judgement.value().orElseThrow()).isCloseTo(mean(one) - mean(other), within(1e-9));
    }

    /** Of levels at the eardrum each session's calibration stays, √2 · 0.7 dB; within one session it cancels. */
    @Test
    void calibrationCancelsWithinASessionAndAddsAcrossTwo() {
        String rule =
                "quantity: output level, referred to: eardrum, level: 94 dB SPL, bands: 1 kHz, statistic: every band, units: mean,"
                        + " between: {firmware: [\"2.1\", \"2.0\"]}, limit: 0 dB ± 3 dB";
        Bench together = bench("line-01");
        units(together, "2.1", 100, NEW_DB);
        units(together, "2.0", 200, OLD_DB);
        Bench first = bench("line-01");
        units(first, "2.1", 100, NEW_DB);
        Bench second = bench("line-02");
        units(second, "2.0", 200, OLD_DB);
        double within =
                Bench.judge(rule, together.session()).standardUncertainty().orElseThrow();
        Judgement apart = Bench.judge(rule, first.session(), second.session());
        assertThat(within).isCloseTo(0.42062933, within(1e-5));
        assertThat(calibration(apart)).isCloseTo(Math.sqrt(2) * 0.7, within(1e-9));
        // Twenty million draws with NumPy of both t and the normal part.
        assertThat(apart.standardUncertainty().orElseThrow()).isCloseTo(1.0990, within(0.001));
    }

    private static double calibration(Judgement judgement) {
        return Math.sqrt(judgement.cells().get(0).contributions().stream()
                .filter(c -> c.cause().equals("calibration"))
                .mapToDouble(c -> c.effect() * c.effect())
                .sum());
    }

    /** Two units on both sides are pairs, and the unit's own error cancels; those on one side only are left out. */
    @Test
    void unitsMeasuredUnderBothPairUp() {
        Judgement judgement = Bench.judge(RULE + "mean", bothInOne(104));
        double[] differences = {19.8 - 19.2, 20.5 - 19.9};
        assertThat(judgement.value().orElseThrow()).isCloseTo(mean(differences), within(1e-9));
        assertThat(judgement.notes())
                .contains("not used: 6 of the units were measured on one side only, and only those measured on both are"
                        + " compared");
    }

    /** One pair shows no scatter of differences. */
    @Test
    void aSinglePairAmongManyIsNotEnough() {
        assertThat(Bench.judge(RULE + "mean", bothInOne(105)).value().orElseThrow())
                .isCloseTo(mean(NEW_DB) - mean(OLD_DB), within(1e-9));
    }

    @Test
    void unitByUnitThereIsNothingToCompareAndItSaysSo() {
        Judgement each = Bench.judge(RULE + "each", bothInOne(200));
        assertThat(each.verdict()).isEqualTo(Verdict.UNTESTED);
        assertThat(each.reason().orElseThrow())
                .isEqualTo(
                        "no unit was measured under both firmware 2.1 and firmware 2.0: 'units: mean' compares the means"
                                + " over the units of each");
        assertThat(Bench.judge(RULE + "share of 90 %", bothInOne(200)).verdict())
                .isEqualTo(Verdict.UNTESTED);
    }

    @Test
    void aSideThatWasNotMeasuredIsNamed() {
        Bench bench = bench("line-01");
        units(bench, "2.1", 100, NEW_DB);
        assertThat(Bench.judge(RULE + "mean", bench.session()).reason().orElseThrow())
                .isEqualTo("nothing usable was measured under firmware 2.0, which the comparison needs");
    }

    /** One unit tells nothing of others, however many stand on the other side. */
    @Test
    void aSingleUnitOnASideNeedsADeclaredSize() {
        Bench bench = bench("line-01");
        units(bench, "2.1", 100, NEW_DB);
        units(bench, "2.0", 200, 10);
        Judgement judgement = Bench.judge(RULE + "mean", bench.session());
        assertThat(judgement.verdict()).isEqualTo(Verdict.MARGINAL);
        assertThat(judgement.reason().orElseThrow()).startsWith("one unit tells nothing of others");
        Bench declared = bench("line-01").cause("unit", 0.6, SharedBy.UNIT, false);
        units(declared, "2.1", 100, NEW_DB);
        units(declared, "2.0", 200, 10);
        Judgement firm = Bench.judge(RULE + "mean", declared.session());
        // Every unit counts with its own error, insertion and reading: (0.6² + 0.5² + 0.2²)(1/6 + 1); the open ear
        // cancels.
        assertThat(firm.standardUncertainty().orElseThrow())
                .isCloseTo(Math.sqrt((0.36 + 0.25 + 0.04) * (1 / 6.0 + 1)), within(1e-6));
        assertThat(firm.verdict()).isEqualTo(Verdict.PASS);
    }

    /** By the linear law: r (s₁/x₁ ⊕ s₂/x₂) over the units, and (r − 1)/x₂ times the error of the open ear they share. */
    @Test
    void aRatioOfMeansHasTheRelativeScatterOfBoth() {
        NormalStream draw = new NormalStream(Seeds.of("ratio"));
        double[] one = draws(draw, 150, 20, 0.4);
        double[] other = draws(draw, 150, 16, 0.4);
        Bench bench = bench("line-01");
        units(bench, "2.1", 1000, one);
        units(bench, "2.0", 5000, other);
        Judgement judgement = Bench.judge(
                RULE.replace("limit: at least 0.3 dB", "compared by: ratio, limit: 1, sense: at least") + "mean",
                bench.session());
        double ratio = mean(one) / mean(other);
        double relative = Math.sqrt(variance(one) / one.length / mean(one) / mean(one)
                + variance(other) / other.length / mean(other) / mean(other));
        double openEar = 0.2 * (ratio - 1) / mean(other);
        assertThat(judgement.value().orElseThrow()).isCloseTo(ratio, within(1e-9));
        assertThat(judgement.standardUncertainty().orElseThrow())
                .isCloseTo(Math.hypot(ratio * relative, openEar), within(0.01 * openEar));
    }

    private static double[] draws(NormalStream draw, int count, double mean, double deviation) {
        double[] values = new double[count];
        for (int i = 0; i < count; i++) {
            values[i] = mean + deviation * draw.next();
        }
        return values;
    }

    private static double mean(double... values) {
        return Arrays.stream(values).average().orElseThrow();
    }

    private static double variance(double... values) {
        double mean = mean(values);
        return Arrays.stream(values).map(v -> (v - mean) * (v - mean)).sum() / (values.length - 1);
    }

    /** Battery life in hours of three units and of two others. */
    @Test
    void figuresOfDifferentUnitsAreComparedAlike() {
        FigureMeans means = new FigureMeans(new double[] {20, 22, 24}, new double[] {18, 19}, false);
        assertThat(means.value()).isEqualTo(3.5);
        // Scales 2/√3 with 2 degrees of freedom and 0.5 with 1; P(error ≥ 2) integrated with SciPy 1.17.
        assertThat(means.errors().orElseThrow().atLeast(2)).isCloseTo(0.17753867, within(1e-5));
        FigureMeans ratio = new FigureMeans(new double[] {20, 22, 24}, new double[] {18, 19}, true);
        assertThat(ratio.value()).isCloseTo(22 / 18.5, within(1e-12));
        assertThat(new FigureMeans(new double[] {20}, new double[] {18, 19}, false).errors())
                .isEmpty();
    }
}
