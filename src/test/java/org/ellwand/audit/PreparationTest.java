package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.ellwand.acoustics.Bound;
import org.ellwand.acoustics.Resolution;
import org.ellwand.check.MadeSession;
import org.ellwand.demo.Bands;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.SharedBy;
import org.ellwand.quantity.Outcome;
import org.ellwand.words.Remark;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How readings become subjects: which bands serve, what is left out, what shares its insertions. Levels are invented. */
class PreparationTest {
    private static final String ATTENUATION = "quantity: attenuation, level: 94 dB SPL, limit: at least 10 dB, ";

    private static Bench bench(Resolution resolution) {
        return new Bench("yard", resolution)
                .cause("insertion", 0.5, SharedBy.INSERTION, false)
                .cause("reading", 0.2, SharedBy.READING, true);
    }

    private static Bench plug(Resolution resolution) {
        return bench(resolution)
                .reading("device=open ear, stimulus=n94", 1000, 80, 80, 80)
                .reading("device=Skerry, stimulus=n94, insertion=1", 1000, 60, 61, 62);
    }

    private static List<String> reasons(Judgement judgement) {
        assertThat(judgement.verdict()).isEqualTo(Verdict.UNTESTED);
        return judgement.reasons().stream().map(Remark::text).toList();
    }

    @Test
    void aResolutionFinerThanWhatWasMeasuredIsRefused() {
        assertThatThrownBy(() -> Bench.judge(
                        ATTENUATION + "bands: 1 kHz to 2 kHz, resolution: third-octave, statistic: mean",
                        plug(Resolution.OCTAVE).session()))
                .hasMessageContaining("resolution 'third-octave' is finer than measured: session yard was measured in"
                        + " octave bands");
        // The same resolution, and a coarser one: 60, 61 and 62 dB in one octave add up to 65.85 dB, 80 dB to 84.77 dB.
        assertThat(Bench.judge(
                                ATTENUATION + "bands: all, resolution: third-octave, statistic: mean",
                                plug(Resolution.THIRD_OCTAVE).session())
                        .value())
                .hasValue(19);
        Session octave = bench(Resolution.THIRD_OCTAVE)
                .reading("device=open ear, stimulus=n94", 800, 80, 80, 80)
                .reading("device=Skerry, stimulus=n94, insertion=1", 800, 60, 61, 62)
                .session();
        double sum = 10 * Math.log10((1e6 + Math.pow(10, 6.1) + Math.pow(10, 6.2)) / 3e8);
        assertThat(Bench.judge(ATTENUATION + "bands: 1 kHz, resolution: octave, statistic: mean", octave)
                        .value()
                        .orElseThrow())
                .isCloseTo(-sum, within(1e-9));
    }

    /** One firmware in octaves, another in thirds: what is compared must be named. */
    @Test
    void unlikeResolutionsNeedANamedOne() {
        Bench thirds = new Bench("quay", Resolution.THIRD_OCTAVE)
                .cause("insertion", 0.5, SharedBy.INSERTION, false)
                .cause("reading", 0.2, SharedBy.READING, true)
                .reading("device=open ear, stimulus=n94", 800, 80, 80, 80)
                .reading("device=Skerry, firmware=2.1, stimulus=n94, unit=B, insertion=1", 800, 50, 50, 50);
        Session octaves = bench(Resolution.OCTAVE)
                .reading("device=open ear, stimulus=n94", 1000, 80)
                .reading("device=Skerry, firmware=2.0, stimulus=n94, unit=A, insertion=1", 1000, 60)
                .session();
        String rule = "quantity: attenuation, level: 94 dB SPL, bands: 1 kHz, statistic: mean, units: mean,"
                + " between: {firmware: [\"2.1\", \"2.0\"]}, limit: at least 5 dB";
        assertThat(reasons(Bench.judge(rule, octaves, thirds.session())))
                .contains("readings of different resolutions are to be compared: name a resolution");
        Judgement octave = Bench.judge(rule + ", resolution: octave", octaves, thirds.session());
        assertThat(octave.value().orElseThrow()).isCloseTo(10, within(1e-9));
        assertThat(octave.notes())
                .contains(
                        "other units on either side: the mean over 1 is held against the mean over 1, and the scatter of"
                                + " both counts");
    }

