package org.ellwand.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Straight lines by hand. */
class CrossingTest {
    private static final double[] LEVELS_DB = {62, 70, 78, 94};

    @Test
    void liesOnTheStraightLineBeforeTheFirstPointBeyond() {
        // From 21 at 70 dB to 17 at 78 dB: 18 is three quarters of the way.
        assertThat(Crossing.first(LEVELS_DB, new double[] {22, 21, 17, 5}, 18, true))
                .isCloseTo(76, within(1e-12));
        assertThat(Crossing.first(LEVELS_DB, new double[] {40, 50, 54, 70}, 58, false))
                .isCloseTo(82, within(1e-12));
    }

    @Test
    void aPointOnTheValueIsThere() {
        assertThat(Crossing.first(LEVELS_DB, new double[] {22, 21, 17, 5}, 17, true))
                .isEqualTo(78);
        assertThat(Crossing.first(LEVELS_DB, new double[] {40, 50, 54, 70}, 50, false))
                .isEqualTo(70);
    }

    @Test
    void onlyTheFirstCrossingCounts() {
        assertThat(Crossing.first(LEVELS_DB, new double[] {22, 16, 22, 10}, 19, true))
                .isCloseTo(66, within(1e-12));
    }

    @Test
    void beyondFromTheStartIsThereFromTheStart() {
        assertThat(Crossing.first(LEVELS_DB, new double[] {10, 21, 17, 5}, 18, true))
                .isEqualTo(62);
        assertThat(Crossing.first(LEVELS_DB, new double[] {90, 50, 54, 70}, 58, false))
                .isEqualTo(62);
    }

    @Test
    void neverThereIsNoPlace() {
        assertThat(Crossing.first(LEVELS_DB, new double[] {22, 21, 19, 19}, 18, true))
                .isNaN();
        assertThat(Crossing.first(LEVELS_DB, new double[] {40, 50, 54, 57}, 58, false))
                .isNaN();
    }
}
