package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.ellwand.acoustics.Bound;
import org.ellwand.amount.Interval;
import org.ellwand.amount.Unit;
import org.ellwand.statistics.NormalErrors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Conformance probabilities, acceptance limits and guard bands as published. Only numbers matter here: all of them go
 * through the engine as dB, whatever the source's unit. Marks: "secondary" was read in a source that restates the
 * document, "from memory" was not read, "computed" follows in double precision from the inputs.
 *
 * <p>The lecture is that of the repository dhueser/MDA-Vorlesung-iprom-tu-bs, chapter 6, which restates JCGM 106.
 */
class ConformityTest {
    private static final double NONE = Double.POSITIVE_INFINITY;

    /**
     * Inputs of the first two from memory of JCGM 106:2012 (Zener diode, container), the others secondary (lecture: road
     * speed, length, mass). Column exact: computed; column printed: from memory for the first two, else secondary.
     */
    @ParameterizedTest
    @CsvSource({
        "Zener diode, -5.47, 0.05, -Infinity, -5.40, 0.919243, 0.92, 0.005",
        "container, 509.7, 8.6, 490, Infinity, 0.989010, 0.99, 0.005",
        "road speed, 52, 1, -Infinity, 50, 0.022750, 0.023, 0.0005",
        "length, 2.7, 0.2, -Infinity, 3.0, 0.933193, 0.933, 0.0005",
        "mass, 0.012, 0.001, 0.010, Infinity, 0.977250, 0.977, 0.0005"
    })
    void conformanceProbability(
            String name,
            double y,
            double u,
            double lower,
            double upper,
            double exact,
            double printed,
            double rounding) {
        double holds = Ends.of(point(y, u), Interval.of(lower, upper, Unit.DB)).holds();
        assertThat(holds).as(name).isCloseTo(exact, within(5e-7)).isCloseTo(printed, within(rounding));
    }

    /** The lecture rejects length at 0.95 and mass at 0.99 (secondary): neither passes, nor is either shown to be false. */
    @Test
    void whatTheLectureRejectsDoesNotPass() {
        assertThat(verdict(2.7, 0.2, -NONE, 3.0, 0.95)).isEqualTo(Verdict.MARGINAL);
        assertThat(verdict(0.012, 0.001, 0.010, NONE, 0.99)).isEqualTo(Verdict.MARGINAL);
        assertThat(verdict(0.012, 0.001, 0.010, NONE, 0.95)).isEqualTo(Verdict.PASS);
        assertThat(verdict(52, 1, -NONE, 50, 0.95)).isEqualTo(Verdict.FAIL);
    }

    /** Both ends at once: the process of JCGM 106, clause 9 (resistors; inputs and ≈ 0.905 secondary, 0.90442 computed). */
    @Test
    void resistorsBetweenTwoEnds() {
        Ends ends = Ends.of(point(1500, 0.12), Interval.of(1499.8, 1500.2, Unit.DB));
        assertThat(ends.holds()).isCloseTo(0.90442, within(5e-6)).isCloseTo(0.905, within(1e-3));
    }

    /** z of a one-sided limit: JCGM 106:2012, 7.3, table 1 (digits from memory; exact: computed). */
    @ParameterizedTest
    @CsvSource({
        "0.80, 0.84, 0.8416",
        "0.90, 1.28, 1.2816",
        "0.95, 1.64, 1.6449",
        "0.99, 2.33, 2.3263",
        "0.999, 3.09, 3.0902"
    })
    void zOfOneSidedLimits(double probability, double printed, double exact) {
        assertThat(NormalErrors.z(probability)).isCloseTo(exact, within(5e-5)).isCloseTo(printed, within(0.005));
        Interval limit = Interval.atMost(20, Unit.DB);
        assertThat(Ends.of(point(20 - exact * 0.3, 0.3), limit).holds()).isCloseTo(probability, within(2e-5));
    }

    /** Lecture, temperature: T_U 20.0, u 0.3, 0.95: A_U ≈ 19.5 (secondary), 19.506544 (computed). */
    @Test
    void guardedAcceptance() {
        assertThat(verdict(19.50654, 0.3, -NONE, 20, 0.95)).isEqualTo(Verdict.PASS);
        assertThat(verdict(19.50655, 0.3, -NONE, 20, 0.95)).isEqualTo(Verdict.MARGINAL);
    }

