package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.ellwand.acoustics.Resolution;
import org.ellwand.amount.Amount;
import org.ellwand.amount.Unit;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.SharedBy;
import org.ellwand.words.Remark;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Numbers that lie beyond what was measured, compared with others or averaged; levels are invented. */
class BeyondSeriesTest {
    private static Bench bench() {
        return new Bench("crew-01", Resolution.OCTAVE)
                .cause("insertion", 0.5, SharedBy.INSERTION, false)
                .cause("reading", 0.2, SharedBy.READING, true);
    }

    /** In ebb the response has fallen by 6 dB at 3 kHz, in flood it never does. */
    private static Session twoSettings() {
        return bench().reading("device=Skerry, setting=ebb, stimulus=n62, insertion=1", 250, 40, 60, 65, 65, 55)
                .reading("device=Skerry, setting=flood, stimulus=n62, insertion=1", 250, 65, 65, 65, 65, 65)
                .session();
    }

    /** Gains at 1 kHz of −5, −5 and −11 dB in two heads, in the third of −5 dB at every level. */
    private static Session threeHeads() {
        Bench bench = bench();
        for (String who : new String[] {"head=a, ear=a1, ", "head=b, ear=b1, ", "head=c, ear=c1, "}) {
            bench.reading("device=open ear, " + who + "stimulus=n62", 1000, 60)
                    .reading("device=open ear, " + who + "stimulus=n78", 1000, 76)
                    .reading("device=open ear, " + who + "stimulus=n94", 1000, 92)
                    .reading("device=Skerry, insertion=1, " + who + "stimulus=n62", 1000, 55)
                    .reading("device=Skerry, insertion=1, " + who + "stimulus=n78", 1000, 71)
                    .reading("device=Skerry, insertion=1, " + who + "stimulus=n94", 1000, who.contains("c") ? 87 : 81);
        }
        return bench.session();
    }

    private static void isNotTold(Judgement judgement) {
        assertThat(judgement.verdict()).isEqualTo(Verdict.UNTESTED);
        assertThat(judgement.reasons()).extracting(Remark::key).containsExactly("part-beyond");
        assertThat(judgement.value()).isEmpty();
        assertThat(judgement.probability()).isEmpty();
    }

    /** Three thousand hertz over nobody knows what is no ratio, whichever stands first, and neither is the difference known. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "{setting: [ebb, flood]}, compared by: ratio, limit: at most 0.5",
                "{setting: [ebb, flood]}, compared by: ratio, limit: at least 2",
                "{setting: [flood, ebb]}, compared by: ratio, limit: at least 2",
                "{setting: [ebb, flood]}, limit: at most -1 kHz",
                "{setting: [flood, ebb]}, limit: at most 1 kHz"
            })
    void aComparisonWithWhatLiesBeyondIsNotTold(String comparison) {
        isNotTold(Bench.judge(
                "quantity: upper limiting frequency, drop: 6 dB, reference: 1 kHz, bands: all, level: 62 dB SPL,"
                        + " between: " + comparison,
                twoSettings()));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "mean, limit: at least 80 dB SPL",
                "mean, limit: at most 80 dB SPL",
                "share of 50 %, limit: at least 80 dB SPL"
            })
    void aMeanOfWhatLiesBeyondIsNotTold(String ears) {
        isNotTold(Bench.judge(
                "quantity: onset level, statistic: mean, drop: 3 dB, bands: 1 kHz, ears: " + ears, threeHeads()));
    }

    /** Of each ear it is told on which side it lies: 86 dB twice, and above 94 dB. */
    @Test
    void eachByItselfIsTold() {
        String each = "quantity: onset level, statistic: mean, drop: 3 dB, bands: 1 kHz, ears: each, limit: ";
        assertThat(Bench.judge(each + "at least 80 dB SPL", threeHeads()).verdict())
                .isEqualTo(Verdict.PASS);
        assertThat(Bench.judge(each + "at most 90 dB SPL", threeHeads()).verdict())
                .isEqualTo(Verdict.FAIL);
    }

