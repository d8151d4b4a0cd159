package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Bound;
import org.ellwand.acoustics.Resolution;
import org.ellwand.amount.Amount;
import org.ellwand.amount.Interval;
import org.ellwand.amount.Unit;
import org.ellwand.check.Finding;
import org.ellwand.check.Finding.Errs;
import org.ellwand.claim.Rule;
import org.ellwand.input.Place;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Figure;
import org.ellwand.measurement.Session;
import org.ellwand.pairing.Cell;
import org.ellwand.pairing.Insertion;
import org.ellwand.quantity.Formula;
import org.ellwand.statistics.NormalErrors;
import org.ellwand.words.Remark;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which verdicts a finding about the data could have caused, from the way that its fault errs; findings are invented. */
class DoubtsByHandTest {
    private static final String ATTENUATION =
            "quantity: attenuation, level: 94 dB SPL, bands: 1 kHz to 2 kHz, statistic: mean, limit: ";

    private static Finding finding(Errs errs, Double... bands) {
        return finding(errs, Finding.Consequence.UNUSABLE, bands);
    }

    private static Finding finding(Errs errs, Finding.Consequence consequence, Double... bands) {
        return new Finding("leak", "yard", "", List.of(bands), Remark.of("odd-insertion"), errs, consequence);
    }

    private static Rule rule(String stated) {
        return Bench.product(stated).claims().get(0).rule().orElseThrow();
    }

    private static boolean causes(
            Finding finding, String stated, double sign, Verdict verdict, double value, double hz) {
        Points.One point = new Points.One(
                0,
                0,
                1,
                hz == 0 ? OptionalDouble.empty() : OptionalDouble.of(hz),
                OptionalDouble.empty(),
                value,
                new NormalErrors(1),
                false,
                Bound.MEASURED);
        Doubts.Judged judged = new Doubts.Judged(rule(stated), List.of(), sign, 0, true, 0.95);
        return !Doubts.causing(List.of(finding), judged, new Decision(verdict, 0.5, point))
                .isEmpty();
    }

    /** A spread fails by two bands, and a fault in either of them may have brought it about. */
    @Test
    void aPairOfBandsIsTouchedInEither() {
        Points.One pair = new Points.One(
                0,
                0,
                1,
                OptionalDouble.of(8000),
                OptionalDouble.of(125),
                14,
                new NormalErrors(1),
                false,
                Bound.MEASURED);
        Rule spread = rule(ATTENUATION.replace("mean", "spread") + "at most 10 dB");
        Doubts.Judged judged = new Doubts.Judged(spread, List.of(), -1, 0, true, 0.95);
        for (double hz : new double[] {8000, 125}) {
            assertThat(Doubts.causing(
                            List.of(finding(Errs.HIDES_ATTENUATION, hz)), judged, new Decision(Verdict.FAIL, 0, pair)))
                    .hasSize(1);
        }
        assertThat(Doubts.causing(
                        List.of(finding(Errs.HIDES_ATTENUATION, 1000.0)), judged, new Decision(Verdict.FAIL, 0, pair)))
                .isEmpty();
    }

    /** What a response is relative to enters every band of it, the other way round. */
    @Test
    void aFaultInTheReferenceMovesEveryBand() {
        String response = "quantity: response, reference: mean of 250 Hz to 1 kHz, bands: 2 kHz to 8 kHz,"
                + " statistic: every band, limit: at least -3 dB";
        assertThat(causes(finding(Errs.HIDES_ATTENUATION, 250.0), response, 1, Verdict.FAIL, -5, 4000))
                .isTrue();
        assertThat(causes(finding(Errs.HIDES_ATTENUATION, 125.0), response, 1, Verdict.FAIL, -5, 4000))
                .isFalse();
        String atOne = response.replace("mean of 250 Hz to 1 kHz", "500 Hz");
        assertThat(causes(finding(Errs.HIDES_ATTENUATION, 500.0), atOne, 1, Verdict.FAIL, -5, 4000))
                .isTrue();
    }

