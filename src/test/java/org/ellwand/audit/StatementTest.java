package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
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
 * What is said of points whose errors are normal with u = 1, at a confidence of 95 %; shares of the error probability are
 * those of Bonferroni. Quantiles of the normal distribution: 0.95 at 1.644854, 0.975 at 1.959964, 1 − 0.05/3 at 2.128045.
 */
class StatementTest {
    private static final Interval AT_LEAST_0 = Interval.atLeast(0, Unit.DB);

    private static Statement statement(Interval limit) {
        return new Statement(limit, 0.95, new JointTail(List.of(), 0));
    }

    private static Points.One point(int at, double value, double u, boolean observed) {
        return new Points.One(
                0,
                at,
                1,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                value,
                new NormalErrors(u),
                observed,
                Bound.MEASURED);
    }

    /** Of observed scatter, so that the bound over the points is asked for, and nothing is drawn. */
    private static List<Points.One> points(double... values) {
        List<Points.One> points = new ArrayList<>();
        for (double value : values) {
            points.add(point(points.size(), value, 1, true));
        }
        return points;
    }

    @ParameterizedTest
    @CsvSource({"1.6449, PASS", "1.6448, MARGINAL"})
    void everyPassesWhereTheLeastIsConfident(double least, Verdict verdict) {
        Decision decision = statement(AT_LEAST_0).every(points(9, least, 8));
        assertThat(decision.verdict()).isEqualTo(verdict);
        assertThat(decision.point().value()).isEqualTo(least);
        assertThat(decision.probability()).isCloseTo(0.95, within(1e-4));
    }

    /** Two points: the worse one must look as bad as 0.025 by itself. */
    @ParameterizedTest
    @CsvSource({"-1.9600, FAIL", "-1.9599, MARGINAL"})
    void everyFailsByTheWorstOfTwo(double worst, Verdict verdict) {
        assertThat(statement(AT_LEAST_0).every(points(9, worst)).verdict()).isEqualTo(verdict);
    }

    /**
     * A limit of 0 to 1: seen from its nearest end a point looks as bad beyond the other end too. Φ(−1.7) + Φ(−2.7) = 0.0480,
     * Φ(−1.66) + Φ(−2.66) = 0.0524.
     */
    @ParameterizedTest
    @CsvSource({"-1.70, FAIL", "-1.66, MARGINAL", "2.70, FAIL", "2.66, MARGINAL"})
    void bothEndsOfANarrowLimitCount(double value, Verdict verdict) {
        Interval limit = Interval.of(0, 1, Unit.DB);
        assertThat(statement(limit).every(points(value)).verdict()).isEqualTo(verdict);
    }

    @ParameterizedTest
    @CsvSource({"-1.9600, FAIL", "-1.9599, MARGINAL", "1.9599, MARGINAL", "1.9600, PASS"})
    void someIsDecidedByTheMostProbable(double most, Verdict verdict) {
        Decision decision = statement(AT_LEAST_0).some(points(most, -9), 0.5);
        assertThat(decision.verdict()).isEqualTo(verdict);
        assertThat(decision.point().value()).isEqualTo(most);
    }

    /** Of four points three must hold: the second least decides; 0.05/2 is left to pass by, a third of 0.05 to fail by. */
    @ParameterizedTest
    @CsvSource({
        "1.9600, 1, PASS",
        "1.9599, 1, MARGINAL",
        "-2.1280, 1, MARGINAL",
        "-2.1281, 1, FAIL",
        "-2.1281, 0.5, MARGINAL"
    })
    void halfIsDecidedByTheOneInTheMiddle(double second, double share, Verdict verdict) {
        Decision decision = statement(AT_LEAST_0).half(points(9, -9, second, 8), 3, share);
        assertThat(decision.verdict()).isEqualTo(verdict);
        assertThat(decision.point().value()).isEqualTo(second);
    }

    /** All of them certain: what holds by the least is the least probable, what holds by the most the most probable. */
    @Test
    void amongEqualsTheDistanceTells() {
        List<Points.One> exact = List.of(point(0, 3, 0, false), point(1, 2, 0, false), point(2, 4, 0, false));
        assertThat(statement(AT_LEAST_0).every(exact).point().value()).isEqualTo(2);
        assertThat(statement(AT_LEAST_0).some(exact, 1).point().value()).isEqualTo(4);
        List<Points.One> beyond = List.of(point(0, -3, 0, false), point(1, -2, 0, false), point(2, -4, 0, false));
        assertThat(statement(AT_LEAST_0).every(beyond).point().value()).isEqualTo(-4);
        assertThat(statement(AT_LEAST_0).some(beyond, 1).point().value()).isEqualTo(-2);
    }

    /** By simple acceptance: an exact number is inside or outside. */
    @Test
    void exactNumbersAreDecided() {
        assertThat(statement(AT_LEAST_0).every(List.of(point(0, 0, 0, false))).verdict())
                .isEqualTo(Verdict.PASS);
        assertThat(statement(AT_LEAST_0)
                        .every(List.of(point(0, -1e-6, 0, false), point(1, 5, 0, false)))
                        .verdict())
                .isEqualTo(Verdict.FAIL);
    }
}
