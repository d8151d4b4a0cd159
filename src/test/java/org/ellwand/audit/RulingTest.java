package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.ellwand.acoustics.Resolution;
import org.ellwand.check.MadeSession;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.SharedBy;
import org.ellwand.words.Remark;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What keeps a verdict open, and what would settle it; levels are invented. */
class RulingTest {
    private static final String RULE =
            "quantity: attenuation, level: 94 dB SPL, bands: 1 kHz, statistic: mean, limit: ";

    private static Remark reason(Judgement judgement) {
        assertThat(judgement.verdict()).isEqualTo(Verdict.MARGINAL);
        assertThat(judgement.reasons()).hasSize(1);
        return judgement.reasons().get(0);
    }

    /**
     * 20 dB, 0.9 dB above the limit: u may be 0.9/1.6449 = 0.5471 dB, u² = 0.2994. The readings have 0.3² twice, whatever
     * the insertions: 0.9²/n ≤ 0.1194, n ≥ 6.8.
     */
    @Test
    void insertionsDivideWhatTheyShareAndNothingElse() {
        Session session = new Bench("yard", Resolution.OCTAVE)
                .cause("insertion", 0.9, SharedBy.INSERTION, false)
                .cause("reading", 0.3, SharedBy.READING, true)
                .reading("device=open ear, stimulus=n94", 1000, 80)
                .reading("device=Skerry, stimulus=n94, insertion=1", 1000, 60)
                .session();
        assertThat(reason(Bench.judge(RULE + "at least 19.1 dB", session)))
                .isEqualTo(Remark.of("too-few-insertions").with("insertions", 1).with("needed", 7));
        // 0.5 dB above: u² = 0.0924 is less than the readings alone have.
        assertThat(reason(Bench.judge(RULE + "at least 19.5 dB", session)).key())
                .isEqualTo("on-the-limit-however-many");
    }

    @Test
    void whatNoInsertionDividesStaysOnTheLimit() {
        Session session = new Bench("yard", Resolution.OCTAVE)
                .cause("insertion", 0, SharedBy.INSERTION, false)
                .cause("reading", 0.3, SharedBy.READING, true)
                .reading("device=open ear, stimulus=n94", 1000, 80)
                .reading("device=Skerry, stimulus=n94, insertion=1", 1000, 60)
                .session();
        assertThat(reason(Bench.judge(RULE + "at least 19.8 dB", session)).key())
                .isEqualTo("on-the-limit");
    }

    /**
     * Insertions of 57, 59, 61 and 63 dB scatter by √(20/3) dB: the mean of n by that over √n, with the t of n − 1, beside 0.3 dB
     * of the open ear. That such an error stays below 2 dB has a probability of 0.9378 with six and of 0.9528 with seven
     * (integrated with SciPy 1.17).
     */
    @Test
    void insertionsDivideTheirObservedScatter() {
        Bench bench = new Bench("yard", Resolution.OCTAVE)
                .cause("reading", 0.3, SharedBy.READING, true)
                .reading("device=open ear, stimulus=n94", 1000, 80);
        for (int i = 0; i < 4; i++) {
            bench.reading("device=Skerry, stimulus=n94, insertion=" + i, 1000, 57 + 2 * i);
        }
        assertThat(reason(Bench.judge(RULE + "at least 18 dB", bench.session())))
                .isEqualTo(Remark.of("too-few-insertions").with("insertions", 4).with("needed", 7));
    }

    /** What heads scatter by no insertion divides. */
    @Test
    void insertionsDoNotDivideTheScatterOfHeads() {
        Bench bench = new Bench("yard", Resolution.OCTAVE)
                .cause("insertion", 0.1, SharedBy.INSERTION, false)
                .cause("reading", 0.1, SharedBy.READING, true);
        for (int h = 0; h < 4; h++) {
            String who = "head=h" + h + ", ear=h" + h + ", stimulus=n94";
            bench.reading("device=open ear, " + who, 1000, 80)
                    .reading("device=Skerry, insertion=1, " + who, 1000, 57 + 2 * h);
        }
        assertThat(reason(Bench.judge(RULE + "at least 18.6 dB, ears: mean", bench.session()))
                        .key())
                .isEqualTo("on-the-limit");
    }

