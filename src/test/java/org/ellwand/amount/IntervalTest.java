package org.ellwand.amount;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class IntervalTest {
    private static final double INFINITE = Double.POSITIVE_INFINITY;

    @Test
    void endsBelongToARange() {
        Interval range = Interval.of(15, 21, Unit.DB);
        assertThat(range.contains(15)).isTrue();
        assertThat(range.contains(21)).isTrue();
        assertThat(range.contains(14.999)).isFalse();
        assertThat(range.contains(21.001)).isFalse();
    }

    @Test
    void openEndsDoNot() {
        Interval above = new Interval(90, INFINITE, true, false, Unit.DB_SPL);
        assertThat(above.contains(90)).isFalse();
        assertThat(above.contains(90.001)).isTrue();
        Interval below = new Interval(-INFINITE, 90, false, true, Unit.DB_SPL);
        assertThat(below.contains(90)).isFalse();
        assertThat(below.contains(89.999)).isTrue();
    }

    @Test
    void anEndIsThereOrNot() {
        assertThat(Interval.of(15, 21, Unit.DB).hasLower()).isTrue();
        assertThat(Interval.of(15, 21, Unit.DB).hasUpper()).isTrue();
        Interval atLeast = Interval.atLeast(15, Unit.DB);
        assertThat(atLeast.hasLower()).isTrue();
        assertThat(atLeast.hasUpper()).isFalse();
        Interval atMost = Interval.atMost(3, Unit.PERCENT);
        assertThat(atMost.hasLower()).isFalse();
        assertThat(atMost.hasUpper()).isTrue();
    }

    @Test
    void anotherUnitKeepsWhichEndsAreOpen() {
        assertThat(new Interval(0.125, 8, true, false, Unit.KHZ).in(Unit.HZ))
                .isEqualTo(new Interval(125, 8000, true, false, Unit.HZ));
    }

    @Test
    void whatIsNoRangeIsRefused() {
        assertThatThrownBy(() -> Interval.of(21, 15, Unit.DB))
                .hasMessage("the lower end 21.0 lies above the upper end 15.0");
        assertThatThrownBy(() -> Interval.of(Double.NaN, 15, Unit.DB)).isInstanceOf(IllegalArgumentException.class);
    }
}