    /** The product's own noise is at most what was read: of a noise that grows with it, a pass of "at most" stands. */
    @ParameterizedTest
    @CsvSource({
        "at most 25 dB(A), PASS, 20, false",
        "at most 15 dB(A), FAIL, 20, true",
        "at least 15 dB(A), PASS, 20, true",
        "at least 25 dB(A), FAIL, 20, false"
    })
    void ownNoiseEntersAsTheLevelInQuiet(String limit, Verdict verdict, double value, boolean caused) {
        Finding noise = new Finding(
                "own noise",
                "yard",
                "",
                List.of(),
                Remark.of("noise-not-told-apart"),
                Errs.HIDES_ATTENUATION,
                Finding.Consequence.BOUNDED);
        Points.One point = new Points.One(
                0,
                0,
                1,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                value,
                new NormalErrors(1),
                false,
                Bound.MEASURED);
        Rule rule = rule("quantity: equivalent input noise, bands: 1 kHz to 2 kHz, limit: " + limit);
        Doubts.Judged judged = new Doubts.Judged(rule, List.of(), -1, 1, true, 0.95);
        assertThat(Doubts.causing(List.of(noise), judged, new Decision(verdict, 0.5, point)))
                .hasSize(caused ? 1 : 0);
    }

    /** Attenuation falls with the level in place. What hides it makes it seem smaller than it is. */
    @ParameterizedTest
    @CsvSource({
        "HIDES_ATTENUATION, at least 15 dB, PASS, 20, false",
        "HIDES_ATTENUATION, at least 15 dB, FAIL, 10, true",
        "HIDES_ATTENUATION, at most 15 dB, PASS, 10, true",
        "HIDES_ATTENUATION, at most 15 dB, FAIL, 20, false",
        "INVENTS_ATTENUATION, at least 15 dB, PASS, 20, true",
        "INVENTS_ATTENUATION, at least 15 dB, FAIL, 10, false",
        "INVENTS_ATTENUATION, at most 15 dB, PASS, 10, false",
        "INVENTS_ATTENUATION, at most 15 dB, FAIL, 20, true",
        "EITHER, at least 15 dB, PASS, 20, true",
        "EITHER, at least 15 dB, FAIL, 10, true",
        "EITHER, at most 15 dB, FAIL, 20, true",
        "HIDES_ATTENUATION, 10 to 15 dB, PASS, 12, true",
        "INVENTS_ATTENUATION, 10 to 15 dB, PASS, 12, true",
        "HIDES_ATTENUATION, 10 to 15 dB, FAIL, 5, true",
        "HIDES_ATTENUATION, 10 to 15 dB, FAIL, 20, false",
        "INVENTS_ATTENUATION, 10 to 15 dB, FAIL, 5, false",
        "INVENTS_ATTENUATION, 10 to 15 dB, FAIL, 20, true",
        "READS_LOW, at least 15 dB, PASS, 20, false",
        "READS_LOW, at least 15 dB, FAIL, 10, true",
        "READS_LOW, at most 15 dB, PASS, 10, true",
        "READS_HIGH, at least 15 dB, PASS, 20, true",
        "READS_HIGH, at least 15 dB, FAIL, 10, false",
        "READS_HIGH, at most 15 dB, PASS, 10, false",
        "EITHER, at least 15 dB, MARGINAL, 15, false"
    })
    void whatAFaultCouldHaveCaused(Errs errs, String limit, Verdict verdict, double value, boolean expected) {
        assertThat(causes(finding(errs), ATTENUATION + limit, -1, verdict, value, 0))
                .isEqualTo(expected);
    }

    /** A gain grows with the level in place: what hides attenuation makes it seem larger. */
    @Test
    void aGainErrsTheOtherWay() {
        Finding hides = finding(Errs.HIDES_ATTENUATION);
        assertThat(causes(hides, ATTENUATION + "at least 15 dB", 1, Verdict.PASS, 20, 0))
                .isTrue();
        assertThat(causes(hides, ATTENUATION + "at least 15 dB", 1, Verdict.FAIL, 10, 0))
                .isFalse();
    }