    private static Session gains(double... inPlaceDb) {
        Bench bench = new Bench("yard", Resolution.OCTAVE)
                .cause("insertion", 0.1, SharedBy.INSERTION, false)
                .cause("reading", 0.1, SharedBy.READING, true);
        for (int i = 0; i < 3; i++) {
            bench.reading("device=open ear, stimulus=n" + (62 + 16 * i), 1000, 60 + 16 * i)
                    .reading("device=Skerry, insertion=1, stimulus=n" + (62 + 16 * i), 1000, inPlaceDb[i]);
        }
        return bench.session();
    }

    /** The gain falls nowhere up to 94 dB: the onset lies above, and how far above nobody knows. */
    @ParameterizedTest
    @CsvSource({
        "at least 90 dB SPL, PASS",
        "at least 94 dB SPL, PASS",
        "at least 94.5 dB SPL, MARGINAL",
        "at most 90 dB SPL, FAIL",
        "at most 94 dB SPL, FAIL",
        "at most 95 dB SPL, MARGINAL",
        "80 to 90 dB SPL, FAIL",
        "80 to 94 dB SPL, FAIL",
        "90 to 100 dB SPL, MARGINAL"
    })
    void anOnsetAboveWhatWasMeasured(String limit, Verdict verdict) {
        Judgement judgement = Bench.judge(
                "quantity: onset level, statistic: mean, drop: 3 dB, bands: 1 kHz, limit: " + limit, gains(55, 71, 87));
        assertThat(judgement.verdict()).isEqualTo(verdict);
        assertThat(judgement.value()).hasValue(94);
        assertThat(judgement.reasons().stream().map(Remark::text).toList())
                .isEqualTo(
                        verdict == Verdict.MARGINAL
                                ? List.of(
                                        "what was measured ends at 94 dB SPL and the limit lies beyond: measure further")
                                : List.of());
    }

    /** 75 dB at the ear under 62 dB already: 73 dB(A) are reached below. */
    @ParameterizedTest
    @CsvSource({
        "at most 65 dB SPL, PASS",
        "at most 62 dB SPL, PASS",
        "at most 61 dB SPL, MARGINAL",
        "at least 65 dB SPL, FAIL",
        "at least 62 dB SPL, FAIL",
        "at least 61 dB SPL, MARGINAL",
        "55 to 65 dB SPL, MARGINAL",
        "62 to 70 dB SPL, FAIL"
    })
    void aCriterionBelowWhatWasMeasured(String limit, Verdict verdict) {
        Judgement judgement = Bench.judge(
                "quantity: criterion level, criterion: 73 dB(A), bands: 1 kHz, referred to: eardrum, limit: " + limit,
                new Bench("yard", Resolution.OCTAVE)
                        .cause("insertion", 0.1, SharedBy.INSERTION, false)
                        .cause("reading", 0.1, SharedBy.READING, true)
                        .reading("device=Skerry, insertion=1, stimulus=n62", 1000, 75)
                        .reading("device=Skerry, insertion=1, stimulus=n78", 1000, 91)
                        .session());
        assertThat(judgement.verdict()).isEqualTo(verdict);
        assertThat(judgement.value()).hasValue(62);
    }

    private static Session steps(boolean cause, int insertions) {
        MadeSession made =
                new MadeSession("yard").cause("reading", 0.3, SharedBy.READING).sound("tone", "tone", 80);
        if (cause) {
            made.timing(2, SharedBy.READING);
        }
        for (int i = 1; i <= insertions; i++) {
            double[] times = {0, 0.999, 1, 1 + 0.1 * i, 2, 2.6, 2.8, 3};
            made.trace("device=Skerry, insertion=" + i, List.of(1.0, 55.0, 80.0), times, new double[] {
                60, 60, 66, 60, 60, 60, 60, 60
            });
        }
        return made.session();
    }

