package org.ellwand.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ControlledErrorsTest {
    private static final Errors CONTROL = new NormalErrors(0.8);

    private static double[] controls(int count) {
        double[] controls = new double[count];
        new NormalStream(Seeds.of("controls")).addTo(controls, count, 0.8);
        return controls;
    }

    /** However few draws there are: no sampling error is left. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 1.5, -40})
    void shiftedControlsAreTheShiftedDistribution(double shift) {
        double[] controls = controls(50);
        double[] draws = Arrays.stream(controls).map(c -> c + shift).toArray();
        Errors errors = new ControlledErrors(draws, controls, CONTROL);
        // Φ(0.5) = 0.6914625, z(0.975) = 1.9599640.
        assertThat(errors.atMost(shift + 0.4)).isCloseTo(0.6914625, within(1e-7));
        assertThat(errors.atLeast(shift + 0.4)).isCloseTo(0.3085375, within(1e-7));
        assertThat(errors.quantile(0.975)).isCloseTo(shift + 0.8 * 1.9599640, within(1e-6));
        assertThat(errors.quantile(0.025)).isCloseTo(shift - 0.8 * 1.9599640, within(1e-6));
        assertThat(errors.standardUncertainty()).isCloseTo(0.8, within(1e-9));
    }

    /**
     * The exponential of a normal error has the quantiles of that error: P(e^C − 1 ≤ x) = Φ(ln(1 + x) / 0.8). Plain
     * draws err by up to 0.01 here (two standard deviations of 10 000 draws).
     */
    @Test
    void aBentErrorIsTheClosedForm() {
        double[] controls = controls(10_000);
        double[] draws = Arrays.stream(controls).map(Math::expm1).toArray();
        Errors errors = new ControlledErrors(draws, controls, CONTROL);
        for (double x : new double[] {-0.7, -0.3, 0, 0.6, 2.5}) {
            assertThat(errors.atMost(x)).as("x %s", x).isCloseTo(NormalErrors.phi(Math.log1p(x) / 0.8), within(0.01));
        }
        assertThat(errors.atMost(errors.quantile(0.9))).isCloseTo(0.9, within(1e-3));
        assertThat(errors.quantile(0.9)).isCloseTo(Math.expm1(0.8 * 1.2815516), within(0.1));
    }

    /** By hand, two of four draws at 0 and one of four controls below: 1/2 and 1/4 more. */
    @Test
    void drawsAtTheValueAreAtMostThat() {
        Errors errors = new ControlledErrors(new double[] {4, 0, 0, 4}, new double[] {-1, 4, 4, 1}, CONTROL);
        assertThat(errors.atMost(0)).isCloseTo(0.75, within(1e-12));
        assertThat(errors.atMost(1)).isCloseTo(NormalErrors.phi(1.25), within(1e-12));
        assertThat(errors.atMost(100)).isEqualTo(1);
        assertThat(errors.atMost(-100)).isZero();
    }

    @Test
    void aProbabilityStaysBetweenNothingAndAll() {
        Errors errors = new ControlledErrors(new double[] {-0.5, -0.5, -0.5, 1.5}, new double[] {0, 0, 0, 0}, CONTROL);
        assertThat(errors.atMost(-0.4)).isEqualTo(1);
        Errors mirrored = new ControlledErrors(new double[] {0.5, 0.5, 0.5, -1.5}, new double[] {0, 0, 0, 0}, CONTROL);
        assertThat(mirrored.atMost(0.4)).isZero();
    }
}
