package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.ellwand.acoustics.Resolution;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.SharedBy;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Distributions of errors that have a closed form, or one to second order: pairs, sums of energies, numbers that are looked for. */
class ErrorsByHandTest {
    private static final String AT_EAR = "referred to: eardrum, level: 94 dB SPL, bands: 1 kHz to 2 kHz, ";

    private static Bench noisy(double readingDb) {
        return new Bench("yard", Resolution.OCTAVE)
                .cause("insertion", 0, SharedBy.INSERTION, false)
                .cause("reading", readingDb, SharedBy.READING, true);
    }

    private static Session twoBands(double readingDb, double first, double second) {
        return noisy(readingDb)
                .reading("device=Skerry, stimulus=n94, insertion=1", 1000, first, second)
                .session();
    }

    private static void isNormal(Judgement judgement, double value, double u) {
        assertThat(judgement.value().orElseThrow()).isCloseTo(value, within(1e-9));
        assertThat(judgement.standardUncertainty().orElseThrow()).isCloseTo(u, within(0.02 * u));
        assertThat(judgement.lower().orElseThrow()).isCloseTo(value - 1.959964 * u, within(0.03 * u));
        assertThat(judgement.upper().orElseThrow()).isCloseTo(value + 1.959964 * u, within(0.03 * u));
    }

    /** 60 and 66 dB: 2 kHz lies 6 dB above 1 kHz, u = √2 · 0.7 dB; at most 7 dB by 1.0102 u: Φ = 0.84380. */
    @ParameterizedTest
    @CsvSource({"60, 66, 2000, 1000", "66, 60, 1000, 2000"})
    void aPairIsTurnedToBePositive(double first, double second, double hz, double lessHz) {
        Judgement judgement = Bench.judge(
                "quantity: output level, " + AT_EAR + "statistic: spread, limit: at most 7 dB",
                twoBands(0.7, first, second));
        Point point = judgement.point().orElseThrow();
        assertThat(point.hz()).hasValue(hz);
        assertThat(point.lessHz()).hasValue(lessHz);
        assertThat(point.value()).isCloseTo(6, within(1e-12));
        isNormal(judgement, 6, 0.7 * Math.sqrt(2));
        assertThat(judgement.probability().orElseThrow()).isCloseTo(0.84380, within(1e-4));
        Judgement atLeast = Bench.judge(
                "quantity: output level, " + AT_EAR + "statistic: spread, limit: at least 5 dB",
                twoBands(0.7, first, second));
        assertThat(atLeast.probability().orElseThrow()).isCloseTo(0.84380, within(1e-4));
    }

    private static Judgement overall(double readingDb, int trials) {
        return Bench.judge(
                Bench.product("quantity: output level, " + AT_EAR
                        + "statistic: overall, weighting: Z, limit: at most 75 dB SPL"),
                new AuditOptions(trials),
                twoBands(readingDb, 70, 70));
    }

    /**
     * Two equal bands with independent errors of σ: a draw of their sum lies on average ln 10/20 · σ² · (1 − 1/2) dB above the
     * value (second order), and the value as much above the truth; u is σ/√2 and what is of second order, ln 10/20 · σ²/√2.
     */
    @ParameterizedTest
    @CsvSource({"0.3", "1", "2"})
    void aSumOfEnergiesIsInflatedAndMovedBack(double sigma) {
        Judgement judgement = overall(sigma, 100_000);
        double inflated = Math.log(10) / 40 * sigma * sigma;
        assertThat(judgement.value().orElseThrow()).isCloseTo(70 + 10 * Math.log10(2), within(1e-9));
        assertThat(judgement.correction().orElseThrow()).isCloseTo(inflated, within(0.02 * sigma * sigma));
        double second = Math.log(10) / 20 * sigma * sigma / Math.sqrt(2);
        assertThat(judgement.standardUncertainty().orElseThrow())
                .isCloseTo(Math.hypot(sigma / Math.sqrt(2), second), within(0.02 * sigma));
        double median = judgement.value().orElseThrow() - inflated;
        Judgement half = Bench.judge(
                "quantity: output level, " + AT_EAR + "statistic: overall, weighting: Z, limit: at most "
                        + String.format(java.util.Locale.ROOT, "%.6f", median) + " dB SPL",
                twoBands(sigma, 70, 70));
        assertThat(half.probability().orElseThrow()).isCloseTo(0.5, within(0.02 + 0.03 * sigma));
    }

