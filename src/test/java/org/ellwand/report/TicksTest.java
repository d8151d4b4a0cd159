package org.ellwand.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class TicksTest {
    @Test
    void aUsualStepStaysWhereItsLinesCanBeTold() {
        assertThat(Ticks.fewer(10, 1000)).isEqualTo(10);
        assertThat(Ticks.between(0, 30, Ticks.fewer(10, 30))).containsExactly(0.0, 10.0, 20.0, 30.0);
    }

    /** A limit of nine digits is drawn like any other. */
    @Test
    void noRangeFillsAFigureWithLines() {
        for (double range : new double[] {1001, 12_345, 1e6, 123_456_789, 1e9}) {
            assertThat(Ticks.between(0, range, Ticks.fewer(10, range))).hasSizeBetween(10, 30);
            assertThat(range / CurveScale.dbPerDecade(range)).isLessThanOrEqualTo(8);
        }
    }
}
