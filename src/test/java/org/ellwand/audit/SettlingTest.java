package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import org.ellwand.acoustics.Bound;
import org.ellwand.amount.Interval;
import org.ellwand.amount.Unit;
import org.ellwand.statistics.NormalErrors;
import org.ellwand.words.Remark;
import org.junit.jupiter.api.Test;

/** A value 1.5 u below the least that was claimed, all of its uncertainty from three insertions: Φ(−1.5) = 0.067. */
class SettlingTest {
    private static final Interval LIMIT = Interval.atLeast(20, Unit.DB);

    private static Remark reason(int points) {
        Points.One point = new Points.One(
                0,
                0,
                1,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                18.5,
                new NormalErrors(1),
                false,
                Bound.MEASURED);
        return new Settling(LIMIT, 0.95, points).of(point, 1, 3);
    }

    /** With four insertions u = √(3/4): Φ(−1.732) = 0.042. */
    @Test
    void oneMoreInsertionSettlesOnePoint() {
        assertThat(reason(1).text())
                .isEqualTo("too few insertions: were the value to stay, 4 insertions instead of 3 would settle it");
    }

    /** The worst of twenty is called false at 0.05/20 = 0.0025, z = 2.807: n = 3 · (2.807/1.5)² = 10.5, so eleven. */
    @Test
    void theWorstOfManyPointsTakesMore() {
        assertThat(reason(20).text())
                .isEqualTo("too few insertions: were the value to stay, 11 insertions instead of 3 would settle it");
    }
}
