package org.ellwand.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NormalShareTest {
    private static final double INFINITE = Double.POSITIVE_INFINITY;

    /** A limit k standard deviations off, k from the table of one-sided factors, is met with the table's confidence. */
    @ParameterizedTest
    @CsvSource({"10, 0.95, 2.91096, 0.95", "50, 0.95, 2.0649934177, 0.95", "43, 0.90, 1.8739536, 0.99"})
    void confidenceOfOneLimit(int n, double share, double k, double confidence) {
        NormalSample sample = new NormalSample(n, 20, 3);
        NormalShare lower = new NormalShare(sample, Limits.atLeast(20 - 3 * k));
        NormalShare upper = new NormalShare(sample, Limits.atMost(20 + 3 * k));
        assertThat(lower.confidence(share)).isCloseTo(confidence, within(2e-6)).isEqualTo(lower.chanceThisBad(share));
        assertThat(upper.confidence(share)).isCloseTo(confidence, within(2e-6)).isEqualTo(upper.chanceThisBad(share));
    }

    /** The same with the table of two-sided factors (95 % confidence). */
    @ParameterizedTest
    @CsvSource({"5, 0.90, 4.2906", "10, 0.95, 3.3934", "30, 0.99, 3.3546"})
    void confidenceOfTwoLimits(int n, double share, double k) {
        NormalSample sample = new NormalSample(n, -7, 0.5);
        Limits fitting = new Limits(-7 - 0.5 * k, -7 + 0.5 * k);
        Limits wider = new Limits(-7 - 0.5 * k, 20);
        assertThat(new NormalShare(sample, fitting).confidence(share)).isCloseTo(0.95, within(1e-5));
        assertThat(new NormalShare(sample, wider).confidence(share)).isCloseTo(0.95, within(1e-5));
    }

    @Test
    void aMeanOutsideTwoLimitsSaysNothingForTheShare() {
        NormalShare outside = new NormalShare(new NormalSample(5, 4, 1), new Limits(-3, 3));
        assertThat(outside.confidence(0.5)).isZero();
        assertThat(outside.shareAtLeast(0.95)).isZero();
    }

    /** Twice the smaller of the two sides, each as if it stood alone, and never above 1. */
    @Test
    void chanceOfTwoLimits() {
        NormalSample sample = new NormalSample(8, 2.5, 1);
        double above = new NormalShare(sample, Limits.atMost(3)).chanceThisBad(0.9);
        NormalShare both = new NormalShare(sample, new Limits(-3, 3));
        assertThat(above).isBetween(0.01, 0.05);
        assertThat(both.chanceThisBad(0.9)).isEqualTo(2 * above);
        assertThat(new NormalShare(new NormalSample(8, 0, 1), new Limits(-3, 3)).chanceThisBad(0.9))
                .isEqualTo(1);
    }

    @Test
    void withoutScatterTheMeanDecidesAndTheLimitsBelongToThem() {
        Limits limits = new Limits(1, 3);
        for (double mean : new double[] {1, 2, 3}) {
            NormalShare inside = new NormalShare(new NormalSample(4, mean, 0), limits);
            assertThat(inside.confidence(0.9)).isEqualTo(1);
            assertThat(inside.chanceThisBad(0.9)).isEqualTo(1);
            assertThat(inside.shareAtLeast(0.95)).isEqualTo(1);
        }
        for (double mean : new double[] {0.999, 3.001}) {
            NormalShare outside = new NormalShare(new NormalSample(4, mean, 0), limits);
            assertThat(outside.confidence(0.9)).isZero();
            assertThat(outside.chanceThisBad(0.9)).isZero();
            assertThat(outside.shareAtLeast(0.95)).isZero();
        }
        assertThat(new NormalShare(new NormalSample(4, 1, 0), Limits.atLeast(1)).confidence(0.9))
                .isEqualTo(1);
    }

    @Test
    void nothingIsOutsideOfNoLimits() {
        NormalShare all = new NormalShare(new NormalSample(4, 1, 2), new Limits(-INFINITE, INFINITE), 3);
        assertThat(all.confidence(0.99)).isEqualTo(1);
        assertThat(all.chanceThisBad(0.99)).isEqualTo(1);
    }

    /** Without scatter the common error is all there is: Φ of the distances in its standard deviations. */
    @Test
    void aCommonErrorAloneIsNormal() {
        NormalSample sample = new NormalSample(4, 2, 0);
        NormalShare lower = new NormalShare(sample, Limits.atLeast(1), 0.5);
        assertThat(lower.confidence(0.9)).isCloseTo(0.977249868, within(1e-9));
        assertThat(lower.chanceThisBad(0.9)).isCloseTo(0.977249868, within(1e-9));
        NormalShare both = new NormalShare(sample, new Limits(1, 2.5), 0.5);
        assertThat(both.confidence(0.9)).isCloseTo(0.977249868 - 0.158655254, within(1e-9));
        assertThat(both.chanceThisBad(0.9)).isEqualTo(1);
    }

    /** A little scatter or a little common error is nearly none. */
    @Test
    void limitsOfTheAverageAreReachedSmoothly() {
        Limits limits = new Limits(1, 2.5);
        double slightScatter = new NormalShare(new NormalSample(30, 2, 1e-6), limits, 0.5).confidence(0.9);
        assertThat(slightScatter).isCloseTo(0.977249868 - 0.158655254, within(1e-5));
        NormalSample sample = new NormalSample(30, 2, 0.2);
        double noError = new NormalShare(sample, limits).confidence(0.9);
        assertThat(new NormalShare(sample, limits, 1e-6).confidence(0.9)).isCloseTo(noError, within(1e-5));
        assertThat(new NormalShare(sample, Limits.atLeast(1), 1e-9).confidence(0.9))
                .isCloseTo(new NormalShare(sample, Limits.atLeast(1)).confidence(0.9), within(1e-8));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.4})
    void atTheShareSaidTheConfidenceIsThatAskedFor(double common) {
        NormalSample sample = new NormalSample(12, 2, 1);
        for (Limits limits : new Limits[] {Limits.atLeast(0), Limits.atMost(5), new Limits(-1, 5.5)}) {
            NormalShare evidence = new NormalShare(sample, limits, common);
            double share = evidence.shareAtLeast(0.9);
            assertThat(share).isBetween(0.5, 0.999);
            assertThat(evidence.confidence(share)).isCloseTo(0.9, within(1e-7));
        }
    }

    @Test
    void whatIsNoSampleLimitOrShareIsRefused() {
        assertThatThrownBy(() -> new NormalSample(1, 0, 0)).hasMessage("fewer than two values have no scatter");
        assertThatThrownBy(() -> new NormalSample(3, 0, -1)).hasMessage("no values have mean 0.0 and deviation -1.0");
        assertThatThrownBy(() -> new Limits(2, 1)).hasMessage("nothing lies between 2.0 and 1.0");
        NormalSample sample = new NormalSample(3, 0, 1);
        assertThatThrownBy(() -> new NormalShare(sample, Limits.atLeast(0), -1))
                .hasMessage("no common error has a deviation of -1.0");
        assertThatThrownBy(() -> new NormalShare(sample, Limits.atLeast(0)).confidence(1))
                .hasMessage("a share lies between 0 and 1, not at 1.0");
    }

    @Test
    void allAndSureAreNotAsked() {
        NormalShare evidence = new NormalShare(new NormalSample(3, 0, 1), Limits.atLeast(0));
        assertThatThrownBy(() -> evidence.chanceThisBad(1)).hasMessage("a share lies between 0 and 1, not at 1.0");
        assertThatThrownBy(() -> evidence.shareAtLeast(1)).hasMessage("a confidence lies between 0 and 1, not at 1.0");
    }

    @Test
    void twoValuesAreASampleAndOneValueIsALimit() {
        NormalShare exact = new NormalShare(new NormalSample(2, 5, 0), new Limits(5, 5));
        assertThat(exact.confidence(0.9)).isEqualTo(1);
    }
}
