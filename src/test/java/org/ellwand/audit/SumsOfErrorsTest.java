package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.ellwand.acoustics.Resolution;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.SharedBy;
import org.ellwand.quantity.Outcome;
import org.ellwand.statistics.DrawnErrors;
import org.ellwand.statistics.Errors;
import org.ellwand.statistics.MixedErrors;
import org.ellwand.statistics.Scatter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The examples of JCGM 101:2008 that normal draws can serve; inputs and results from memory, confirmed by computing. */
class SumsOfErrorsTest {
    private static final int TRIALS = 400_000;
    private static final String MEAN = "quantity: attenuation, setting: flood, level: 94 dB SPL,"
            + " bands: 1 kHz to 1.6 kHz, statistic: mean, limit: at least 15 dB";

    private static Session session(double... sizesDb) {
        Bench bench = new Bench("crew-01", Resolution.THIRD_OCTAVE)
                .cause("reading", 0, SharedBy.READING, true)
                .reading("device=open ear, stimulus=n94", 1000, 80, 80, 80)
                .reading("device=Skerry, setting=flood, stimulus=n94, insertion=1", 1000, 60, 60, 60);
        for (int i = 0; i < sizesDb.length; i++) {
            bench.cause("cause " + i, sizesDb[i], SharedBy.INSERTION, false);
        }
        return bench.session();
    }

    /** 9.2.2: the sum of four N(0, 1): u 2.0, 95 % interval ±3.92. */
    @Test
    void fourNormals() {
        Judgement judgement = Bench.judge(MEAN, session(1, 1, 1, 1));
        assertThat(judgement.value().orElseThrow()).isCloseTo(20, within(1e-9));
        assertThat(judgement.standardUncertainty().orElseThrow()).isCloseTo(2.0, within(1e-9));
        assertThat(judgement.lower().orElseThrow()).isCloseTo(20 - 3.92, within(0.005));
        assertThat(judgement.upper().orElseThrow()).isCloseTo(20 + 3.92, within(0.005));
    }

    /** The same as drawn; the sampling error of the ends is about 0.01. */
    @Test
    void fourNormalsAsDrawn() {
        double[] draws = Workings.of(MEAN, Outcome.MEAN, session(1, 1, 1, 1)).draws(TRIALS)[0];
        assertThat(deviation(draws)).isCloseTo(2.0, within(0.02));
        Errors errors = new DrawnErrors(draws);
        assertThat(errors.quantile(0.025)).isCloseTo(-3.92, within(0.04));
        assertThat(errors.quantile(0.975)).isCloseTo(3.92, within(0.04));
    }

    /**
     * 9.2.3 and 9.2.4 add rectangular inputs, standard deviations 1, 1, 1, 1 and 1, 1, 1, 10. A cause is declared here by
     * its standard uncertainty alone and drawn normal, so their Monte Carlo intervals (±3.88 and ±17.0) do not apply; what
     * comes out is the law of propagation: ±3.92, and u = √103 = 10.148892 with ±19.8915, which is the wider.
     */
    @Test
    void rectangularInputsCountAsNormal() {
        assertThat(halfWidth(1, 1, 1, 1)).isCloseTo(3.92, within(0.005)).isGreaterThan(3.879407);
        assertThat(Bench.judge(MEAN, session(1, 1, 1, 10)).standardUncertainty().orElseThrow())
                .isCloseTo(10.148892, within(1e-6));
        assertThat(halfWidth(1, 1, 1, 10)).isCloseTo(19.8915, within(5e-4)).isGreaterThan(17.015814);
    }

    private static double halfWidth(double... sizesDb) {
        Judgement judgement = Bench.judge(MEAN, session(sizesDb));
        return (judgement.upper().orElseThrow() - judgement.lower().orElseThrow()) / 2;
    }

    /** 6.4.9.2: variance of the scaled t is (n − 1)/(n − 3) · s²/n: for n = 10, √(9/7) = 1.1339 times s/√n. */
    @Test
    void standardDeviationOfTheDrawsOfTenRepeats() {
        Estimates estimates = repeats(10);
        double[][] draws = new double[1][TRIALS];
        new Draws(estimates, TRIALS).next(draws, TRIALS);
        double scale = estimates.groups.get(0).scatter(0).scale();
        assertThat(deviation(draws[0]) / scale).isCloseTo(1.1339, within(0.01 * 1.1339));
    }

    /**
     * The same clause: for n ≤ 3 the variance does not exist. What is stated here as u is half of the central 68.27 %
     * interval, which is finite: t of JCGM 100:2008, table G.2 (computed) times s/√n. For larger n it is smaller than the
     * standard deviation: 1.14 instead of 1.4142 for n = 5.
     */
    @ParameterizedTest
    @CsvSource({"2, 1.84", "3, 1.32", "4, 1.20", "5, 1.14", "10, 1.06"})
    void uncertaintyIsHalfAnInterval(int n, double t) {
        Estimates estimates = repeats(n);
        Scatter scatter = estimates.groups.get(0).scatter(0);
        double u = PointMaker.closed(estimates)[0].standardUncertainty();
        assertThat(u / scatter.scale()).isCloseTo(t, within(0.0051));
        assertThat(new MixedErrors(0, List.of(scatter)).standardUncertainty()).isCloseTo(u, within(1e-9));
    }

    /** s/√n itself: of repeats 1, 2 … n the variance is n(n + 1)/12. */
    @ParameterizedTest
    @ValueSource(ints = {2, 3, 5, 10})
    void scaleOfTheScatter(int n) {
        Scatter scatter = repeats(n).groups.get(0).scatter(0);
        assertThat(scatter.scale()).isCloseTo(Math.sqrt((n + 1) / 12.0), within(1e-9));
        assertThat(scatter.degreesOfFreedom()).isEqualTo(n - 1);
    }

    /** Insertions of 61, 62 … dB, nothing declared. */
    private static Estimates repeats(int n) {
        Bench bench = new Bench("crew-01", Resolution.THIRD_OCTAVE)
                .reading("device=open ear, stimulus=n94", 1000, 80, 80, 80);
        for (int i = 1; i <= n; i++) {
            double level = 60 + i;
            bench.reading("device=Skerry, setting=flood, stimulus=n94, insertion=" + i, 1000, level, level, level);
        }
        return Workings.of(MEAN, Outcome.MEAN, bench.session()).estimates();
    }

    private static double deviation(double[] draws) {
        return Math.sqrt(Arrays.stream(draws).map(d -> d * d).average().orElseThrow());
    }
}