    /** Gains of −5, −11 and −17 dB against −5, −5 and −11 dB: 3 dB less at 70 and at 86 dB SPL, 16 dB apart. */
    @Test
    void twoOnsetsAreComparedInDecibels() {
        Bench bench = bench().reading("device=open ear, stimulus=n62", 1000, 60)
                .reading("device=open ear, stimulus=n78", 1000, 76)
                .reading("device=open ear, stimulus=n94", 1000, 92);
        double[] flood = {55, 65, 75};
        double[] ebb = {55, 71, 81};
        for (int i = 0; i < 3; i++) {
            String sound = ", insertion=1, stimulus=n" + (62 + 16 * i);
            bench.reading("device=Skerry, setting=flood" + sound, 1000, flood[i])
                    .reading("device=Skerry, setting=ebb" + sound, 1000, ebb[i]);
        }
        Judgement judgement = Bench.judge(
                "quantity: onset level, statistic: mean, drop: 3 dB, bands: 1 kHz,"
                        + " between: {setting: [flood, ebb]}, limit: at most -10 dB",
                bench.session());
        assertThat(judgement.value().orElseThrow()).isCloseTo(-16, within(1e-9));
        assertThat(judgement.verdict()).isEqualTo(Verdict.PASS);
    }

    /**
     * Gains of −5, −5 and −11 dB in flood have fallen by 3 dB at 86 dB; in ebb, where the soft sound, which both sides have, is
     * followed by the loudest and others, too. A side needs no level of the other: each is a series of its own.
     */
    private static Bench overOwnLevels(boolean longEnough) {
        Bench bench = bench().sound("n70", new Amount(70, Unit.DB_SPL, 0));
        for (int level : new int[] {62, 70, 78, 94}) {
            bench.reading("device=open ear, stimulus=n" + level, 1000, level - 2);
            boolean loud = level == 94;
            if (level != 70) {
                bench.reading(
                        "device=Skerry, insertion=1, setting=flood, stimulus=n" + level, 1000, level - (loud ? 13 : 7));
            }
            if (level != 78 && (longEnough || loud || level == 62)) {
                bench.reading(
                        "device=Skerry, insertion=1, setting=ebb, stimulus=n" + level, 1000, level - (loud ? 13 : 7));
            }
        }
        return bench;
    }

    private static final String COMPARED = "quantity: onset level, statistic: mean, drop: 3 dB, bands: 1 kHz,"
            + " between: {setting: [flood, ebb]}, limit: at least 1 dB";

    @Test
    void aComparisonNeedsNoLevelsInCommon() {
        Judgement judgement = Bench.judge(COMPARED, overOwnLevels(true).session());
        assertThat(judgement.value().orElseThrow()).isCloseTo(86 - 82, within(1e-9));
        assertThat(judgement.remarks()).extracting(Remark::key).contains("series-of-own-levels");
    }

    /** Two ears of a head by their sides, over the same levels. */
    @Test
    void sidesOfTheSameLevelsAreNotNoted() {
        Bench bench = bench();
        for (String side : new String[] {"left", "right"}) {
            for (int level : new int[] {62, 78, 94}) {
                String who = "side=" + side + ", ear=" + side + ", stimulus=n" + level;
                bench.reading("device=open ear, " + who, 1000, level)
                        .reading("device=Skerry, insertion=1, " + who, 1000, level - (level == 94 ? 13 : 7));
            }
        }
        Judgement judgement =
                Bench.judge(COMPARED.replace("setting: [flood, ebb]", "side: [left, right]"), bench.session());
        assertThat(judgement.value().orElseThrow()).isCloseTo(0, within(1e-9));
        assertThat(judgement.remarks()).extracting(Remark::key).doesNotContain("series-of-own-levels");
    }

    @Test
    void aSideThatIsTooShortIsNamed() {
        Judgement judgement = Bench.judge(COMPARED, overOwnLevels(false).session());
        assertThat(judgement.verdict()).isEqualTo(Verdict.UNTESTED);
        assertThat(judgement.reasons().toString()).contains("short-series").doesNotContain("no-pairs");
    }

    /** Where only the errors of the readings carry a number beyond, nothing that was measured ends there. */
    @Test
    void aMeasuredDifferenceIsNoEnd() {
        Bench bench = new Bench("crew-01", Resolution.OCTAVE)
                .cause("insertion", 0.5, SharedBy.INSERTION, false)
                .cause("reading", 0.4, SharedBy.READING, true);
        for (int level : new int[] {62, 78, 94}) {
            boolean loud = level == 94;
            bench.reading("device=open ear, stimulus=n" + level, 1000, level)
                    .reading(
                            "device=Skerry, insertion=1, setting=flood, stimulus=n" + level,
                            1000,
                            level - (loud ? 8.6 : 5))
                    .reading(
                            "device=Skerry, insertion=1, setting=ebb, stimulus=n" + level,
                            1000,
                            level - (loud ? 8.6 : 5));
        }
        String rule =
                "quantity: onset level, statistic: mean, drop: 3 dB, bands: 1 kHz, between: {setting: [flood, ebb]}, ";
        Judgement open = Bench.judge(rule + "limit: at least 1 dB", bench.session());
        assertThat(open.reasons()).extracting(Remark::key).containsExactly("series-open");
    }
}
