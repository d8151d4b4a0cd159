package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.ellwand.acoustics.Bound;
import org.ellwand.amount.Interval;
import org.ellwand.amount.Unit;
import org.ellwand.statistics.NormalErrors;
import org.ellwand.words.Remark;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One point and the ends of its limit. */
class EndsTest {
    private static final double NONE = Double.POSITIVE_INFINITY;

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

    /** Φ(2) = 0.97725 to the lower end 2 u below, Φ(1) = 0.84134 to the upper end 1 u above. */
    @Test
    void bothEndsAndBetweenThem() {
        Ends ends = Ends.of(point(4, 0.5), Interval.of(3, 4.5, Unit.DB));
        assertThat(ends.atLower()).isCloseTo(0.9772499, within(1e-7));
        assertThat(ends.atUpper()).isCloseTo(0.8413447, within(1e-7));
        assertThat(ends.holds()).isCloseTo(0.8185946, within(1e-7));
        assertThat(ends.worse()).isEqualTo(ends.atUpper());
        assertThat(Ends.of(point(3.5, 0.5), Interval.of(3, 4.5, Unit.DB)).worse())
                .isCloseTo(0.8413447, within(1e-7));
    }

    /** An exact number on an open end is outside; on a closed end, or a hair off it by rounding, inside. */
    @Test
    void exactNumbersOnAnEnd() {
        Interval open = new Interval(2, 3, true, true, Unit.PERCENT);
        Interval closed = Interval.of(2, 3, Unit.PERCENT);
        for (double end : new double[] {2, 3, 2 + 5e-10, 3 - 5e-10, 2 - 5e-10, 3 + 5e-10}) {
            assertThat(Ends.of(point(end, 0), open).holds()).isZero();
            assertThat(Ends.of(point(end, 0), closed).holds()).isOne();
        }
        Ends onLower = Ends.of(point(2, 0), open);
        assertThat(onLower.atLower()).isZero();
        assertThat(onLower.atUpper()).isOne();
        Ends onUpper = Ends.of(point(3, 0), open);
        assertThat(onUpper.atLower()).isOne();
        assertThat(onUpper.atUpper()).isZero();
        assertThat(Ends.of(point(2.5, 0), open).holds()).isOne();
        assertThat(Ends.of(point(3.01, 0), closed).holds()).isZero();
        // With an uncertainty an end is no number that is ever met.
        assertThat(Ends.of(point(3, 0.1), new Interval(-NONE, 3, true, true, Unit.PERCENT))
                        .holds())
                .isCloseTo(0.5, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"4, 2", "2, -2", "5.5, 1", "6.5, -1", "4.5, 3"})
    void distanceToTheNearestEndInUncertainties(double value, double margin) {
        assertThat(Ends.margin(point(value, 0.5), Interval.of(3, 6, Unit.DB))).isCloseTo(margin, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({
        "2, 3, 1.9, below",
        "2, 3, 2, inside",
        "2, 3, 3, inside",
        "2, 3, 3.0000000001, inside",
        "2, 3, 3.1, above",
        "2, Infinity, 1, below",
        "2, Infinity, 9, inside",
        "-Infinity, 3, 4, above",
        "-Infinity, 3, -4, inside"
    })
    void sideOfAValueWhoseSpreadNobodyKnows(double lower, double upper, double value, String side) {
        Remark remark = Ends.notStated(value, Interval.of(lower, upper, Unit.DB));
        assertThat(remark.key()).isEqualTo("uncertainty-not-stated-" + side);
    }
}