    /** One time, and nothing that says by how much it may err: it lies inside, and no more can be said. Two of them scatter. */
    @Test
    void aTimeNeedsADeclaredErrorOrASecondOne() {
        String rule = "quantity: attack time, within: 3 dB, limit: at most 900 ms";
        Judgement one = Bench.judge(rule, steps(false, 1));
        assertThat(reason(one).key()).isEqualTo("uncertainty-not-stated-inside");
        assertThat(one.probability()).isEmpty();
        Judgement declared = Bench.judge(rule, steps(true, 1));
        assertThat(declared.standardUncertainty().orElseThrow()).isCloseTo(2, within(1e-9));
        assertThat(declared.verdict()).isEqualTo(Verdict.MARGINAL);
        Judgement two = Bench.judge(rule, steps(false, 2));
        assertThat(two.value().orElseThrow()).isCloseTo(75, within(1e-9));
        assertThat(two.probability()).isPresent();
        assertThat(two.reasons()).extracting(Remark::key).doesNotContain("uncertainty-not-stated-inside");
    }

    /** 50 ms in one head and 100 ms in another: their scatter tells. */
    @Test
    void timesOfTwoHeadsTellTheSpreadOfTheirMean() {
        MadeSession made = new MadeSession("yard").sound("tone", "tone", 80);
        for (int i = 1; i <= 2; i++) {
            made.trace(
                    "device=Skerry, head=h" + i + ", ear=h" + i + ", insertion=1",
                    List.of(1.0, 55.0, 80.0),
                    new double[] {0, 0.999, 1, 1 + 0.1 * i, 2, 2.6, 2.8, 3},
                    new double[] {60, 60, 66, 60, 60, 60, 60, 60});
        }
        Judgement judgement =
                Bench.judge("quantity: attack time, within: 3 dB, ears: mean, limit: at most 900 ms", made.session());
        assertThat(judgement.value().orElseThrow()).isCloseTo(75, within(1e-9));
        assertThat(judgement.probability()).isPresent();
    }

    /** Of two bands alike, noise of 0.5 · √2 dB lifts the larger by σ/√π. */
    @Test
    void whatNoiseAddsToAnExtremeIsTold() {
        Session session = new Bench("yard", Resolution.OCTAVE)
                .cause("insertion", 0, SharedBy.INSERTION, false)
                .cause("reading", 0.5, SharedBy.READING, true)
                .reading("device=open ear, stimulus=n94", 1000, 80, 80)
                .reading("device=Skerry, stimulus=n94, insertion=1", 1000, 60, 60)
                .session();
        String rule = "quantity: attenuation, level: 94 dB SPL, bands: 1 kHz to 2 kHz, statistic: highest, limit: ";
        double sigma = 0.5 * Math.sqrt(2);
        assertThat(Bench.judge(rule + "at most 30 dB", session).correction().orElseThrow())
                .isCloseTo(sigma / Math.sqrt(Math.PI), within(0.04));
    }

    /**
     * Insertions 4 dB apart of which each has 1 dB: Σ = 8, more than χ² of one degree of freedom has at 1 % (6.63), and less
     * than it has at 0.1 % (10.83), at which each of ten bands is asked.
     */
    @ParameterizedTest
    @CsvSource({"1 kHz, true", "16 Hz to 8 kHz, false"})
    void theMoreBandsTheMoreScatterIsChance(String bands, boolean more) {
        Bench bench = new Bench("yard", Resolution.OCTAVE)
                .cause("insertion", 1, SharedBy.INSERTION, false)
                .cause("reading", 0, SharedBy.READING, true);
        for (int i = 0; i < 2; i++) {
            double[] levels = new double[10];
            Arrays.fill(levels, 60 + 4 * i);
            bench.reading("device=Skerry, stimulus=n94, insertion=" + i, 16, levels);
        }
        String rule = String.format(
                Locale.ROOT,
                "quantity: output level, referred to: eardrum, level: 94 dB SPL, bands: %s, statistic: every band,"
                        + " limit: at most 85 dB SPL",
                bands);
        assertThat(Bench.judge(rule, bench.session()).remarks().stream()
                        .anyMatch(r -> r.key().startsWith("more-scatter")))
                .isEqualTo(more);
    }