    /** Of differences, spreads and slopes, and of what is no sum of curves, no way is known. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "statistic: spread, limit: at most 15 dB|-1",
                "statistic: slope, limit: at most 15 dB/octave|-1",
                "statistic: mean, between: {setting: [flood, ebb]}, limit: at most 15 dB|-1",
                "statistic: mean, limit: at most 15 dB|0"
            })
    void eitherWay(String stated, double sign) {
        String rule = "quantity: attenuation, level: 94 dB SPL, bands: 1 kHz to 2 kHz, " + stated;
        assertThat(causes(finding(Errs.INVENTS_ATTENUATION), rule, sign, Verdict.PASS, 10, 0))
                .isTrue();
        assertThat(causes(finding(Errs.HIDES_ATTENUATION), rule, sign, Verdict.PASS, 10, 0))
                .isTrue();
    }

    @Test
    void whatIsComparedErrsEitherWay() {
        String rule = "quantity: attenuation, level: 94 dB SPL, bands: 1 kHz to 2 kHz, statistic: mean,"
                + " between: {setting: [flood, ebb]}, limit: at most 15 dB";
        assertThat(causes(finding(Errs.READS_HIGH), rule, -1, Verdict.PASS, 10, 0))
                .isTrue();
        assertThat(causes(finding(Errs.READS_LOW), rule, -1, Verdict.FAIL, 20, 0))
                .isTrue();
    }

    /** A fault at 1 kHz did not make 2 kHz fail; it may have made all of them pass. */
    @Test
    void aFailStandsWhereItIsInAnotherBand() {
        Finding atOne = finding(Errs.HIDES_ATTENUATION, 1000.0);
        String rule = ATTENUATION + "at least 15 dB";
        assertThat(causes(atOne, rule, -1, Verdict.FAIL, 10, 2000)).isFalse();
        assertThat(causes(atOne, rule, -1, Verdict.FAIL, 10, 1000)).isTrue();
        assertThat(causes(atOne, rule, -1, Verdict.FAIL, 10, 0)).isTrue();
        assertThat(causes(atOne, ATTENUATION + "at most 15 dB", -1, Verdict.PASS, 10, 2000))
                .isTrue();
    }

    private static Doubts.Judged judged(String stated) {
        CurveReading inPlace = reading("device=Skerry, stimulus=n94, insertion=1");
        CurveReading open = reading("device=open ear, stimulus=n94");
        Session session = new Bench("yard", Resolution.OCTAVE).session();
        Cell cell = new Cell(
                session,
                inPlace.conditions(),
                List.of(new Insertion("1", Optional.empty(), List.of(inPlace))),
                inPlace.values(),
                List.of(open),
                List.of(),
                0,
                List.of());
        Subject subject = new Subject(inPlace.conditions(), List.of(cell), 1, new Formula.Mean(List.of()), List.of());
        List<Band> bands = List.of(new Band(Resolution.OCTAVE, 0), new Band(Resolution.OCTAVE, 1));
        Rule rule = rule(stated);
        boolean usesOpenEar = rule.quantity().equals("attenuation");
        return new Doubts.Judged(
                rule,
                List.of(new Ready(subject, Resolution.OCTAVE, bands, List.of(), Map.of())),
                -1,
                0,
                usesOpenEar,
                0.95);
    }

    private static CurveReading reading(String conditions) {
        return new Bench("yard", Resolution.OCTAVE)
                .reading(conditions, 1000, 60, 60)
                .session()
                .readings()
                .get(0);
    }

    private static boolean touches(Finding finding, String stated) {
        return !new Doubts(List.of(finding)).touching(judged(stated)).isEmpty();
    }

    private static Finding about(String reading, String session, Finding.About about, Double... bands) {
        return new Finding(
                "leak",
                session,
                reading,
                List.of(bands),
                Remark.of("odd-insertion"),
                Errs.EITHER,
                Finding.Consequence.UNUSABLE,
                Optional.empty(),
                about);
    }

    /** Of its session, its readings and its bands; what is noted or widened raises no doubt. */
    @Test
    void whatAFindingTouches() {
        String attenuation = ATTENUATION + "at least 15 dB";
        String output = "quantity: output level, referred to: eardrum, level: 94 dB SPL, bands: 1 kHz to 2 kHz,"
                + " statistic: mean, limit: at most 80 dB SPL";
        Finding.About everything = Finding.About.EVERYTHING;
        assertThat(touches(about("", "yard", everything), attenuation)).isTrue();
        assertThat(touches(about("", "other", everything), attenuation)).isFalse();
        assertThat(touches(about("insertion=1", "yard", everything), attenuation))
                .isTrue();
        assertThat(touches(about("insertion=2", "yard", everything), attenuation))
                .isFalse();
        assertThat(touches(about("device=open ear", "yard", everything), attenuation))
                .isTrue();
        assertThat(touches(about("device=open ear", "yard", everything), output))
                .isFalse();
        assertThat(touches(about("", "yard", everything, 1000.0), attenuation)).isTrue();
        // The octave of 1 kHz ends at 1412.5 Hz, that of 2 kHz at 2818.4 Hz and that of 500 Hz at 707.9 Hz.
        assertThat(touches(about("", "yard", everything, 2800.0), attenuation)).isTrue();
        assertThat(touches(about("", "yard", everything, 2830.0), attenuation)).isFalse();
        assertThat(touches(about("", "yard", everything, 700.0), attenuation)).isFalse();
        assertThat(touches(finding(Errs.EITHER, Finding.Consequence.WIDENED), attenuation))
                .isFalse();
        assertThat(touches(finding(Errs.EITHER, Finding.Consequence.BOUNDED), attenuation))
                .isFalse();
    }

