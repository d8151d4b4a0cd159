package org.ellwand.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.statistics.distribution.TDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MixedErrorsTest {
    /** Without a normal part the sum is the scaled t itself; reference: commons-statistics' Student t (1e-15). */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 9, 14, 30, 60})
    void aloneItIsTheScaledT(int nu) {
        TDistribution t = TDistribution.of(nu);
        Errors errors = new MixedErrors(0, List.of(new Scatter(nu, 0.7)));
        for (double p : new double[] {0.001, 0.025, 0.05, 0.1587, 0.5, 0.95, 0.975, 0.9999}) {
            double x = 0.7 * t.inverseCumulativeProbability(p);
            assertThat(errors.atMost(x)).as("p %s", p).isCloseTo(p, within(1e-6));
            assertThat(errors.quantile(p)).isCloseTo(x, within(1e-4 * Math.max(1, Math.abs(x))));
        }
    }

    /** JCGM 101:2008, 6.4.9: the variance of t with 1 to 3 degrees of freedom does not exist; u is an interval's half. */
    @Test
    void uncertaintyIsFiniteEvenWithOneDegreeOfFreedom() {
        assertThat(new MixedErrors(0, List.of(new Scatter(1, 1))).standardUncertainty())
                .isCloseTo(1.8373, within(1e-3));
    }

    @Test
    void aNormalPartAndTwoScattersAgreeWithDraws() {
        Errors errors = new MixedErrors(0.4, List.of(new Scatter(2, 0.5), new Scatter(4, 0.3)));
        double[] draws = draws(400_000);
        for (double x : new double[] {-2, -1, -0.3, 0.5, 1.2, 3}) {
            double share = Arrays.stream(draws).filter(d -> d <= x).count() / 400_000.0;
            assertThat(errors.atMost(x)).isCloseTo(share, within(0.0025));
        }
    }

    private static double[] draws(int count) {
        NormalStream z = new NormalStream(Seeds.of("mixed"));
        double[] draws = new double[count];
        for (int i = 0; i < count; i++) {
            draws[i] = 0.4 * z.next() + 0.5 * z.next() / chi(z, 2) + 0.3 * z.next() / chi(z, 4);
        }
        return draws;
    }

    private static double chi(NormalStream z, int nu) {
        double sum = 0;
        for (int i = 0; i < nu; i++) {
            double d = z.next();
            sum += d * d;
        }
        return Math.sqrt(sum / nu);
    }

    @Test
    void nothingIsExact() {
        Errors errors = new MixedErrors(0, List.of(new Scatter(3, 0)));
        assertThat(errors.quantile(0.99)).isZero();
        assertThat(errors.atMost(0)).isCloseTo(1, within(1e-14));
        assertThat(errors.atMost(-1e-9)).isZero();
    }

    @Test
    void bothSidesTogetherAreAll() {
        Errors errors = new MixedErrors(0.4, List.of(new Scatter(2, 0.5)));
        for (double x : new double[] {-1, 0.3, 2}) {
            assertThat(errors.atLeast(x)).isCloseTo(1 - errors.atMost(x), within(1e-9));
        }
        assertThat(errors.quantile(1)).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(errors.quantile(0)).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(new NormalErrors(0.4).standardUncertainty()).isEqualTo(0.4);
    }
}