    /** The same with w = U and k = 2: A_U = 19.4 (secondary); the probability there is Φ(2) (computed). */
    @Test
    void guardOfOneExpandedUncertainty() {
        assertThat(Ends.of(point(19.4, 0.3), Interval.atMost(20, Unit.DB)).holds())
                .isCloseTo(0.977250, within(5e-7));
    }

    /** Doppler radar, T 100, 0.999, u fixed at 2: 106.180 (secondary, lecture; last digits computed). */
    @Test
    void guardedRejectionWithFixedUncertainty() {
        assertThat(verdict(106.181, 2, -NONE, 100, 0.999)).isEqualTo(Verdict.FAIL);
        assertThat(verdict(106.180, 2, -NONE, 100, 0.999)).isEqualTo(Verdict.MARGINAL);
    }

    /** The same, u 2 % of the speed read: 106.588 (inputs from memory of JCGM 106, result computed). */
    @Test
    void guardedRejectionWithRelativeUncertainty() {
        assertThat(verdict(106.589, 0.02 * 106.589, -NONE, 100, 0.999)).isEqualTo(Verdict.FAIL);
        assertThat(verdict(106.587, 0.02 * 106.587, -NONE, 100, 0.999)).isEqualTo(Verdict.MARGINAL);
    }

    /**
     * ILAC-G8:09/2019: guard multiples r of U and the risk of a false accept right at the acceptance limit (multiples and
     * bounds secondary; risks computed, one-sided). The bounds hold for k = 2.
     */
    @ParameterizedTest
    @CsvSource({
        "0.83, 0.048457, 0.05, 1e-6",
        "1, 0.022750, 0.025, 1e-6",
        "1.5, 0.001350, 0.0016, 1e-6",
        "3, 9.87e-10, 1e-6, 1e-12"
    })
    void guardMultiplesWithKOfTwo(double multiple, double risk, double printedBound, double rounding) {
        assertThat(riskOnAcceptanceLimit(multiple, 2))
                .isCloseTo(risk, within(rounding))
                .isLessThan(printedBound);
    }

    /** The same with k = 1.959964 (computed): 0.83 U and 1.5 U then exceed the printed bounds, 1 U meets its own exactly. */
    @ParameterizedTest
    @CsvSource({"0.83, 0.051893", "1, 0.025000", "1.5, 0.001641"})
    void guardMultiplesWithKOf196(double multiple, double risk) {
        assertThat(riskOnAcceptanceLimit(multiple, 1.959964)).isCloseTo(risk, within(1e-6));
    }

    /**
     * The zones of ILAC-G8's rule that is not binary (secondary), U at k = 1.959964 and hence one-sided 0.975: pass up to
     * T − U, fail above T + U; its two conditional zones are one marginal zone here.
     */
    @Test
    void zones() {
        assertThat(verdict(8.03, 1, -NONE, 10, 0.975)).isEqualTo(Verdict.PASS);
        assertThat(verdict(8.05, 1, -NONE, 10, 0.975)).isEqualTo(Verdict.MARGINAL);
        assertThat(verdict(10, 1, -NONE, 10, 0.975)).isEqualTo(Verdict.MARGINAL);
        assertThat(verdict(11.95, 1, -NONE, 10, 0.975)).isEqualTo(Verdict.MARGINAL);
        assertThat(verdict(11.97, 1, -NONE, 10, 0.975)).isEqualTo(Verdict.FAIL);
    }

    /** Simple acceptance: on the limit itself the risk is 50 % (secondary, ILAC-G8). */
    @Test
    void onTheLimitChancesAreEven() {
        assertThat(riskOnAcceptanceLimit(0, 2)).isCloseTo(0.5, within(1e-12));
    }

    private static double riskOnAcceptanceLimit(double multiple, double k) {
        double u = 0.7;
        return 1
                - Ends.of(point(40 - multiple * k * u, u), Interval.atMost(40, Unit.DB))
                        .holds();
    }

    private static Verdict verdict(double y, double u, double lower, double upper, double confidence) {
        Statement statement =
                new Statement(Interval.of(lower, upper, Unit.DB), confidence, new JointTail(List.of(), 1000));
        return statement.every(List.of(point(y, u))).verdict();
    }

    private static Points.One point(double value, double u) {
        return new Points.One(
                0,
                0,
                1,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                value,
                new NormalErrors(u),
                false,
                Bound.MEASURED);
    }
}