    @Test
    void whyNoBandServes() {
        assertThat(reasons(Bench.judge(
                        ATTENUATION + "bands: 8 kHz, statistic: mean",
                        plug(Resolution.OCTAVE).session())))
                .singleElement()
                .asString()
                .startsWith("no band of the rule was measured (");
        // In place up to 4 kHz, and the open ear at 1 kHz alone.
        Session half = bench(Resolution.OCTAVE)
                .reading("device=open ear, stimulus=n94", 1000, 80)
                .reading("device=Skerry, stimulus=n94, insertion=1", 1000, 60, 61, 62)
                .session();
        assertThat(reasons(Bench.judge(ATTENUATION + "bands: 2 kHz to 4 kHz, statistic: mean", half)))
                .singleElement()
                .asString()
                .startsWith("bands of the rule were measured, but not all bands of what they are held against");
        // 0.4 dB over what it has in quiet.
        assertThat(reasons(Bench.judge(
                        "quantity: attenuation, level: 60 dB SPL, limit: at most 60 dB, bands: 1 kHz, statistic: mean",
                        nearBackground(f -> true))))
                .singleElement()
                .asString()
                .startsWith("the bands of the rule lie too near the background to be more than bounds (");
    }

    private interface Near {
        boolean at(double hz);
    }

    /** An open ear of 50 dB, 20 dB in place over a background of 30 dB, or far below where it is not near. */
    private static Session nearBackground(Near near) {
        return new MadeSession("yard")
                .cause("reading", 0.2, SharedBy.READING)
                .cause("insertion", 0.5, SharedBy.INSERTION)
                .pink(60)
                .quiet()
                .reading("device=open ear, stimulus=pink-60", f -> 50)
                .reading(
                        "device=Skerry, stimulus=pink-60, insertion=1", f -> Bands.energySumDb(20, near.at(f) ? 30 : 0))
                .reading("device=Skerry, stimulus=hush, insertion=1", f -> near.at(f) ? 30 : 0)
                .session();
    }

    /** A level that only bounds the true one turns round with the sign that it has in the number. */
    @ParameterizedTest
    @CsvSource({
        "attenuation, at least 10 dB, '', AT_LEAST",
        "insertion gain, at most -10 dB, '', AT_MOST",
        "output level, at most 60 dB SPL, ', referred to: eardrum', AT_MOST"
    })
    void boundsOfBandsAloneThatAreNear(String quantity, String limit, String more, Bound bound) {
        Judgement judgement = Bench.judge(
                "quantity: " + quantity + ", limit: " + limit + more
                        + ", level: 60 dB SPL, bands: 500 Hz to 2 kHz, statistic: every band",
                nearBackground(f -> f > 900 && f < 1100));
        List<Point> bands = judgement.cells().get(0).bands();
        assertThat(bands)
                .hasSize(7)
                .allSatisfy(point ->
                        assertThat(point.bound()).isEqualTo(point.hz().orElseThrow() == 1000 ? bound : Bound.MEASURED));
    }

    /** One insertion near its background is enough, whichever it is; in octaves, one of their thirds. */
    @Test
    void oneReadingOrOneThirdMakesABound() {
        MadeSession made = new MadeSession("yard")
                .cause("reading", 0.2, SharedBy.READING)
                .cause("insertion", 0.5, SharedBy.INSERTION)
                .pink(60)
                .quiet()
                .reading("device=open ear, stimulus=pink-60", f -> 50);
        for (int i = 1; i <= 2; i++) {
            double floor = i == 1 ? 0 : 15;
            made.reading(
                            "device=Skerry, stimulus=pink-60, insertion=" + i,
                            f -> f > 900 && f < 1100 ? Bands.energySumDb(10, floor) : 30)
                    .reading("device=Skerry, stimulus=hush, insertion=" + i, f -> f > 900 && f < 1100 ? floor : 0);
        }
        String rule = "quantity: attenuation, limit: at least 5 dB, level: 60 dB SPL, bands: 500 Hz to 2 kHz,"
                + " statistic: every band";
        assertThat(bounds(Bench.judge(rule, made.session())))
                .containsExactly("500", "630", "800", "1000 AT_LEAST", "1250", "1600", "2000");
        assertThat(bounds(Bench.judge(rule + ", resolution: octave", made.session())))
                .containsExactly("500", "1000 AT_LEAST", "2000");
    }

    private static Stream<String> bounds(Judgement judgement) {
        return judgement.cells().get(0).bands().stream()
                .map(p -> Math.round(p.hz().orElseThrow()) + (p.bound() == Bound.MEASURED ? "" : " " + p.bound()));
    }

