package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.api.InstanceOfAssertFactories;
import org.ellwand.acoustics.Resolution;
import org.ellwand.amount.Amount;
import org.ellwand.amount.Unit;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.SharedBy;
import org.ellwand.words.Remark;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Onsets compared under sounds that state their levels in several units. Gains of −5, −11 and −17 dB in flood have fallen by 3 dB half way
 * from the first sound to the second, those of −5, −5 and −11 dB in ebb half way from the second to the third; levels are invented.
 */
class SeriesUnitTest {
    private static final String COMPARED =
            "quantity: onset level, statistic: mean, drop: 3 dB, bands: 1 kHz," + " between: {setting: [flood, ebb]}";
    private static final Amount[] NONE = {};

    private static Amount spl(double level) {
        return new Amount(level, Unit.DB_SPL, 0);
    }

    private static Amount dbA(double level) {
        return new Amount(level, Unit.DB_A, 0);
    }

    private static Session session(Amount[] first, Amount[] second, Amount[] third) {
        return bench(first, second, third).session();
    }

    private static Bench bench(Amount[] first, Amount[] second, Amount[] third) {
        Bench bench = new Bench("crew-01", Resolution.OCTAVE)
                .cause("insertion", 0.5, SharedBy.INSERTION, false)
                .cause("reading", 0.2, SharedBy.READING, true)
                .sound("n62", first)
                .sound("n78", second)
                .sound("n94", third);
        double[] flood = {55, 65, 75};
        double[] ebb = {55, 71, 81};
        for (int i = 0; i < 3; i++) {
            String sound = ", stimulus=n" + (62 + 16 * i);
            bench.reading("device=open ear" + sound, 1000, 60 + 16 * i)
                    .reading("device=Skerry, insertion=1, setting=flood" + sound, 1000, flood[i])
                    .reading("device=Skerry, insertion=1, setting=ebb" + sound, 1000, ebb[i]);
        }
        return bench;
    }

    /** From sound to sound 16 and 16 dB, but 16 and 10 dB(A): half of both is 16 dB or 13 dB(A). */
    private static Session unlike() {
        return session(
                new Amount[] {spl(62), dbA(60)}, new Amount[] {spl(78), dbA(76)}, new Amount[] {spl(94), dbA(86)});
    }

    private static void isUntested(Judgement judgement, String key) {
        assertThat(judgement.verdict()).isEqualTo(Verdict.UNTESTED);
        assertThat(judgement.value()).isEmpty();
        Remark reason = judgement.reasons().get(0);
        assertThat(reason.key()).isEqualTo("no-usable-reading");
        assertThat(reason.figures().get("why"))
                .asInstanceOf(InstanceOfAssertFactories.LIST)
                .allSatisfy(why -> assertThat(((Remark) why).key()).isEqualTo(key));
    }

    private static void comesTo(Judgement judgement, double valueDb, String unit) {
        assertThat(judgement.value().orElseThrow()).isCloseTo(valueDb, within(1e-9));
        assertThat(judgement.remarks()).contains(Remark.of("series-in").with("unit", unit));
    }

