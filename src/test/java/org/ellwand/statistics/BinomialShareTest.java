package org.ellwand.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class BinomialShareTest {
    /** Smallest n with share^n ≤ 0.05, by hand: 0.8^14 = 0.0440, 0.9^29 = 0.0471, 0.95^59 = 0.0485; one less is above. */
    @ParameterizedTest
    @CsvSource({"0.80, 14", "0.90, 29", "0.95, 59"})
    void countsWithNoneOutside(double share, int count) {
        assertThat(BinomialShare.countWithNoneOutside(share, 0.95)).isEqualTo(count);
        assertThat(new BinomialShare(count, count).confidence(share)).isGreaterThanOrEqualTo(0.95);
        assertThat(new BinomialShare(count - 1, count - 1).confidence(share)).isLessThan(0.95);
    }

    @Test
    void aPowerThatHitsTheConfidenceIsEnough() {
        assertThat(BinomialShare.countWithNoneOutside(0.5, 0.75)).isEqualTo(2);
        assertThat(BinomialShare.countWithNoneOutside(0.9, 0.271)).isEqualTo(3);
        assertThat(BinomialShare.countWithNoneOutside(0.5, 0.01)).isEqualTo(1);
    }

    /** By hand: with all of n inside 1 − p^n, and k = n − 1 adds n p^(n−1) (1 − p) to what is taken away. */
    @Test
    void confidencesByHand() {
        assertThat(new BinomialShare(3, 3).confidence(0.5)).isCloseTo(0.875, within(1e-14));
        assertThat(new BinomialShare(3, 2).confidence(0.5)).isCloseTo(0.5, within(1e-14));
        assertThat(new BinomialShare(3, 2).chanceThisBad(0.5)).isCloseTo(0.875, within(1e-14));
        assertThat(new BinomialShare(3, 0).chanceThisBad(0.9)).isCloseTo(0.001, within(1e-15));
    }

    /** Bounds by hand: all of n inside gives (1 − γ)^(1/n), one of n 1 − γ^(1/n). */
    @ParameterizedTest
    @ValueSource(ints = {1, 5, 20, 300})
    void lowerBoundsByHand(int n) {
        assertThat(new BinomialShare(n, n).shareAtLeast(0.95)).isCloseTo(Math.pow(0.05, 1.0 / n), within(1e-12));
        assertThat(new BinomialShare(n, 1).shareAtLeast(0.95)).isCloseTo(1 - Math.pow(0.95, 1.0 / n), within(1e-12));
        assertThat(new BinomialShare(n, 0).shareAtLeast(0.95)).isZero();
    }

    @Test
    void atTheLowerBoundTheConfidenceIsThatAskedFor() {
        BinomialShare share = new BinomialShare(17, 14);
        assertThat(share.confidence(share.shareAtLeast(0.9))).isCloseTo(0.9, within(1e-10));
    }

    /** "All" is refuted by one outside and never shown; "none or more" holds of itself. */
    @Test
    void endsOfTheScale() {
        assertThat(new BinomialShare(20, 20).confidence(1)).isZero();
        assertThat(new BinomialShare(20, 20).chanceThisBad(1)).isEqualTo(1);
        assertThat(new BinomialShare(20, 19).chanceThisBad(1)).isZero();
        assertThat(new BinomialShare(20, 0).chanceThisBad(0)).isEqualTo(1);
    }

    /** Over all outcomes: a share is said to be exceeded, or refuted, wrongly in no more than 5 % of cases. */
    @ParameterizedTest
    @CsvSource({"5, 0.8", "20, 0.9", "20, 0.5", "59, 0.95", "100, 0.83"})
    void errsNoMoreOftenThanItSays(int n, double share) {
        BinomialDistribution outcomes = BinomialDistribution.of(n, share);
        double saidWrongly = 0;
        double refutedWrongly = 0;
        for (int k = 0; k <= n; k++) {
            BinomialShare seen = new BinomialShare(n, k);
            saidWrongly += seen.confidence(share) >= 0.95 ? outcomes.probability(k) : 0;
            refutedWrongly += seen.chanceThisBad(share) <= 0.05 ? outcomes.probability(k) : 0;
        }
        assertThat(saidWrongly).isLessThanOrEqualTo(0.05 + 1e-12);
        assertThat(refutedWrongly).isLessThanOrEqualTo(0.05 + 1e-12);
    }

    @Test
    void impossibleCountsAreRefused() {
        assertThatThrownBy(() -> new BinomialShare(0, 0)).hasMessage("0 of 0 values cannot be inside");
        assertThatThrownBy(() -> new BinomialShare(3, 4)).hasMessage("4 of 3 values cannot be inside");
        assertThatThrownBy(() -> new BinomialShare(3, -1)).hasMessage("-1 of 3 values cannot be inside");
    }

    @Test
    void noCountShowsAllOrIsSure() {
        assertThatThrownBy(() -> BinomialShare.countWithNoneOutside(1, 0.95))
                .hasMessage("a share lies between 0 and 1, not at 1.0");
        assertThatThrownBy(() -> BinomialShare.countWithNoneOutside(0.9, 1))
                .hasMessage("a confidence lies between 0 and 1, not at 1.0");
    }
}
