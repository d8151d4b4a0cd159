package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.ellwand.acoustics.Bound;
import org.ellwand.amount.Interval;
import org.ellwand.amount.Unit;
import org.ellwand.statistics.NormalErrors;
import org.ellwand.statistics.NormalStream;
import org.ellwand.statistics.Seeds;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A limit that is narrow against the uncertainty has two ends at which chance may look bad. */
@Tag("slow")
class NarrowLimitTest {
    private static final int RUNS = 4000;

    @ParameterizedTest
    @ValueSource(doubles = {0.01, 0.1, 0.5, 3})
    void aTruthOnTheLowerEndFailsAtMostFivePercent(double half) {
        Interval limit = Interval.of(20 - half, 20 + half, Unit.DB);
        NormalStream draw = new NormalStream(Seeds.of("narrow", Double.toString(half)));
        int fails = 0;
        for (int run = 0; run < RUNS; run++) {
            fails += verdict(20 - half + draw.next(), 1, limit) == Verdict.FAIL ? 1 : 0;
        }
        assertThat((double) fails / RUNS).isCloseTo(0.05, within(0.011));
    }

    @Test
    void anExactValueOutsideFailsAndOneInsidePasses() {
        Interval limit = Interval.of(19, 21, Unit.DB);
        assertThat(verdict(18.99, 0, limit)).isEqualTo(Verdict.FAIL);
        assertThat(verdict(19, 0, limit)).isEqualTo(Verdict.PASS);
    }

    private static Verdict verdict(double value, double u, Interval limit) {
        Points.One point = new Points.One(
                0,
                0,
                1,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                value,
                new NormalErrors(u),
                false,
                Bound.MEASURED);
        return new Statement(limit, 0.95, new JointTail(List.of(), 1000))
                .every(List.of(point))
                .verdict();
    }
}
