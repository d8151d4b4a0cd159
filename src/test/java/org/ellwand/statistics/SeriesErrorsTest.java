package org.ellwand.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Ten draws whose shares can be counted by eye. */
class SeriesErrorsTest {
    private static final double INFINITE = Double.POSITIVE_INFINITY;
    private static final Errors ALL_KNOWN = new SeriesErrors(new double[] {3, -2, 0, 1, 1, 2, -1, 4, 1, 5});

    @Test
    void countsWhatIsAtMostAndAtLeastSoMuch() {
        assertThat(ALL_KNOWN.atMost(1)).isEqualTo(0.6);
        assertThat(ALL_KNOWN.atMost(0.999)).isEqualTo(0.3);
        assertThat(ALL_KNOWN.atMost(-2)).isEqualTo(0.1);
        assertThat(ALL_KNOWN.atMost(-3)).isZero();
        assertThat(ALL_KNOWN.atLeast(1)).isEqualTo(0.7);
        assertThat(ALL_KNOWN.atLeast(1.001)).isEqualTo(0.4);
        assertThat(ALL_KNOWN.atLeast(5)).isEqualTo(0.1);
        assertThat(ALL_KNOWN.atLeast(6)).isZero();
    }

    @Test
    void aQuantileIsTheDrawThatReachesTheProbability() {
        assertThat(ALL_KNOWN.quantile(0)).isEqualTo(-2);
        assertThat(ALL_KNOWN.quantile(0.1)).isEqualTo(-2);
        assertThat(ALL_KNOWN.quantile(0.11)).isEqualTo(-1);
        assertThat(ALL_KNOWN.quantile(0.5)).isEqualTo(1);
        assertThat(ALL_KNOWN.quantile(0.9)).isEqualTo(4);
        assertThat(ALL_KNOWN.quantile(1)).isEqualTo(5);
    }

    @Test
    void drawsBeyondAnEndCountForTheirSide() {
        SeriesErrors errors = new SeriesErrors(new double[] {-INFINITE, 0, 1, INFINITE});
        assertThat(errors.atMost(-1000)).isEqualTo(0.25);
        assertThat(errors.atLeast(1000)).isEqualTo(0.25);
        assertThat(errors.quantile(0.9)).isEqualTo(INFINITE);
        assertThat(errors.unknown()).isZero();
    }

    @Test
    void whatCannotBeSaidCountsForNoSide() {
        SeriesErrors errors = new SeriesErrors(new double[] {Double.NaN, 0, 1, Double.NaN, 2});
        assertThat(errors.unknown()).isCloseTo(0.4, within(1e-15));
        assertThat(errors.atMost(100)).isEqualTo(0.6);
        assertThat(errors.atLeast(-100)).isEqualTo(0.6);
        assertThat(errors.quantile(0.5)).isEqualTo(1);
        assertThat(new SeriesErrors(new double[] {Double.NaN}).quantile(0.5)).isNaN();
    }
}
