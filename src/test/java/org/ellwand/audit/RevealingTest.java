package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.ellwand.acoustics.Band;
import org.ellwand.check.MadeSession;
import org.ellwand.demo.Bands;
import org.ellwand.measurement.Reading;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.SharedBy;
import org.ellwand.words.Measure;
import org.ellwand.words.Remark;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What a sound can show: in four third octaves 50 dB at the open ear over a background of 30, 24, 28 and 22 dB, with 10 dB
 * of margin 10, 16, 12 and 18 dB. All of it is invented.
 */
class RevealingTest {
    private static final String WHERE = "level: 63 dB SPL, bands: 1 kHz to 2 kHz, statistic: ";

    private static double floor(double hz) {
        return hz < 1100 ? 30 : hz < 1400 ? 24 : hz < 1800 ? 28 : 22;
    }

    private static Session session(DoubleUnaryOperator floorDb, double trueDb) {
        return new MadeSession("yard")
                .cause("reading", 0.2, SharedBy.READING)
                .cause("insertion", 0.5, SharedBy.INSERTION)
                .pink(63)
                .quiet()
                .reading("device=open ear, stimulus=pink-63", f -> 50)
                .reading(
                        "device=Skerry, stimulus=pink-63, insertion=1",
                        f -> Bands.energySumDb(trueDb, floorDb.applyAsDouble(f)))
                .reading("device=Skerry, stimulus=hush, insertion=1", floorDb)
                .session();
    }

    private static Judgement judged(String rule) {
        return Bench.judge("quantity: " + rule, session(RevealingTest::floor, 15));
    }

    private static void shows(Judgement judgement, double shownDb, double levelNeeded) {
        assertThat(judgement.verdict()).isEqualTo(Verdict.UNTESTED);
        assertThat(judgement.reasons())
                .singleElement()
                .isEqualTo(Remark.of("not-measurable")
                        .with("level", new Measure(63, "dB SPL"))
                        .with("shownDb", shownDb)
                        .with("levelNeeded", new Measure(levelNeeded, "dB SPL")));
    }

    /**
     * The mean of the four is 14 dB, the median 12 dB, the lower of the two in the middle. Overall 50 + 10 lg 4 = 56.02 dB over
     * 10 lg (10³ + 10^2.4 + 10^2.8 + 10^2.2) = 33.10 dB. The level needed is 63 dB and what is missing to 25 dB, rounded up.
     */
    @ParameterizedTest
    @CsvSource({
        "mean, 14.0, 74",
        "every band, 10.0, 78",
        "lowest, 10.0, 78",
        "median, 12.0, 76",
        "'overall, weighting: A', 12.9, 76"
    })
    void whatASoundShows(String statistic, double shownDb, double levelNeeded) {
        shows(judged("attenuation, limit: at least 25 dB, " + WHERE + statistic), shownDb, levelNeeded);
    }

    /** As much must be told as the farther end asks for: 40 − 14 dB more. */
    @Test
    void aLimitOfTwoEndsNeedsItsFartherOne() {
        shows(judged("attenuation, limit: 25 to 40 dB, " + WHERE + "mean"), 14, 89);
        shows(judged("insertion gain, limit: -40 to -25 dB, " + WHERE + "mean"), 14, 89);
    }

    /** The same as attenuation, with its sign turned. */
    @Test
    void aGainIsMinusAnAttenuation() {
        shows(judged("insertion gain, limit: at most -25 dB, " + WHERE + "mean"), 14, 74);
        shows(judged("insertion gain, limit: at most -14.5 dB, " + WHERE + "mean"), 14, 64);
        assertThat(judged("insertion gain, limit: at least -60 dB, " + WHERE + "every band")
                        .verdict())
                .isEqualTo(Verdict.MARGINAL);
    }

    /** What is asked for is shown: then it is for another reason that nothing can be said. */
    @Test
    void aSoundThatShowsAsMuchAsIsAskedForIsLoudEnough() {
        shows(judged("attenuation, limit: at least 14.1 dB, " + WHERE + "mean"), 14, 64);
        Judgement shown = judged("attenuation, limit: at least 14 dB, " + WHERE + "mean");
        assertThat(shown.verdict()).isEqualTo(Verdict.UNTESTED);
        assertThat(shown.reasons()).extracting(Remark::key).containsExactly("no-usable-reading");
    }

    /** In quiet 22 dB, under the sound 22.8 dB: more than 27 dB were taken off in the band that shows most. */
    @Test
    void aBoundShowsMoreThanItsMargin() {
        assertThat(judged("attenuation, limit: at least 27 dB, " + WHERE + "highest")
                        .verdict())
                .isEqualTo(Verdict.PASS);
        shows(judged("attenuation, limit: at least 30 dB, " + WHERE + "highest"), 18, 75);
    }

    /** A spread of attenuations, and one sound less another, are not told by a level. */
    @Test
    void whatNoLevelTellsIsNotAsked() {
        Judgement spread = judged("attenuation, limit: at most 25 dB, " + WHERE + "spread");
        assertThat(spread.reasons()).extracting(Remark::key).doesNotContain("not-measurable");
        Judgement slope = judged("attenuation, limit: at least 25 dB/octave, " + WHERE + "slope");
        assertThat(slope.reasons()).extracting(Remark::key).doesNotContain("not-measurable");
    }

    /** 15 dB over a background of 29 dB: the level in place, 35 dB, is 7 dB above what it has in quiet, and measured. */
    @Test
    void whatIsMeasuredIsMarginalAndNotUntested() {
        Judgement judgement =
                Bench.judge("quantity: attenuation, limit: at least 15 dB, " + WHERE + "mean", session(f -> 29, 35));
        assertThat(judgement.verdict()).isEqualTo(Verdict.MARGINAL);
        assertThat(judgement.value().orElseThrow()).isCloseTo(15, within(1e-6));
    }

    /** The quiet of one insertion was read in parts that have no band in common: that of the other serves. */
    @Test
    void aBackgroundWithoutABandIsPassedOver() {
        List<Band> low = MadeSession.THIRDS.subList(0, 10);
        List<Band> high = MadeSession.THIRDS.subList(10, 21);
        Session session = new MadeSession("yard")
                .cause("reading", 0.2, SharedBy.READING)
                .cause("insertion", 0.5, SharedBy.INSERTION)
                .pink(63)
                .quiet()
                .reading("device=open ear, stimulus=pink-63", f -> 50)
                .reading("device=Skerry, stimulus=pink-63, insertion=1", f -> Bands.energySumDb(15, floor(f)))
                .reading("device=Skerry, stimulus=pink-63, insertion=2", f -> Bands.energySumDb(15, floor(f)))
                .reading("device=Skerry, stimulus=hush, insertion=1", RevealingTest::floor)
                .reading(
                        "device=Skerry, stimulus=hush, insertion=2, take=1",
                        Reading.Values.LEVELS,
                        low,
                        RevealingTest::floor)
                .reading(
                        "device=Skerry, stimulus=hush, insertion=2, take=2",
                        Reading.Values.LEVELS,
                        high,
                        RevealingTest::floor)
                .session();
        shows(Bench.judge("quantity: attenuation, limit: at least 25 dB, " + WHERE + "mean", session), 14, 74);
    }

    @Test
    void onlyWhatAProductTakesOffOrAddsCanBeTooMuchForASound() {
        assertThat(Revealing.concerns("attenuation")).isTrue();
        assertThat(Revealing.concerns("insertion gain")).isTrue();
        assertThat(Revealing.concerns("output level")).isFalse();
    }
}
