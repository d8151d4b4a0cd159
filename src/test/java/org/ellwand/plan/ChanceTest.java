package org.ellwand.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.ellwand.amount.Interval;
import org.ellwand.amount.Unit;
import org.ellwand.statistics.NormalErrors;
import org.ellwand.statistics.NormalStream;
import org.ellwand.statistics.Seeds;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChanceTest {
    private static final Chance AT_LEAST_15 = Chance.ofOne(Interval.atLeast(15, Unit.DB), 0.95);
    private static final Chance BAND = Chance.ofOne(Interval.of(15, 21, Unit.DB), 0.95);

    /** n = (1.645 + 0.842)² s² / d², rounded up: the usual sample size for 5 % one-sided and a power of 80 %, s known. */
    @ParameterizedTest
    @CsvSource({"3, 1, 56", "3, 2, 14", "3, 3, 7", "2, 1, 25", "1, 1, 7"})
    void isTheUsualSampleSize(double s, double d, int n) {
        assertThat(AT_LEAST_15.firm(15 + d, s / Math.sqrt(n))).isGreaterThanOrEqualTo(0.8);
        assertThat(AT_LEAST_15.firm(15 + d, s / Math.sqrt(n - 1))).isLessThan(0.8);
    }

    /** ln(1 − C) / ln(p), rounded up: 14, 29 and 59 for 80, 90 and 95 % (zero failures; common in reliability). */
    @ParameterizedTest
    @CsvSource({"0.80, 14", "0.90, 29", "0.95, 59"})
    void noneOutsideOfSoManySaysAShare(double share, int n) {
        assertThat(Chance.noneOutside(share, 0.95)).isEqualTo(n);
    }

    /** Against plain draws: how often the value of a sitting is decided by the rule of the judge. */
    @ParameterizedTest
    @CsvSource({"18, 1.0", "18, 1.6", "16, 0.7", "20.8, 0.4", "22.5, 0.6", "14, 1.2", "15, 0.5"})
    void isHowOftenASittingDecides(double truth, double u) {
        NormalStream draw = new NormalStream(Seeds.of("chance", truth + "/" + u));
        int firm = 0;
        int sittings = 40_000;
        for (int i = 0; i < sittings; i++) {
            double value = truth + u * draw.next();
            double above = phi((value - 15) / u);
            double below = phi((21 - value) / u);
            if (above + below - 1 >= 0.95 || above <= 0.05 || below <= 0.05) {
                firm++;
            }
        }
        assertThat(BAND.firm(truth, u)).isCloseTo(firm / (double) sittings, within(0.01));
    }

    /** The power of a one-sided t test at 5 %, and what little lies beyond the other side: noncentral t of SciPy 1.x (stats.nct). */
    @ParameterizedTest
    @CsvSource({
        "1, 1, 8, 0.815030537",
        "2, 1.5, 5, 0.786855423",
        "1, 2, 27, 0.811846255",
        "3, 1, 2, 0.493115204",
        "1.4, 1.5, 9, 0.818013779"
    })
    void ofAScatterThatIsSeenInTheRepeatsIsThePowerOfTheTTest(double d, double s, int n, double power) {
        assertThat(AT_LEAST_15.firm(15 + d, 0, s, n)).isCloseTo(power, within(1e-4));
        assertThat(AT_LEAST_15.firm(15 + d, s / Math.sqrt(n))).isGreaterThan(power);
    }

    @Test
    void ofManyRepeatsTheScatterIsAsGoodAsKnown() {
        assertThat(BAND.firm(18.5, 0.8, 6, 40))
                .isCloseTo(BAND.firm(18.5, Math.hypot(0.8, 6 / Math.sqrt(40))), within(0.03));
        assertThat(BAND.firm(18.5, 0.8, 0, 40)).isEqualTo(BAND.firm(18.5, 0.8));
    }

    @Test
    void aValueThatPassesNoLimitOfThisWidthNeedsATolerance() {
        assertThat(BAND.firm(18, 2)).isLessThan(0.06); // u of at most 3/1.96 = 1.53 dB lets a value pass
        double half = BAND.tolerance(18.5, new NormalErrors(1));
        assertThat(phi(half - 0.5) + phi(half + 0.5) - 1).isCloseTo(0.95, within(1e-9));
    }

    @Test
    void whereSeveralAreJudgedAFailNeedsMore() {
        Chance several = Chance.ofSeveral(Interval.atLeast(15, Unit.DB), 0.95, 26);
        assertThat(several.firm(13, 0.7)).isLessThan(AT_LEAST_15.firm(13, 0.7));
        assertThat(several.seen(13, phi(-2)).firm(13, 0.7)).isGreaterThan(several.firm(13, 0.7));
        assertThat(several.seen(16, phi(-2))).isEqualTo(several);
    }

    /** The judge did not fail a value 4 u beyond its limit: half of the sittings lie no farther. */
    @Test
    void whatWasNotEnoughForAFailIsNoneOfTheChance() {
        Chance several = Chance.ofSeveral(Interval.atLeast(15, Unit.DB), 0.95, 26);
        assertThat(several.unseen(13, phi(-4)).firm(13, 0.5)).isCloseTo(0.5, within(1e-6));
        assertThat(several.unseen(13, phi(-2))).isEqualTo(several);
        assertThat(several.unseen(16, phi(-4))).isEqualTo(several);
    }

    private static double phi(double z) {
        return NormalErrors.phi(z);
    }
}