    /** Two insertions; at 500 Hz both read 60.0 dB, at 1 kHz they differ by as much as is asked. Nothing is declared. */
    private static Judgement agreeing(String statistic, String limit, double otherDb) {
        Session session = new Bench("yard", Resolution.OCTAVE)
                .reading("device=Skerry, stimulus=n94, insertion=1", 500, 60, 58)
                .reading("device=Skerry, stimulus=n94, insertion=2", 500, 60, otherDb)
                .session();
        return Bench.judge(
                "quantity: output level, referred to: eardrum, level: 94 dB SPL, bands: 500 Hz to 1 kHz, statistic: "
                        + statistic + ", limit: " + limit,
                session);
    }

    /** Levels are written in tenths of a decibel: of some eighteen bands one agrees by chance, and is no proof. */
    @Test
    void repeatsThatAgreeInAllDigitsDecideNothingAlone() {
        Remark agree = Remark.of("no-scatter").with("hz", List.of(500.0));
        assertThat(reason(agreeing("every band", "at most 59.9 dB SPL", 59))).isEqualTo(agree);
        assertThat(reason(agreeing("lowest", "at least 60.1 dB SPL", 65))).isEqualTo(agree);
        assertThat(reason(agreeing("highest", "at least 59.9 dB SPL", 59))).isEqualTo(agree);
    }

    @Test
    void whatScattersDecidesBesideWhatDoesNot() {
        assertThat(reason(agreeing("every band", "at most 60.1 dB SPL", 61)).key())
                .isNotEqualTo("no-scatter");
        assertThat(agreeing("every band", "at most 50 dB SPL", 58.1).verdict()).isEqualTo(Verdict.FAIL);
        assertThat(agreeing("every band", "at most 70 dB SPL", 58.1).verdict()).isEqualTo(Verdict.PASS);
        assertThat(agreeing("highest", "at least 50 dB SPL", 58.1).verdict()).isEqualTo(Verdict.PASS);
    }

    /** Insertions that agree in every band do not agree by chance: their scatter is nothing. */
    @Test
    void whereNothingScattersTheNumbersDecide() {
        assertThat(agreeing("every band", "at most 59.9 dB SPL", 58).verdict()).isEqualTo(Verdict.FAIL);
        assertThat(agreeing("every band", "at most 60.1 dB SPL", 58).verdict()).isEqualTo(Verdict.PASS);
    }

    /** Every sound that the rule selects must keep to it: one of which no band is left is no better than one that lacks some. */
    @Test
    void aSoundOfWhichNoBandServesLetsNothingPass() {
        Session session = new Bench("yard", Resolution.OCTAVE)
                .cause("insertion", 0.9, SharedBy.INSERTION, false)
                .cause("reading", 0.3, SharedBy.READING, true)
                .reading("device=open ear, stimulus=n94", 1000, 80)
                .reading("device=Skerry, stimulus=n94, insertion=1", 1000, 60)
                .reading("device=open ear, stimulus=n62", 2000, 48)
                .reading("device=Skerry, stimulus=n62, insertion=1", 1000, 28)
                .session();
        String every = "quantity: attenuation, level: all, bands: 1 kHz, statistic: mean, limit: ";
        assertThat(reason(Bench.judge(every + "at least 10 dB", session)).key()).isEqualTo("no-partner-bands");
        assertThat(Bench.judge(every + "at least 30 dB", session).verdict()).isEqualTo(Verdict.FAIL);
        assertThat(Bench.judge(RULE + "at least 10 dB", session).verdict()).isEqualTo(Verdict.PASS);
    }
}