    /** −16 dB would pass and −13 dB would fail. */
    @Test
    void noUnitIsChosenSilentlyWhereTheDifferenceHangsOnIt() {
        Judgement judgement = Bench.judge(COMPARED + ", limit: at most -14.5 dB", unlike());
        isUntested(judgement, "series-of-units");
        assertThat(judgement.reasons().get(0).text())
                .isEqualTo("the sounds of session crew-01 state their levels in several units (dB SPL, dB(A)), and from"
                        + " sound to sound these differ by unlike amounts, so that the difference hangs on the unit: say"
                        + " which by 'limit weighting' or in 'level'");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "limit weighting: Z | -16 | dB SPL",
                "limit weighting: A | -13 | dB(A)",
                "level: 50 to 100 dB SPL | -16 | dB SPL",
                "level: 50 to 100 dB(A) | -13 | dB(A)",
                "'level: 50 to 100 dB SPL, limit weighting: A' | -13 | dB(A)"
            })
    void theRuleSaysTheUnit(String said, double valueDb, String unit) {
        comesTo(Bench.judge(COMPARED + ", limit: at most -10 dB, " + said, unlike()), valueDb, unit);
    }

    /** Where dB(A) lie 2 dB below dB SPL under every sound, a difference is the same in both. */
    @Test
    void unitsThatAreAsFarApartEverywhereNeedNoChoice() {
        Session alike = session(
                new Amount[] {spl(62), dbA(60)}, new Amount[] {spl(78), dbA(76)}, new Amount[] {spl(94), dbA(92)});
        comesTo(Bench.judge(COMPARED + ", limit: at most -10 dB", alike), -16, "dB SPL");
        isUntested(Bench.judge(COMPARED + ", compared by: ratio, limit: at most 0.9", alike), "series-of-units");
    }

    @Test
    void theOneUnitThatAllSoundsStateIsTakenAndSaid() {
        Session one = session(new Amount[] {dbA(60)}, new Amount[] {spl(78), dbA(76)}, new Amount[] {spl(94), dbA(86)});
        comesTo(Bench.judge(COMPARED + ", limit: at most -10 dB", one), -13, "dB(A)");
    }

    /** Two of the three would be left out by either unit. */
    @Test
    void soundsWithoutAUnitInCommonAreNoSeries() {
        Session none = session(new Amount[] {dbA(60)}, new Amount[] {spl(78)}, new Amount[] {spl(94)});
        isUntested(Bench.judge(COMPARED + ", limit: at most -10 dB", none), "series-unlike");
        isUntested(Bench.judge(COMPARED + ", limit: at most -10 dB", session(NONE, NONE, NONE)), "series-unlike");
    }

    /** A criterion of 70 dB(A) is reached half way from the second sound to the third in flood, below the second in ebb. */
    @Test
    void criterionLevelsAreHeldToTheSame() {
        String criterion = "quantity: criterion level, criterion: 70 dB(A), bands: 1 kHz, referred to: eardrum,"
                + " limit: at least 1 dB, between: {setting: [flood, ebb]}";
        isUntested(Bench.judge(criterion, unlike()), "series-of-units");
        // 55 to 71 dB over 16 dB: reached 15 dB after the first sound; 65 to 75 dB: half way to the third.
        comesTo(Bench.judge(criterion + ", limit weighting: Z", unlike()), 86 - 77, "dB SPL");
        comesTo(Bench.judge(criterion + ", limit weighting: A", unlike()), 81 - 75, "dB(A)");
    }

    /** A fourth sound, which would be louder still, states no level in dB(A). */
    @Test
    void aSoundWithoutTheUnitOfTheLimitIsLeftOutAloud() {
        String onset =
                "quantity: onset level, statistic: mean, drop: 3 dB, bands: 1 kHz, setting: ebb, limit: at most 90 dB(A)";
        Session four = bench(
                        new Amount[] {spl(62), dbA(60)}, new Amount[] {spl(78), dbA(76)}, new Amount[] {spl(94), dbA(86)
                        })
                .sound("n110", spl(110))
                .reading("device=open ear, stimulus=n110", 1000, 108)
                .reading("device=Skerry, insertion=1, setting=ebb, stimulus=n110", 1000, 91)
                .session();
        Judgement judgement = Bench.judge(onset, four);
        assertThat(judgement.value().orElseThrow()).isCloseTo(81, within(1e-9));
        assertThat(judgement.notes())
                .contains("left out of the series, for they state no level in dB(A): n110")
                .contains("onset looked for among 3 levels of the test sound");
        assertThat(Bench.judge(onset, unlike()).remarks())
                .extracting(Remark::key)
                .doesNotContain("series-left-out");
    }

    /** The left ear as the right one: both have fallen by 3 dB half way from the second sound to the third. */
    @Test
    void earsAndSessionsAreComparedByTheirSeries() {
        String left =
                "quantity: onset level, statistic: mean, drop: 3 dB, bands: 1 kHz, limit: at most 10 dB, level: 50 to 100 dB SPL";
        Session two = inEars("left", "right");
        assertThat(Bench.judge(left + ", between: {ear: [left, right]}", two)
                        .value()
                        .orElseThrow())
                .isCloseTo(0, within(1e-9));
        assertThat(Bench.judge(left + ", between: {side: [left, right]}", two).verdict())
                .isEqualTo(Verdict.UNTESTED);
    }

    private static Session inEars(String... ears) {
        Bench bench = new Bench("crew-01", Resolution.OCTAVE)
                .cause("insertion", 0.5, SharedBy.INSERTION, false)
                .cause("reading", 0.2, SharedBy.READING, true);
        double[] plugged = {55, 71, 81};
        for (int i = 0; i < 3; i++) {
            bench.sound("n" + i, spl(62 + 16 * i));
            for (String ear : ears) {
                bench.reading("device=open ear, stimulus=n" + i + ", ear=" + ear, 1000, 60 + 16 * i)
                        .reading("device=Skerry, insertion=1, stimulus=n" + i + ", ear=" + ear, 1000, plugged[i]);
            }
        }
        return bench.session();
    }

    @Test
    void aLimitThatIsALevelSaysItsUnitByItself() {
        Judgement judgement = Bench.judge(
                "quantity: onset level, statistic: mean, drop: 3 dB, bands: 1 kHz, setting: ebb, limit: at most 90 dB(A)",
                unlike());
        assertThat(judgement.value().orElseThrow()).isCloseTo(81, within(1e-9));
        assertThat(judgement.remarks()).extracting(Remark::key).doesNotContain("series-in");
    }

    @Test
    void theUnitStandsInTheLineOfTheRule() {
        Judgement judgement = Bench.judge(COMPARED + ", limit: at most -10 dB, limit weighting: A", unlike());
        assertThat(RuleText.of(judgement.rule())).contains("limit weighting A");
    }
}