    /**
     * Relative to 4 kHz, where the level lies too near its background to be more than a bound, 50 dB in the other bands are 20.8 dB
     * and more: that may support a claim, and refutes none. At 4 kHz itself it is 0 dB, and that is exact.
     */
    @ParameterizedTest
    @CsvSource({
        "at most 22 dB, 1 kHz, MARGINAL",
        "at most 10 dB, 1 kHz, MARGINAL",
        "at least 10 dB, 1 kHz, PASS",
        "at least 22 dB, 1 kHz, MARGINAL",
        "at least -3 dB, 1 kHz to 4 kHz, PASS",
        "at least 10 dB, 1 kHz to 4 kHz, FAIL"
    })
    void aReferenceNearItsBackgroundBoundsEveryBand(String limit, String bands, Verdict verdict) {
        Judgement judgement =
                relative("reference: 4 kHz, bands: " + bands + ", statistic: every band, limit: " + limit);
        assertThat(judgement.verdict()).isEqualTo(verdict);
        // At 4 kHz the number is 0 whatever the level.
        assertThat(judgement.cells().get(0).bands())
                .allSatisfy(point -> assertThat(point.bound())
                        .isEqualTo(point.hz().orElseThrow() == 4000 ? Bound.MEASURED : Bound.AT_LEAST));
    }

    /** A bound never enters a mean as if it were measured, also where the mean is relative to it. */
    @Test
    void aMeanRelativeToABoundIsNone() {
        assertThat(reasons(relative("reference: 4 kHz, bands: 1 kHz to 2 kHz, statistic: mean, limit: at most 22 dB")))
                .singleElement()
                .asString()
                .startsWith("the bands of the rule lie too near the background to be more than bounds (");
    }

    /** Of 2 to 4 kHz the last third is bounded: it holds the others up, and whether itself more than they do, nobody knows. */
    @Test
    void aBoundAmongReferencesBoundsTheOthersAndLeavesNothingOfItself() {
        Judgement judgement =
                relative("reference: mean of 2 kHz to 4 kHz, bands: 1 kHz to 4 kHz, statistic: every band,"
                        + " limit: at least -30 dB");
        assertThat(judgement.verdict()).isEqualTo(Verdict.MARGINAL);
        assertThat(judgement.reasons()).extracting(Remark::text).containsExactly("missing bands: 4000 Hz");
        assertThat(judgement.cells().get(0).bands()).hasSize(6).allMatch(point -> point.bound() == Bound.AT_LEAST);
    }

    private static Judgement relative(String rule) {
        return Bench.judge(
                "quantity: response, level: 60 dB SPL, " + rule,
                new MadeSession("yard")
                        .cause("reading", 0.2, SharedBy.READING)
                        .cause("insertion", 0.5, SharedBy.INSERTION)
                        .pink(60)
                        .quiet()
                        .reading(
                                "device=Skerry, stimulus=pink-60, insertion=1",
                                f -> f > 3900 && f < 4100 ? Bands.energySumDb(20, 30) : 50)
                        .reading("device=Skerry, stimulus=hush, insertion=1", f -> f > 3900 && f < 4100 ? 30 : 0)
                        .session());
    }

    /** Of another unit nothing is known but its declared 0.6 dB; of the unit that was measured it is no error. */
    @Test
    void whatUnitsDifferByCountsOfOthersOnly() {
        Bench bench = new Bench("yard", Resolution.OCTAVE)
                .cause("insertion", 0.5, SharedBy.INSERTION, false)
                .cause("reading", 0, SharedBy.READING, true)
                .cause("unit", 0.6, SharedBy.UNIT, false)
                .cause("ear", 0.8, SharedBy.EAR, false)
                .reading("device=open ear, stimulus=n94", 1000, 80)
                .reading("device=Skerry, stimulus=n94, unit=A, insertion=1", 1000, 60);
        String rule = ATTENUATION + "bands: 1 kHz, statistic: mean, ";
        assertThat(u(rule + "units: mean", bench)).isCloseTo(Math.hypot(0.5, 0.6), within(1e-9));
        assertThat(u(rule + "units: each", bench)).isCloseTo(0.5, within(1e-9));
        assertThat(u(rule + "ears: mean", bench)).isCloseTo(Math.hypot(0.5, 0.8), within(1e-9));
        assertThat(u(rule + "ears: each", bench)).isCloseTo(0.5, within(1e-9));
    }

    private static double u(String rule, Bench bench) {
        return Bench.judge(rule, bench.session()).standardUncertainty().orElseThrow();
    }