    /** Times do not move with levels, figures are no curves, and what all levels have cancels in differences. */
    @Test
    void whatKindOfNumberAFindingConcerns() {
        String attenuation = ATTENUATION + "at least 15 dB";
        String output = "quantity: output level, referred to: eardrum, level: 94 dB SPL, bands: 1 kHz to 2 kHz,"
                + " statistic: mean, limit: at most 80 dB SPL";
        String compared = output.replace("at most 80 dB SPL", "at most 3 dB") + ", between: {setting: [flood, ebb]}";
        String duration = "quantity: permissible duration, exposure: 29 CFR 1910.95, bands: 1 kHz, level: 94 dB SPL,"
                + " referred to: eardrum, limit: at least 1 h";
        String dose = "quantity: noise dose, exposure: 29 CFR 1910.95, duration: 8 h, bands: 1 kHz, level: 94 dB SPL,"
                + " referred to: eardrum, limit: at most 50 %";
        Finding levels = about("", "yard", Finding.About.LEVELS);
        assertThat(touches(levels, attenuation)).isTrue();
        assertThat(touches(levels, output)).isTrue();
        assertThat(touches(levels, duration)).isFalse();
        assertThat(touches(levels, dose)).isFalse();
        Finding absolute = about("", "yard", Finding.About.ABSOLUTE_LEVELS);
        assertThat(touches(absolute, attenuation)).isFalse();
        assertThat(touches(absolute, output)).isTrue();
        assertThat(touches(absolute, compared)).isFalse();
        assertThat(touches(absolute, duration)).isFalse();
        assertThat(touches(absolute, dose)).isFalse();
        assertThat(touches(about("", "yard", Finding.About.FIGURES), attenuation))
                .isFalse();
        assertThat(touches(about("", "yard", Finding.About.EVERYTHING), duration))
                .isTrue();
    }

    @Test
    void aRatingGrowsWithAttenuation() {
        List<CurveReading> panel = List.of(reading("device=Skerry, insertion=1"));
        Interval atLeast = Interval.atLeast(20, Unit.DB);
        Doubts hides = new Doubts(List.of(finding(Errs.HIDES_ATTENUATION)));
        Doubts invents = new Doubts(List.of(finding(Errs.INVENTS_ATTENUATION)));
        assertThat(hides.causing(panel, atLeast, Verdict.PASS, 22)).isEmpty();
        assertThat(hides.causing(panel, atLeast, Verdict.FAIL, 18)).hasSize(1);
        assertThat(invents.causing(panel, atLeast, Verdict.PASS, 22)).hasSize(1);
        assertThat(invents.causing(panel, atLeast, Verdict.FAIL, 18)).isEmpty();
        Doubts elsewhere = new Doubts(List.of(finding(Errs.HIDES_ATTENUATION, 125.0)));
        assertThat(elsewhere.causing(panel, atLeast, Verdict.FAIL, 18)).isEmpty();
    }

    @Test
    void whatIsSaidOfThem() {
        List<Finding> two = List.of(finding(Errs.EITHER), finding(Errs.EITHER));
        assertThat(Doubts.reason(List.of(), Verdict.PASS)).isEmpty();
        assertThat(Doubts.reason(two, Verdict.FAIL).orElseThrow().figures())
                .containsEntry("checks", "leak in session yard")
                .containsEntry("without", "fail");
        assertThat(Doubts.note(two, List.of()).orElseThrow().key()).isEqualTo("independent-of-findings");
        assertThat(Doubts.note(two, two)).isEmpty();
        assertThat(Doubts.note(List.of(), List.of())).isEmpty();
    }

    /** A noise 3.5 dB above the room, 3 dB but for errors: up to −10 lg(1 − 10^−0.3) = 3.0206 dB of it are the room's. */
    private static boolean ofNoise(
            Errs errs, double aboveDb, String statistic, String limit, Verdict verdict, double value) {
        Finding finding = new Finding(
                "noise",
                "yard",
                "",
                List.of(),
                Remark.of("noise-not-told-apart"),
                errs,
                Finding.Consequence.BOUNDED,
                Optional.of(new Finding.Measure(aboveDb, 6, "dB")),
                Finding.About.EVERYTHING);
        String rule =
                "quantity: output level, referred to: eardrum, stimulus: quiet, bands: 125 Hz to 8 kHz, statistic: "
                        + statistic + ", limit: " + limit;
        return causes(finding, rule, 1, verdict, value, 0);
    }

