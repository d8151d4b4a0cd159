package org.ellwand.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * What is said with 95 % confidence is wrong in 5 % of simulated samples where exact, in no more where conservative. The
 * share looked for is exactly the one that is there. 4000 samples: three standard deviations of 5 % are 1 %.
 */
class SimulatedSharesTest {
    private static final int SAMPLES = 4000;
    private static final double SAMPLING_ERROR = 0.0105;
    private static final double SHARE = 0.9;
    private static final Limits ABOVE = Limits.atLeast(NormalErrors.z(1 - SHARE));
    private static final Limits AMID = new Limits(NormalErrors.z((1 - SHARE) / 2), NormalErrors.z((1 + SHARE) / 2));

    private final NormalStream draws = new NormalStream(Seeds.of("shares"));

    private NormalSample sample(int n, double common) {
        double shift = common * draws.next();
        double[] values =
                IntStream.range(0, n).mapToDouble(i -> draws.next() + shift).toArray();
        double mean = 0;
        for (double value : values) {
            mean += value / n;
        }
        double squares = 0;
        for (double value : values) {
            squares += (value - mean) * (value - mean);
        }
        return new NormalSample(n, mean, Math.sqrt(squares / (n - 1)));
    }

    /** How often a number of a sample is at most 0.05. */
    private double rareOnes(int n, double common, ToDoubleFunction<NormalSample> number) {
        return IntStream.range(0, SAMPLES)
                        .filter(i -> number.applyAsDouble(sample(n, common)) <= 0.05)
                        .count()
                / (double) SAMPLES;
    }

    @Test
    void oneLimitIsExactBothForAndAgainst() {
        assertThat(rareOnes(6, 0, s -> 1 - new NormalShare(s, ABOVE).confidence(SHARE)))
                .isCloseTo(0.05, within(SAMPLING_ERROR));
        assertThat(rareOnes(6, 0, s -> new NormalShare(s, ABOVE).chanceThisBad(SHARE)))
                .isCloseTo(0.05, within(SAMPLING_ERROR));
    }

    @Test
    void twoLimitsAreConservative() {
        assertThat(rareOnes(10, 0, s -> 1 - new NormalShare(s, AMID).confidence(SHARE)))
                .isLessThan(0.05 + SAMPLING_ERROR);
        assertThat(rareOnes(10, 0, s -> new NormalShare(s, AMID).chanceThisBad(SHARE)))
                .isLessThan(0.05 + SAMPLING_ERROR);
    }

    @Test
    void aToleranceIntervalHoldsItsShareAsOftenAsItSays() {
        double k = ToleranceFactor.twoSided(7, SHARE, 0.95);
        double tooNarrow = rareOnes(7, 0, s -> held(s, k) < SHARE ? 0 : 1);
        assertThat(tooNarrow).isCloseTo(0.05, within(SAMPLING_ERROR));
    }

    private static double held(NormalSample sample, double k) {
        double reach = k * sample.standardDeviation();
        return NormalErrors.phi(sample.mean() + reach) - NormalErrors.phi(sample.mean() - reach);
    }

    @Test
    void aCommonErrorIsAllowedFor() {
        double common = 0.8;
        assertThat(rareOnes(6, common, s -> 1 - new NormalShare(s, ABOVE, common).confidence(SHARE)))
                .isLessThan(0.05 + SAMPLING_ERROR);
        assertThat(rareOnes(6, common, s -> new NormalShare(s, ABOVE, common).chanceThisBad(SHARE)))
                .isLessThan(0.05 + SAMPLING_ERROR);
        assertThat(rareOnes(6, common, s -> 1 - new NormalShare(s, ABOVE).confidence(SHARE)))
                .isGreaterThan(0.1);
    }
}
