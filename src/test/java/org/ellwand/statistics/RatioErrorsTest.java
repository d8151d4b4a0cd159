package org.ellwand.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** 20 h with u = 3 h against 10 h with u = 2 h. Numbers: Φ of the distance, by hand. */
class RatioErrorsTest {
    private static final RatioErrors ERRORS = new RatioErrors(20, 3, 10, 2);

    @Test
    void theProbabilityIsThatOfTheDifference() {
        // (2.83 · 10 − 20) / √(9 + 2.83² · 4) = 8.3 / 6.40590 = 1.29568; Φ = 0.90246
        assertThat(ERRORS.atMost(0.83)).isCloseTo(0.90246, within(1e-5));
        // (20 − 1.2 · 10) / √(9 + 1.44 · 4) = 8 / 3.84187 = 2.08231; Φ = 0.98134
        assertThat(ERRORS.atLeast(-0.8)).isCloseTo(0.98134, within(1e-5));
    }

    @Test
    void quantilesAreItsInverse() {
        for (double p : new double[] {0.025, 0.16, 0.5, 0.84, 0.975}) {
            assertThat(ERRORS.atMost(ERRORS.quantile(p))).isCloseTo(p, within(1e-9));
        }
    }

    @Test
    void isWhatDrawsSay() {
        NormalStream a = new NormalStream(Seeds.of("ratio", "a"));
        NormalStream b = new NormalStream(Seeds.of("ratio", "b"));
        int below = 0;
        int draws = 200_000;
        for (int i = 0; i < draws; i++) {
            below += (20 + 3 * a.next()) / (10 + 2 * b.next()) <= 2.83 ? 1 : 0;
        }
        assertThat((double) below / draws).isCloseTo(ERRORS.atMost(0.83), within(0.003));
    }

    @Test
    void aSecondNumberThatMayBeNothingHasNoUpperEnd() {
        assertThat(new RatioErrors(20, 3, 10, 6).quantile(0.975)).isInfinite();
    }

    @Test
    void exactNumbersHaveAnExactRatio() {
        RatioErrors exact = new RatioErrors(20, 0, 10, 0);
        assertThat(exact.atMost(-1e-9)).isZero();
        assertThat(exact.atMost(0)).isEqualTo(1);
        assertThat(exact.standardUncertainty()).isZero();
    }

    /** 20/−10 and −20/10 are one number, and err alike. */
    @Test
    void signsTurnedTogetherLeaveTheRatioAsItIs() {
        RatioErrors below = new RatioErrors(20, 3, -10, 2);
        RatioErrors above = new RatioErrors(-20, 3, 10, 2);
        for (double x : new double[] {-0.8, 0, 0.83}) {
            assertThat(below.atMost(x)).isEqualTo(above.atMost(x));
        }
        // Turned upside down: what was 0.83 or less is −0.83 or more.
        assertThat(below.atLeast(-0.83)).isCloseTo(ERRORS.atMost(0.83), within(1e-12));
    }

    @Test
    void withoutAnEndTheQuantileLiesBeyondItsOwnSide() {
        assertThat(new RatioErrors(20, 3, 10, 6).quantile(0.975)).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(new RatioErrors(20, 3, 10, 6).quantile(0.025)).isEqualTo(Double.NEGATIVE_INFINITY);
    }

    /** Beyond an end that a limit does not have lies nothing. */
    @Test
    void nothingLiesBeyondEverything() {
        assertThat(ERRORS.atMost(Double.POSITIVE_INFINITY)).isEqualTo(1);
        assertThat(ERRORS.atLeast(Double.POSITIVE_INFINITY)).isZero();
        assertThat(ERRORS.atMost(Double.NEGATIVE_INFINITY)).isZero();
        assertThat(ERRORS.atLeast(Double.NEGATIVE_INFINITY)).isEqualTo(1);
    }
}
