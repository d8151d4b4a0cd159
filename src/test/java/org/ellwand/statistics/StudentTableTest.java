package org.ellwand.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Errors known from few observations against JCGM 100:2008, table G.2 and G.4.1. */
class StudentTableTest {
    private static final double[] CENTRAL = {0.682689492137086, 0.90, 0.95, 0.954499736103642, 0.99, 0.997300203936740};

    /**
     * Table G.2, columns 68.27, 90, 95, 95.45, 99 and 99.73 % (computed; single entries read in the tests of a general
     * uncertainty calculator, sandialabs/suncal: secondary).
     */
    @ParameterizedTest
    @CsvSource({
        "1, 1.84, 6.31, 12.71, 13.97, 63.66, 235.80",
        "2, 1.32, 2.92, 4.30, 4.53, 9.92, 19.21",
        "3, 1.20, 2.35, 3.18, 3.31, 5.84, 9.22",
        "4, 1.14, 2.13, 2.78, 2.87, 4.60, 6.62",
        "5, 1.11, 2.02, 2.57, 2.65, 4.03, 5.51",
        "6, 1.09, 1.94, 2.45, 2.52, 3.71, 4.90",
        "7, 1.08, 1.89, 2.36, 2.43, 3.50, 4.53",
        "8, 1.07, 1.86, 2.31, 2.37, 3.36, 4.28",
        "9, 1.06, 1.83, 2.26, 2.32, 3.25, 4.09",
        "10, 1.05, 1.81, 2.23, 2.28, 3.17, 3.96",
        "11, 1.05, 1.80, 2.20, 2.25, 3.11, 3.85",
        "12, 1.04, 1.78, 2.18, 2.23, 3.05, 3.76",
        "13, 1.04, 1.77, 2.16, 2.21, 3.01, 3.69",
        "14, 1.04, 1.76, 2.14, 2.20, 2.98, 3.64",
        "15, 1.03, 1.75, 2.13, 2.18, 2.95, 3.59",
        "16, 1.03, 1.75, 2.12, 2.17, 2.92, 3.54",
        "17, 1.03, 1.74, 2.11, 2.16, 2.90, 3.51",
        "18, 1.03, 1.73, 2.10, 2.15, 2.88, 3.48",
        "19, 1.03, 1.73, 2.09, 2.14, 2.86, 3.45",
        "20, 1.03, 1.72, 2.09, 2.13, 2.85, 3.42",
        "25, 1.02, 1.71, 2.06, 2.11, 2.79, 3.33",
        "30, 1.02, 1.70, 2.04, 2.09, 2.75, 3.27",
        "50, 1.01, 1.68, 2.01, 2.05, 2.68, 3.16",
        "100, 1.01, 1.66, 1.98, 2.03, 2.63, 3.08"
    })
    void tableG2(int nu, double t1, double t2, double t3, double t4, double t5, double t6) {
        Errors errors = new MixedErrors(0, List.of(new Scatter(nu, 1)));
        double[] printed = {t1, t2, t3, t4, t5, t6};
        for (int i = 0; i < printed.length; i++) {
            assertThat(errors.quantile((1 + CENTRAL[i]) / 2))
                    .as("%s %%", 100 * CENTRAL[i])
                    .isCloseTo(printed[i], within(0.00501 + 1e-5 * printed[i]));
        }
    }

    /** Three decimals of t_0.975, read in the quantile table of the lecture dhueser/MDA-Vorlesung-iprom-tu-bs. */
    @ParameterizedTest
    @CsvSource({"4, 2.776", "9, 2.262", "16, 2.120", "19, 2.093", "30, 2.042", "50, 2.009"})
    void threeDecimals(int nu, double t) {
        assertThat(new MixedErrors(0, List.of(new Scatter(nu, 1))).quantile(0.975))
                .isCloseTo(t, within(0.00051));
    }

    /** The last row, infinite degrees of freedom, three decimals (from memory; computed agrees): normal errors. */
    @Test
    void infiniteDegreesOfFreedom() {
        double[] printed = {1.000, 1.645, 1.960, 2.000, 2.576, 3.000};
        for (int i = 0; i < printed.length; i++) {
            assertThat(new NormalErrors(1).quantile((1 + CENTRAL[i]) / 2)).isCloseTo(printed[i], within(0.00051));
        }
    }

    /**
     * G.4.1: relative u 0.25, 0.57, 0.82 % of 10, 5, 15 readings, effective degrees of freedom 19.0 (secondary), u_c
     * 1.029466 %, t_95(19) = 2.0930, U_95 = 2.1547 % (computed).
     *
     * <p>Effective degrees of freedom are not used here: three scaled t are added exactly, and the sum is wider. Its
     * variance is Σ ν/(ν − 2) · s² (JCGM 101:2008, 6.4.9.2, from memory), so U_95 is about 1.96 · 1.2307 = 2.412 (computed).
     */
    @Test
    void exactSumIsWiderThanEffectiveDegreesOfFreedomSay() {
        assertThat(new MixedErrors(0, List.of(new Scatter(19, 1))).quantile(0.975))
                .isCloseTo(2.0930, within(6e-5));
        List<Scatter> scatters = List.of(new Scatter(9, 0.25), new Scatter(4, 0.57), new Scatter(14, 0.82));
        assertThat(new MixedErrors(0, scatters).quantile(0.975))
                .isGreaterThan(2.1547)
                .isCloseTo(2.412, within(0.01 * 2.412));
    }

    /** The same sum from plain draws: the sampling error of the quantile is about 0.006. */
    @Test
    void sumOfThreeScatterAsDrawn() {
        List<Scatter> scatters = List.of(new Scatter(9, 0.25), new Scatter(4, 0.57), new Scatter(14, 0.82));
        NormalStream z = new NormalStream(Seeds.of("three scatters"));
        double[] draws = new double[400_000];
        for (int i = 0; i < draws.length; i++) {
            for (Scatter scatter : scatters) {
                draws[i] += scatter.scale() * z.next() / chi(z, scatter.degreesOfFreedom());
            }
        }
        Errors drawn = new DrawnErrors(draws);
        Errors closed = new MixedErrors(0, scatters);
        for (double p : new double[] {0.025, 0.05, 0.2, 0.5, 0.8, 0.95, 0.975}) {
            assertThat(drawn.atMost(closed.quantile(p))).isCloseTo(p, within(0.002));
        }
    }

    private static double chi(NormalStream z, int nu) {
        double sum = 0;
        for (int i = 0; i < nu; i++) {
            double d = z.next();
            sum += d * d;
        }
        return Math.sqrt(sum / nu);
    }
}