    /** Nothing moves it: the sum is exact. */
    @Test
    void aSumOfExactLevelsIsExact() {
        Judgement judgement = overall(0, 100_000);
        assertThat(judgement.standardUncertainty()).hasValue(0);
        assertThat(judgement.probability()).hasValue(1);
        assertThat(judgement.verdict()).isEqualTo(Verdict.PASS);
    }

    /**
     * What strays from the linear part by 0.1151 σ of its size (two equal bands, second order) is nearly linear up to 0.05, which is
     * σ = 0.434 dB: there 5000 draws serve however many are asked for.
     */
    @ParameterizedTest
    @CsvSource({"0.40, true", "0.47, false"})
    void fewDrawsServeWhatIsNearlyLinear(double sigma, boolean few) {
        boolean same = overall(sigma, 6_000)
                .standardUncertainty()
                .equals(overall(sigma, 12_000).standardUncertainty());
        assertThat(same).isEqualTo(few);
    }

    /** A thousand draws are a thousand draws, five thousand all that are asked for. */
    @Test
    void noMoreDrawsThanAskedFor() {
        assertThat(overall(0.3, 1_000).standardUncertainty())
                .isNotEqualTo(overall(0.3, 5_000).standardUncertainty());
        assertThat(overall(0.3, 5_000).standardUncertainty())
                .isEqualTo(overall(0.3, 7_000).standardUncertainty());
    }

    private static final String CRITERION = "quantity: criterion level, criterion: 73 dB(A), referred to: eardrum,";

    /** Levels at the ear that rise with the sound, dB for dB: an insertion's 0.5 dB is 0.5 dB of the level looked for. */
    @Test
    void aLevelThatIsLookedForMovesAgainstTheErrorAtTheEar() {
        Session session = new Bench("yard", Resolution.OCTAVE)
                .cause("insertion", 0.5, SharedBy.INSERTION, false)
                .cause("reading", 0, SharedBy.READING, true)
                .reading("device=Skerry, stimulus=n62, insertion=1", 1000, 65)
                .reading("device=Skerry, stimulus=n78, insertion=1", 1000, 81)
                .session();
        Judgement judgement = Bench.judge(CRITERION + " bands: 1 kHz, limit: at most 71 dB SPL", session);
        isNormal(judgement, 70, 0.5);
        assertThat(judgement.probability().orElseThrow()).isCloseTo(0.97725, within(0.002));
        assertThat(Bench.judge(CRITERION + " bands: 1 kHz, limit: at least 71 dB SPL", session)
                        .probability()
                        .orElseThrow())
                .isCloseTo(0.02275, within(0.002));
    }

    @Test
    void anExactLevelIsFoundExactly() {
        Session session = noisy(0).reading("device=Skerry, stimulus=n62, insertion=1", 1000, 65)
                .reading("device=Skerry, stimulus=n78, insertion=1", 1000, 81)
                .session();
        Judgement judgement = Bench.judge(CRITERION + " bands: 1 kHz, limit: at most 70 dB SPL", session);
        assertThat(judgement.standardUncertainty()).hasValue(0);
        assertThat(judgement.verdict()).isEqualTo(Verdict.PASS);
    }

    /**
     * Sums of two bands of equal energy (A adds 1.2 dB at 2 kHz) with an error of σ that both sounds of an insertion share
     * nothing of: as the sums are moved down by ln 10/40 · σ², twice for the draw and the value, the level looked for lies
     * higher by as much, half way between the two levels.
     */
    @ParameterizedTest
    @CsvSource({"0.3", "2"})
    void whatIsLookedForInSumsOfEnergiesIsMovedWithThem(double sigma) {
        Session session = noisy(sigma)
                .reading("device=Skerry, stimulus=n62, insertion=1", 1000, 62, 60.8)
                .reading("device=Skerry, stimulus=n78, insertion=1", 1000, 78, 76.8)
                .session();
        String rule = CRITERION + " bands: 1 kHz to 2 kHz, limit: at most 90 dB SPL";
        double value = Bench.judge(rule, session).value().orElseThrow();
        double moved = value + Math.log(10) / 40 * sigma * sigma;
        Judgement half = Bench.judge(
                CRITERION + " bands: 1 kHz to 2 kHz, limit: at most "
                        + String.format(java.util.Locale.ROOT, "%.6f", moved) + " dB SPL",
                session);
        assertThat(value).isCloseTo(70, within(0.05));
        assertThat(half.probability().orElseThrow()).isCloseTo(0.5, within(0.03));
        // Each sum has σ/√2, and half way between the two each counts half.
        assertThat(half.standardUncertainty().orElseThrow()).isCloseTo(sigma / 2, within(0.08 * sigma));
    }
}