    /** More layouts than are remembered: each unit has its own lowest band. */
    @Test
    void everyUnitIsJudgedOverItsOwnBands() {
        Bench bench = bench(Resolution.THIRD_OCTAVE);
        double[] levels = new double[40];
        Arrays.fill(levels, 60);
        for (int i = 0; i < 19; i++) {
            double first = Math.pow(10, (17 + i) / 10.0);
            String unit = String.format(Locale.ROOT, "SN-%02d", i);
            bench.reading(
                    "device=Skerry, stimulus=n94, insertion=1, unit=" + unit, first, Arrays.copyOf(levels, 21 - i));
        }
        Judgement judgement = Bench.judge(
                "quantity: output level, referred to: eardrum, level: 94 dB SPL, bands: all, statistic: every band,"
                        + " units: each, limit: at most 85 dB SPL",
                bench.session());
        assertThat(judgement.cells()).hasSize(19);
        for (int i = 0; i < 19; i++) {
            assertThat(judgement.cells().get(i).bands()).hasSize(21 - i);
        }
    }

    /** Sides that share no insertion scatter apart, and each has draws of its own. */
    @Test
    void sidesOfTheirOwnHaveRepeatsOfTheirOwn() {
        Session session = bench(Resolution.OCTAVE)
                .reading("device=open ear, stimulus=n94", 1000, 80)
                .reading("device=Skerry, setting=flood, stimulus=n94, insertion=1", 1000, 60)
                .reading("device=Skerry, setting=ebb, stimulus=n94, insertion=2", 1000, 65)
                .reading("device=Skerry, setting=slack, stimulus=n94, insertion=1", 1000, 62)
                .session();
        List<Repeats> apart = repeats("between: {setting: [flood, ebb]}", session);
        assertThat(apart).hasSize(2).allMatch(r -> r.key().startsWith("insertions|"));
        assertThat(apart.get(0).key()).isNotEqualTo(apart.get(1).key());
        List<Repeats> together = repeats("between: {setting: [flood, slack]}", session);
        assertThat(together).singleElement().satisfies(r -> assertThat(r.key()).startsWith("insertions|"));
        List<Repeats> alone = repeats("setting: flood", session);
        assertThat(Stream.of(apart, together, alone).flatMap(List::stream).map(Repeats::key))
                .doesNotHaveDuplicates();
    }

    private static List<Repeats> repeats(String which, Session session) {
        String rule = "quantity: attenuation, level: 94 dB SPL, bands: 1 kHz, statistic: mean, limit: at least 1 dB, ";
        return Workings.of(rule + which, Outcome.MEAN, session)
                .preparation()
                .ready()
                .get(0)
                .subject()
                .repeats();
    }

    /** The mate's ear has no open ear of its own: it can stand on neither side. */
    @Test
    void aSideThatCannotBeUsedLeavesNothingToCompare() {
        Session session = bench(Resolution.OCTAVE)
                .reading("device=open ear, stimulus=n94", 1000, 80)
                .reading("device=Skerry, stimulus=n94, insertion=1", 1000, 60)
                .reading("device=Skerry, stimulus=n94, insertion=1, ear=mate-left", 1000, 65)
                .session();
        for (String ears : List.of("crew-01-left, mate-left", "mate-left, crew-01-left")) {
            assertThat(reasons(Bench.judge(
                            "quantity: attenuation, level: 94 dB SPL, bands: 1 kHz, statistic: mean,"
                                    + " between: {ear: [" + ears + "]}, limit: at least 1 dB",
                            session)))
                    .singleElement()
                    .asString()
                    .contains("no open-ear reading of the same ear and stimulus in session yard");
        }
    }

    /** An onset needs three levels, and of both settings two were measured. */
    @Test
    void sidesWithTooFewLevelsLeaveNothingToCompare() {
        Bench bench = bench(Resolution.OCTAVE);
        for (int level : new int[] {62, 78}) {
            bench.reading("device=open ear, stimulus=n" + level, 1000, level)
                    .reading("device=Skerry, setting=flood, insertion=1, stimulus=n" + level, 1000, level - 5)
                    .reading("device=Skerry, setting=ebb, insertion=1, stimulus=n" + level, 1000, level - 5);
        }
        String onset = "quantity: onset level, drop: 3 dB, bands: 1 kHz, statistic: mean, ";
        assertThat(reasons(
                        Bench.judge(onset + "limit: at least 1 dB, between: {setting: [flood, ebb]}", bench.session())))
                .singleElement()
                .asString()
                .contains("session yard has 2 of the levels in dB SPL");
        assertThat(reasons(Bench.judge(onset + "limit: at least 70 dB SPL, setting: flood", bench.session())))
                .singleElement()
                .asString()
                .contains("session yard has 2 of the levels in dB SPL");
    }
}
