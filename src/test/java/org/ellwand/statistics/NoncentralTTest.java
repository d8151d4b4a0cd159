package org.ellwand.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.statistics.distribution.TDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NoncentralTTest {
    /** Without noncentrality it is Student's t; reference: commons-statistics (1e-15). */
    @ParameterizedTest
    @ValueSource(doubles = {1, 2, 3.5, 9, 42, 1000, 1e5})
    void withoutNoncentralityItIsStudentsT(double nu) {
        TDistribution student = TDistribution.of(nu);
        NoncentralT t = NoncentralT.of(nu, 0);
        for (double x : new double[] {-1e6, -40, -3, -0.1, 0, 0.7, 2, 12}) {
            assertThat(t.atMost(x)).as("t %s", x).isCloseTo(student.cumulativeProbability(x), within(1e-12));
        }
        for (double p : new double[] {1e-6, 0.05, 0.3, 0.5, 0.975, 0.9999}) {
            double x = student.inverseCumulativeProbability(p);
            assertThat(t.quantile(p)).as("p %s", p).isCloseTo(x, within(1e-9 * Math.max(1, Math.abs(x))));
        }
    }

    /** T ≤ 0 says Z ≤ −δ, whatever χ is. */
    @ParameterizedTest
    @CsvSource({"1, 0.3", "1, -2", "7, 1.5", "1000, -3"})
    void atZeroOnlyTheNormalCounts(double nu, double delta) {
        assertThat(NoncentralT.of(nu, delta).atMost(0)).isCloseTo(NormalErrors.phi(-delta), within(1e-14));
    }

    @ParameterizedTest
    @CsvSource({"1, 40", "2, 12.5", "9, -4", "60, 40", "1000, 40", "1000, -25"})
    void mirrorsItselfAndQuantilesLeadBack(double nu, double delta) {
        NoncentralT t = NoncentralT.of(nu, delta);
        NoncentralT mirrored = NoncentralT.of(nu, -delta);
        for (double p : new double[] {1e-6, 0.01, 0.05, 0.5, 0.9, 0.99, 1 - 1e-6}) {
            double x = t.quantile(p);
            assertThat(t.atMost(x)).as("p %s", p).isCloseTo(p, within(1e-11));
            assertThat(t.atMost(x) + mirrored.atMost(-x)).as("p %s", p).isCloseTo(1, within(1e-13));
        }
    }

    /** The mean of T, δ √(ν/2) Γ((ν−1)/2) / Γ(ν/2), is 4 · √1.5 / 2 · √π for ν = 3 and δ = 4 (Γ(1) = 1, Γ(1.5) = √π/2). */
    @Test
    void itsMeanIsThatOfTheClosedForm() {
        NoncentralT t = NoncentralT.of(3, 4);
        double sum = 0;
        int pieces = 4000;
        for (int i = 0; i < pieces; i++) {
            sum += t.quantile((i + 0.5) / pieces);
        }
        assertThat(sum / pieces).isCloseTo(4 * Math.sqrt(1.5) / (Math.sqrt(Math.PI) / 2), within(0.02));
    }

    /** Against the plain sum over many errors of t. */
    @ParameterizedTest
    @CsvSource({"3, 1, 2, 0.5", "9, 4, 3, 3", "1, -2, 0, 20", "60, 12.5, 14, 0.01"})
    void averagesOverAnErrorOfT(double nu, double delta, double t, double q) {
        NoncentralT distribution = NoncentralT.of(nu, delta);
        double sum = 0;
        for (int i = -2000; i <= 2000; i++) {
            double z = i / 250.0;
            sum += Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI) / 250 * distribution.atMost(t + q * z);
        }
        assertThat(distribution.atMost(t, q)).isCloseTo(sum, within(1e-10));
    }

    @Test
    void endsAreReached() {
        NoncentralT t = NoncentralT.of(5, 2);
        assertThat(t.atMost(Double.POSITIVE_INFINITY)).isEqualTo(1);
        assertThat(t.atMost(Double.NEGATIVE_INFINITY)).isZero();
        assertThat(t.quantile(0)).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(t.quantile(1)).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(t.atMost(1e300)).isCloseTo(1, within(1e-15));
    }

    @Test
    void whatIsNoDistributionOrProbabilityIsRefused() {
        assertThatThrownBy(() -> NoncentralT.of(0.5, 1)).hasMessage("no noncentral t has ν = 0.5 and δ = 1.0");
        assertThatThrownBy(() -> NoncentralT.of(5, Double.NaN)).hasMessage("no noncentral t has ν = 5.0 and δ = NaN");
        assertThatThrownBy(() -> NoncentralT.of(5, 1).quantile(1.5)).hasMessage("1.5 is no probability");
        assertThatThrownBy(() -> NoncentralT.of(5, 1).quantile(Double.NaN)).hasMessage("NaN is no probability");
    }
}