    /** u = 1 dB and 95 %: 1.6449 dB more than the fault can have moved it, and the verdict stands. */
    @ParameterizedTest
    @CsvSource({
        "EITHER, at most 40 dB(A), PASS, 35.334, false",
        "EITHER, at most 40 dB(A), PASS, 35.335, true",
        "EITHER, at least 20 dB(A), PASS, 24.666, false",
        "EITHER, at least 20 dB(A), PASS, 24.665, true",
        "EITHER, at most 40 dB(A), FAIL, 44.666, false",
        "EITHER, at most 40 dB(A), FAIL, 44.665, true",
        "EITHER, at least 20 dB(A), FAIL, 15.334, false",
        "EITHER, at least 20 dB(A), FAIL, 15.335, true",
        "EITHER, 20 to 40 dB(A), PASS, 30, false",
        "EITHER, 20 to 40 dB(A), FAIL, 10, false",
        "EITHER, 20 to 40 dB(A), FAIL, 18, true",
        "INVENTS_ATTENUATION, at most 40 dB(A), PASS, 30, true",
        "INVENTS_ATTENUATION, at least 20 dB(A), FAIL, 10, true",
        "HIDES_ATTENUATION, at most 40 dB(A), FAIL, 44.666, false",
        "HIDES_ATTENUATION, at most 40 dB(A), FAIL, 44.665, true"
    })
    void aNoiseThatTheRoomMayHaveMade(Errs errs, String limit, Verdict verdict, double value, boolean expected) {
        assertThat(ofNoise(errs, 3.5, "overall, weighting: A", limit, verdict, value))
                .isEqualTo(expected);
    }

    /** Nothing bounds what the room adds to a noise that is hardly above it, nor to what is no sum. */
    @Test
    void whatIsNotKnownToMoveLittleMayHaveMovedAll() {
        assertThat(ofNoise(Errs.EITHER, 0.5, "overall, weighting: A", "at most 40 dB(A)", Verdict.PASS, 10))
                .isTrue();
        assertThat(ofNoise(Errs.EITHER, 3.5, "mean", "at most 40 dB SPL", Verdict.PASS, 10))
                .isTrue();
    }

    private static boolean ofFigure(Finding finding, String of, double value, Unit unit, String stated) {
        Figure figure = new Figure(
                of,
                new Amount(value, unit, 1),
                Optional.empty(),
                Conditions.of(Map.of("session", "yard", "device", "Skerry")),
                new Place("measurements/yard.yaml", 3, 1));
        return !new Doubts(List.of(finding))
                .of(List.of(figure), rule("quantity: figure, " + stated))
                .isEmpty();
    }

    /** A figure is touched by what is said of itself, and by what makes all levels of its session wrong where it is one. */
    @Test
    void whichFiguresAFindingTouches() {
        Finding mass = about("figure=mass", "yard", Finding.About.FIGURES);
        assertThat(ofFigure(mass, "mass", 5, Unit.GRAM, "of: mass, limit: at most 6 g"))
                .isTrue();
        assertThat(ofFigure(mass, "life", 5, Unit.HOUR, "of: life, limit: at most 6 h"))
                .isFalse();
        String level = "of: noise, limit: at most 30 dB SPL";
        Finding levels = about("", "yard", Finding.About.LEVELS);
        assertThat(ofFigure(levels, "noise", 25, Unit.DB_SPL, level)).isTrue();
        assertThat(ofFigure(levels, "mass", 5, Unit.GRAM, "of: mass, limit: at most 6 g"))
                .isFalse();
        assertThat(ofFigure(about("", "other", Finding.About.LEVELS), "noise", 25, Unit.DB_SPL, level))
                .isFalse();
        assertThat(ofFigure(about("insertion=1", "yard", Finding.About.LEVELS), "noise", 25, Unit.DB_SPL, level))
                .isFalse();
        assertThat(ofFigure(about("", "yard", Finding.About.EVERYTHING), "noise", 25, Unit.DB_SPL, level))
                .isFalse();
        assertThat(ofFigure(
                        levels,
                        "noise",
                        25,
                        Unit.DB_SPL,
                        "of: noise, between: {setting: [flood, ebb]}, limit: at most 3 dB"))
                .isFalse();
    }
}
