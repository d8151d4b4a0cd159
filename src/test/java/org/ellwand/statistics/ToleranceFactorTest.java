package org.ellwand.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ToleranceFactorTest {
    /**
     * Five-decimal values computed from the quantile of the noncentral t by other software; the last column is for a share
     * of 0.84134.
     */
    @ParameterizedTest
    @CsvSource({
        "3, 6.15528, 7.65590, 10.55273, 4.25816, 5.31148, 5.03246",
        "5, 3.40663, 4.20268, 5.74108, 2.74235, 3.39983, 2.80907",
        "8, 2.58191, 3.18729, 4.35386, 2.21859, 2.75428, 2.12548",
        "10, 2.35464, 2.91096, 3.98112, 2.06567, 2.56837, 1.93432",
        "15, 2.06837, 2.56600, 3.52013, 1.86684, 2.32898, 1.69102",
        "20, 1.92599, 2.39600, 3.29516, 1.76521, 2.20778, 1.56873",
        "30, 1.77733, 2.21984, 3.06390, 1.65706, 2.07982, 1.43996",
        "43, 1.67955, 2.10481, 2.91407, 1.58480, 1.99493, 1.35457",
        "50, 1.64556, 2.06499, 2.86245, 1.55947, 1.96529, 1.32475",
        "100, 1.52675, 1.92654, 2.68396, 1.47006, 1.86125, 1.21987"
    })
    void oneSided(int n, double p90, double p95, double p99, double p90c90, double p95c90, double p84) {
        assertThat(ToleranceFactor.oneSided(n, 0.90, 0.95)).isCloseTo(p90, within(6e-6));
        assertThat(ToleranceFactor.oneSided(n, 0.95, 0.95)).isCloseTo(p95, within(6e-6));
        assertThat(ToleranceFactor.oneSided(n, 0.99, 0.95)).isCloseTo(p99, within(6e-6));
        assertThat(ToleranceFactor.oneSided(n, 0.90, 0.90)).isCloseTo(p90c90, within(6e-6));
        assertThat(ToleranceFactor.oneSided(n, 0.95, 0.90)).isCloseTo(p95c90, within(6e-6));
        assertThat(ToleranceFactor.oneSided(n, 0.84134, 0.95)).isCloseTo(p84, within(6e-6));
    }

    /**
     * n = 50, 95 % with 95 %: read are 2.065 (table that the README of groskwik/Owen cites) and 2.064993399768 (that
     * README), of which the last digits are that program's own error: R 4.2 (qt) and SciPy 1.17 (nct.ppf) both give
     * 2.0649934177.
     */
    @Test
    void oneSidedToMoreDigits() {
        assertThat(ToleranceFactor.oneSided(50, 0.95, 0.95))
                .isCloseTo(2.064993399768, within(2e-8))
                .isCloseTo(2.0649934177, within(1e-10));
    }

    /**
     * NIST/SEMATECH e-Handbook 7.2.6.3, N = 43, share 0.90, confidence 0.99, intermediate values as listed at
     * scribd.com/document/471866375/tolintvl (which restates the handbook). The exact one-sided factor is printed there
     * as 1.8740 (from memory); 1.8739536 was computed by other software.
     */
    @Test
    void workedCaseOfTheHandbook() {
        double chiSquared = ChiSquaredDistribution.of(42).inverseCumulativeProbability(0.01);
        assertThat(NormalErrors.z(0.90)).isCloseTo(1.2815516, within(5e-8));
        assertThat(NormalErrors.z(0.99)).isCloseTo(2.3263479, within(5e-8));
        assertThat(NormalErrors.z(0.95)).isCloseTo(1.6448536, within(5e-8));
        assertThat(chiSquared).isCloseTo(23.650095, within(5e-7));
        double howe = NormalErrors.z(0.95) * Math.sqrt(42 * (1 + 1.0 / 43) / chiSquared);
        assertThat(howe).isCloseTo(2.2173159, within(5e-7));
        assertThat(ToleranceFactor.twoSided(43, 0.90, 0.99))
                .isCloseTo(howe, within(0.0035 * howe))
                .isNotEqualTo(howe);
        assertThat(ToleranceFactor.oneSided(43, 0.90, 0.99)).isCloseTo(1.8739536, within(5e-8));
        assertThat(approximateOneSided()).isCloseTo(1.8751896, within(5e-7));
    }

    /** k1 = [z_p + √(z_p² − ab)]/a with a = 0.9355727 and b = 1.5165164 as listed. */
    private static double approximateOneSided() {
        double zShare = NormalErrors.z(0.90);
        double zConfidence = NormalErrors.z(0.99);
        double a = 1 - zConfidence * zConfidence / (2 * 42);
        double b = zShare * zShare - zConfidence * zConfidence / 43;
        assertThat(a).isCloseTo(0.9355727, within(5e-8));
        assertThat(b).isCloseTo(1.5165164, within(5e-8));
        return (zShare + Math.sqrt(zShare * zShare - a * b)) / a;
    }

    /**
     * 95 % confidence. Four decimals computed by other software; two decimals of n = 5 to 30 read at
     * bookini.ru/statistics-for-environmental-engineers/295/, table 21.1.
     */
    @ParameterizedTest
    @CsvSource({
        "5, 4.2906, 5.0769, 6.5980",
        "10, 2.8563, 3.3934, 4.4369",
        "20, 2.3188, 2.7603, 3.6210",
        "30, 2.1451, 2.5549, 3.3546",
        "50, 1.9990, 2.3816, 3.1288",
        "100, 1.8748, 2.2339, 2.9355"
    })
    void twoSided(int n, double p90, double p95, double p99) {
        assertThat(ToleranceFactor.twoSided(n, 0.90, 0.95)).isCloseTo(p90, within(6e-5));
        assertThat(ToleranceFactor.twoSided(n, 0.95, 0.95)).isCloseTo(p95, within(6e-5));
        assertThat(ToleranceFactor.twoSided(n, 0.99, 0.95)).isCloseTo(p99, within(6e-5));
    }

    /** Howe's approximation for 95 % with 95 %: 3.3819 for n = 10 and 2.7523 for n = 20; ours is not that one. */
    @Test
    void twoSidedIsNotHowesApproximation() {
        assertThat(ToleranceFactor.twoSided(10, 0.95, 0.95)).isGreaterThan(3.3819 + 0.01);
        assertThat(ToleranceFactor.twoSided(20, 0.95, 0.95)).isGreaterThan(2.7523 + 0.007);
    }

    /** Factors that public code calls two-sided (95 % confidence, 90 and 95 %), though they are the one-sided ones. */
    @ParameterizedTest
    @CsvSource({
        "10, 2.355, 2.911",
        "15, 2.068, 2.566",
        "20, 1.926, 2.396",
        "30, 1.777, 2.220",
        "50, 1.646, 2.065",
        "100, 1.527, 1.927"
    })
    void oneSidedFactorsAreNotTakenForTwoSided(int n, double p90, double p95) {
        assertThat(ToleranceFactor.oneSided(n, 0.90, 0.95)).isCloseTo(p90, within(6e-4));
        assertThat(ToleranceFactor.oneSided(n, 0.95, 0.95)).isCloseTo(p95, within(6e-4));
        assertThat(ToleranceFactor.twoSided(n, 0.90, 0.95)).isGreaterThan(p90 + 0.3);
        assertThat(ToleranceFactor.twoSided(n, 0.95, 0.95)).isGreaterThan(p95 + 0.3);
    }

    /** With ever more values both become the quantiles of the population itself. */
    @Test
    void manyValuesNeedNoAllowance() {
        assertThat(ToleranceFactor.oneSided(4_000_000, 0.9, 0.95)).isCloseTo(1.2815516, within(2e-3));
        assertThat(ToleranceFactor.twoSided(4_000_000, 0.9, 0.95)).isCloseTo(1.6448536, within(2e-3));
    }

    @Test
    void whatHasNoFactorIsRefused() {
        assertThatThrownBy(() -> ToleranceFactor.oneSided(1, 0.9, 0.95))
                .hasMessage("fewer than two values have no scatter");
        assertThatThrownBy(() -> ToleranceFactor.twoSided(5, 1, 0.95))
                .hasMessage("a share lies between 0 and 1, not at 1.0");
        assertThatThrownBy(() -> ToleranceFactor.twoSided(5, 0.9, 0))
                .hasMessage("a confidence lies between 0 and 1, not at 0.0");
    }
}
