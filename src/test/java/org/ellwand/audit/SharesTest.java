package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.ellwand.acoustics.Resolution;
import org.ellwand.input.InputException;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.SharedBy;
import org.ellwand.statistics.NoncentralT;
import org.ellwand.statistics.ToleranceFactor;
import org.ellwand.words.Remark;
import org.junit.jupiter.api.Test;

/** Shares of people, from one ear a head, one insertion each. */
class SharesTest {
    private static final String RULE =
            "quantity: attenuation, level: 94 dB SPL, bands: 1 kHz, statistic: mean, ears: share of 90 %, limit: ";

    /** Ten heads at 20 dB ± 2 dB in steps that give a standard deviation of exactly 2 dB. */
    private static Session heads(int count, boolean bothEars) {
        Bench bench = new Bench("crew-01", Resolution.OCTAVE)
                .cause("insertion", 0.1, SharedBy.INSERTION, false)
                .cause("reading", 0, SharedBy.READING, true);
        double step = 2 / Math.sqrt(count / (count - 1.0));
        for (int h = 0; h < count; h++) {
            double attenuation = 20 + (h % 2 == 0 ? step : -step);
            for (String ear : bothEars ? List.of("left", "right") : List.of("left")) {
                String who = "head=h" + h + ", ear=" + ear + h + ", stimulus=n94";
                bench.reading("device=open ear, " + who, 1000, 80);
                bench.reading("device=Skerry, insertion=1, " + who, 1000, 80 - attenuation);
            }
        }
        return bench.session();
    }

    @Test
    void theConfidenceIsThatOfTheNoncentralT() {
        Judgement judged = Bench.judge(RULE + "at least 16 dB", heads(10, false));
        double expected = NoncentralT.of(9, 1.2815515655446004 * Math.sqrt(10)).atMost(Math.sqrt(10) * 4 / 2);
        assertThat(judged.value().orElseThrow()).isCloseTo(20, within(1e-9));
        assertThat(judged.probability().orElseThrow()).isCloseTo(expected, within(1e-9));
    }

    /** x̄ − k s with k = 2.35464 for ten, nine of ten, 95 % (values computed in the tables of tolerance factors). */
    @Test
    void passesFromTheToleranceBoundOn() {
        double bound = 20 - 2 * ToleranceFactor.oneSided(10, 0.9, 0.95);
        assertThat(bound).isCloseTo(20 - 2 * 2.35464, within(1e-4));
        assertThat(Bench.judge(RULE + "at least " + decimal(bound - 0.01) + " dB", heads(10, false))
                        .verdict())
                .isEqualTo(Verdict.PASS);
        assertThat(Bench.judge(RULE + "at least " + decimal(bound + 0.01) + " dB", heads(10, false))
                        .verdict())
                .isEqualTo(Verdict.MARGINAL);
        assertThat(Bench.judge(RULE + "at least 25 dB", heads(10, false)).verdict())
                .isEqualTo(Verdict.FAIL);
    }

    /** Two-sided: k = 2.8563 for ten, nine of ten, 95 %. */
    @Test
    void aTwoSidedLimitTakesTheTwoSidedFactor() {
        double half = 2 * ToleranceFactor.twoSided(10, 0.9, 0.95);
        assertThat(half).isCloseTo(2 * 2.8563, within(1e-3));
        String inside = decimal(20 - half - 0.01) + " to " + decimal(20 + half + 0.01) + " dB";
        String outside = decimal(20 - half + 0.01) + " to " + decimal(20 + half - 0.01) + " dB";
        assertThat(Bench.judge(RULE + inside, heads(10, false)).verdict()).isEqualTo(Verdict.PASS);
        assertThat(Bench.judge(RULE + outside, heads(10, false)).verdict()).isEqualTo(Verdict.MARGINAL);
    }

    /** Two ears of one head are one person: were they two, the bound would lie nearer. */
    @Test
    void twoEarsOfOneHeadAreNotTwoPeople() {
        assertThat(Bench.judge(RULE + "at least 16 dB", heads(10, true)).probability())
                .isEqualTo(
                        Bench.judge(RULE + "at least 16 dB", heads(10, false)).probability());
    }

    @Test
    void oneHeadTellsNothingOfOthersEvenWhereACauseIsDeclared() {
        Session one = new Bench("crew-01", Resolution.OCTAVE)
                .cause("insertion", 0.1, SharedBy.INSERTION, false)
                .cause("reading", 0, SharedBy.READING, true)
                .cause("ear", 2, SharedBy.EAR, false)
                .reading("device=open ear, head=a, stimulus=n94", 1000, 80)
                .reading("device=Skerry, head=a, stimulus=n94, insertion=1", 1000, 50)
                .session();
        Judgement judged = Bench.judge(RULE + "at least 5 dB", one);
        assertThat(judged.verdict()).isEqualTo(Verdict.MARGINAL);
        assertThat(judged.reasons())
                .extracting(Remark::text)
                .containsExactly("one ear tells nothing of others: measure more");
    }

    @Test
    void theNoteSaysWhichShareCanBeSaid() {
        assertThat(Bench.judge(RULE + "at least 16 dB", heads(10, false)).notes())
                .anyMatch(note -> note.matches("of 10 measured, it can be said with 95 % confidence that at least"
                        + " [0-9.]+ % of all lie inside the limit"));
    }

    @Test
    void whatNoiseShiftsInEveryEarIsRefused() {
        assertThatThrownBy(() -> Bench.judge(
                        RULE.replace("statistic: mean", "statistic: lowest") + "at least 16 dB", heads(10, false)))
                .hasCauseInstanceOf(InputException.class)
                .hasMessageContaining("a share cannot be told by 'statistic: lowest', which noise shifts in every ear:"
                        + " it takes every band, mean, slope, overall");
    }

    private static String decimal(double value) {
        return String.format(java.util.Locale.ROOT, "%.4f", value);
    }
}
