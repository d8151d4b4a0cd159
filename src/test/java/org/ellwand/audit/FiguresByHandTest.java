package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ellwand.amount.Amount;
import org.ellwand.amount.Unit;
import org.ellwand.input.InputException;
import org.ellwand.input.Place;
import org.ellwand.measurement.Bare;
import org.ellwand.measurement.Figure;
import org.ellwand.measurement.Session;
import org.ellwand.statistics.Errors;
import org.ellwand.statistics.MixedErrors;
import org.ellwand.statistics.Scatter;
import org.ellwand.words.Remark;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Single figures, their means, differences, ratios and scatter, worked by hand; all of them invented. */
class FiguresByHandTest {
    private final List<Figure> figures = new ArrayList<>();

    /** A figure of the plug, its uncertainty in the same unit, under {@code key=value} conditions. */
    private FiguresByHandTest figure(double value, Unit unit, double u, String conditions) {
        return add(value, unit, Optional.of(new Amount(u, unit, 2)), conditions);
    }

    private FiguresByHandTest unstated(double value, Unit unit, String conditions) {
        return add(value, unit, Optional.empty(), conditions);
    }

    private FiguresByHandTest add(double value, Unit unit, Optional<Amount> u, String conditions) {
        figures.add(new Figure(
                "battery life",
                new Amount(value, unit, 2),
                u,
                Bare.conditions(Map.of("session", "bench", "device", "Skerry"), conditions),
                new Place("measurements/bench.yaml", figures.size() + 2, 1)));
        return this;
    }

    private Session session() {
        return Bare.ofFigures("bench", figures);
    }

    private Judgement judged(String rule) {
        return Bench.judge("quantity: figure, of: battery life, " + rule, session());
    }

    private static void has(Judgement judgement, double value, double u) {
        assertThat(judgement.value().orElseThrow()).isCloseTo(value, within(1e-9));
        assertThat(judgement.standardUncertainty().orElseThrow()).isCloseTo(u, within(1e-4 * u));
    }

    /** 19 and 20 h with 0.3 and 0.4 h: 19.5 h, √(0.09 + 0.16)/2 = 0.25 h; two of these above 19 h, Φ(2) = 0.97725. */
    @Test
    void repeatsAreAveraged() {
        figure(1140, Unit.MINUTE, 18, "take=1").figure(20, Unit.HOUR, 0.4, "take=2");
        Judgement judgement = judged("limit: at least 19 h");
        has(judgement, 19.5, 0.25);
        assertThat(judgement.probability().orElseThrow()).isCloseTo(0.9772499, within(1e-7));
        assertThat(judgement.verdict()).isEqualTo(Verdict.PASS);
        assertThat(judgement.lower().orElseThrow()).isCloseTo(19.5 - 1.959964 * 0.25, within(1e-5));
        assertThat(judgement.cells()).hasSize(1);
        assertThat(judgement.cells().get(0).insertions()).isEqualTo(2);
        assertThat(judgement.cells().get(0).value()).isCloseTo(19.5, within(1e-9));
        assertThat(judgement.cells().get(0).probability()).isEqualTo(judgement.probability());
        has(judged("limit: at least 1140 min"), 1170, 15);
    }

    /** 0.5 u above its end: Φ(0.5) = 0.69, and no insertion would settle what is no curve. */
    @Test
    void onTheLimitItIsMarginalAndSaysSo() {
        Judgement judgement = figure(20, Unit.HOUR, 2, "take=1").judged("limit: at least 19 h");
        assertThat(judgement.verdict()).isEqualTo(Verdict.MARGINAL);
        assertThat(judgement.probability().orElseThrow()).isCloseTo(0.6914625, within(1e-7));
        assertThat(judgement.reasons()).extracting(Remark::key).containsExactly("on-the-limit");
        assertThat(judged("limit: at least 15 h").reasons()).isEmpty();
        assertThat(judged("limit: at least 25 h").verdict()).isEqualTo(Verdict.FAIL);
    }

    /** One of two without an uncertainty leaves their mean without one. */
    @ParameterizedTest
    @CsvSource({"at least 19 h, inside", "at least 20 h, below", "at most 19 h, above"})
    void withoutUncertaintyOnlyTheSideIsTold(String limit, String side) {
        figure(19, Unit.HOUR, 0.3, "take=1").unstated(20, Unit.HOUR, "take=2");
        Judgement judgement = judged("limit: " + limit);
        assertThat(judgement.verdict()).isEqualTo(Verdict.MARGINAL);
        assertThat(judgement.value().orElseThrow()).isCloseTo(19.5, within(1e-9));
        assertThat(judgement.probability()).isEmpty();
        assertThat(judgement.standardUncertainty()).isEmpty();
        assertThat(judgement.cells().get(0).probability()).isEmpty();
        assertThat(judgement.cells().get(0).standardUncertainty()).isEmpty();
        assertThat(judgement.reasons()).extracting(Remark::key).containsExactly("uncertainty-not-stated-" + side);
    }

    /** Of several units the one nearest to, or furthest beyond, its end is told of. */
    @Test
    void theWorstOfSeveralIsToldOf() {
        unstated(19, Unit.HOUR, "unit=A").unstated(17, Unit.HOUR, "unit=B").unstated(20, Unit.HOUR, "unit=C");
        Judgement judgement = judged("units: each, limit: at least 18 h");
        assertThat(judgement.value()).hasValue(17);
        assertThat(judgement.reasons()).extracting(Remark::key).containsExactly("uncertainty-not-stated-below");
        assertThat(judgement.remarks()).extracting(Remark::key).containsExactly("units-not-product");
        assertThat(judgement.notes().get(0)).contains("A, B, C");
    }

    /** Two settings of one unit, and one reason. */
    @Test
    void aReasonIsGivenOnce() {
        figure(21, Unit.HOUR, 0.1, "unit=A, setting=flood").figure(22, Unit.HOUR, 0.1, "unit=A, setting=ebb");
        Judgement judgement = judged("setting: all, units: mean, limit: at least 1 h");
        assertThat(judgement.cells()).hasSize(2);
        assertThat(judgement.reasons()).extracting(Remark::key).containsExactly("one-unit");
    }

    /** Units A and B pair up: differences of 2 and 3 h; C was measured with one firmware only. */
    @Test
    void whatIsOnOneSideOnlyIsNamedBesideThePairs() {
        figure(20, Unit.HOUR, 0.1, "firmware=2.1, unit=A").figure(18, Unit.HOUR, 0.1, "firmware=2.0, unit=A");
        figure(22, Unit.HOUR, 0.1, "firmware=2.1, unit=B").figure(19, Unit.HOUR, 0.1, "firmware=2.0, unit=B");
        figure(25, Unit.HOUR, 0.1, "firmware=2.1, unit=C");
        Judgement judgement = judged("between: {firmware: [\"2.1\", \"2.0\"]}, units: mean, limit: at least 1 h");
        assertThat(judgement.value().orElseThrow()).isCloseTo(2.5, within(1e-9));
        assertThat(judgement.remarks()).extracting(Remark::key).containsExactly("not-used");
        assertThat(judgement.cells().get(0).insertions()).isEqualTo(2);
    }

    /** A charge lasts 20 h in one week and 18 h in the next: 2 h less, √(0.09 + 0.16) = 0.5 h. */
    @Test
    void sessionsAreComparedToo() {
        Session first = Bare.ofFigures("week-19", List.of(inSession("week-19", 20, 0.3)));
        Session second = Bare.ofFigures("week-20", List.of(inSession("week-20", 18, 0.4)));
        Judgement judgement = Bench.judge(
                "quantity: figure, of: battery life, between: {session: [week-19, week-20]}, limit: at least 1 h",
                first,
                second);
        has(judgement, 2, 0.5);
    }

    private static Figure inSession(String session, double hours, double u) {
        return new Figure(
                "battery life",
                new Amount(hours, Unit.HOUR, 2),
                Optional.of(new Amount(u, Unit.HOUR, 2)),
                Bare.conditions(Map.of("session", session), "device=Skerry"),
                new Place("measurements/" + session + ".yaml", 2, 1));
    }

    /** 20/16 with 1 % each is far from 1.4 and from 1.1: a ratio fails at the one end that its limit has. */
    @Test
    void aRatioFails() {
        figure(20, Unit.HOUR, 0.2, "firmware=2.1").figure(16, Unit.HOUR, 0.16, "firmware=2.0");
        String ratio = "between: {firmware: [\"2.1\", \"2.0\"]}, compared by: ratio, limit: ";
        assertThat(judged(ratio + "at least 1.4").verdict()).isEqualTo(Verdict.FAIL);
        assertThat(judged(ratio + "at most 1.1").verdict()).isEqualTo(Verdict.FAIL);
        assertThat(judged(ratio + "at least 1.1").verdict()).isEqualTo(Verdict.PASS);
    }

    /** No insertion makes a figure surer: 20/16 with 20 % each may well be 1.7, though were it normal it would not. */
    @Test
    void aRatioOnTheLimitIsNotSaidToNeedInsertions() {
        figure(20, Unit.HOUR, 4, "firmware=2.1").figure(16, Unit.HOUR, 3.2, "firmware=2.0");
        Judgement judgement =
                judged("between: {firmware: [\"2.1\", \"2.0\"]}, compared by: ratio, limit: at least 1.85");
        assertThat(judgement.verdict()).isEqualTo(Verdict.MARGINAL);
        assertThat(judgement.reasons()).extracting(Remark::key).containsExactly("on-the-limit");
    }

    /** 20 − 18 h with 0.3 and 0.4 h: u = 0.5 h. As a ratio 20/16 with 1 % each: 1.25 · √2 %, to first order. */
    @Test
    void differencesAndRatios() {
        figure(20, Unit.HOUR, 0.3, "firmware=2.1").figure(1080, Unit.MINUTE, 24, "firmware=2.0");
        Judgement difference = judged("between: {firmware: [\"2.1\", \"2.0\"]}, limit: at least 1 h");
        has(difference, 2, 0.5);
        assertThat(difference.cells().get(0).insertions()).isEqualTo(2);
        figures.clear();
        figure(20, Unit.HOUR, 0.2, "firmware=2.1").figure(960, Unit.MINUTE, 9.6, "firmware=2.0");
        Judgement ratio =
                judged("between: {firmware: [\"2.1\", \"2.0\"]}, compared by: ratio, limit: 1.2, sense: at least");
        assertThat(ratio.value().orElseThrow()).isCloseTo(1.25, within(1e-9));
        assertThat(ratio.standardUncertainty().orElseThrow()).isCloseTo(1.25 * Math.sqrt(2) * 0.01, within(1e-4));
        assertThat(ratio.cells().get(0).insertions()).isEqualTo(2);
    }

    @Test
    void aComparisonWithAnUnknownSpreadHasNone() {
        figure(20, Unit.HOUR, 0.3, "firmware=2.1").unstated(18, Unit.HOUR, "firmware=2.0");
        Judgement judgement = judged("between: {firmware: [\"2.1\", \"2.0\"]}, limit: at least 1 h");
        assertThat(judgement.probability()).isEmpty();
        assertThat(judgement.value().orElseThrow()).isCloseTo(2, within(1e-9));
    }

    @Test
    void whatWasMeasuredOfOneSideOnlyIsNotCompared() {
        Judgement judgement = figure(20, Unit.HOUR, 0.3, "firmware=2.1")
                .judged("between: {firmware: [\"2.1\", \"2.0\"]}, limit: at least 1 h");
        assertThat(judgement.verdict()).isEqualTo(Verdict.UNTESTED);
        assertThat(judgement.reason().orElseThrow())
                .isEqualTo("nothing usable was measured under firmware 2.0, which the comparison needs");
    }

    /**
     * Units of 18.9 and 19.1, 21 and 23 h, the first the mean of two benches: 19, 21, 23 h; 21 h, s = 2 h, 2/√3 = 1.1547 h,
     * times 1.32128 for half the central 68.27 % of t with 2 degrees of freedom.
     */
    @Test
    void aMeanOverUnitsHasTheirScatter() {
        figure(18.9, Unit.HOUR, 0.1, "unit=A, session=one")
                .figure(19.1, Unit.HOUR, 0.1, "unit=A, session=two")
                .figure(21, Unit.HOUR, 0.1, "unit=B")
                .figure(23, Unit.HOUR, 0.1, "unit=C");
        Judgement judgement = judged("units: mean, limit: at least 20 h");
        assertThat(judgement.value().orElseThrow()).isCloseTo(21, within(1e-9));
        double u = new MixedErrors(0, List.of(new Scatter(2, 2 / Math.sqrt(3)))).standardUncertainty();
        assertThat(u).isCloseTo(1.1547 * 1.3213, within(1e-3));
        assertThat(judgement.standardUncertainty().orElseThrow()).isCloseTo(u, within(1e-9));
        assertThat(judgement.cells().get(0).insertions()).isEqualTo(4);
        assertThat(judgement.cells().get(0).conditions().get("unit")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"units, unit", "ears, head"})
    void oneTellsNothingOfOthers(String over, String one) {
        Judgement judgement =
                figure(21, Unit.HOUR, 0.1, one + "=A, ear=left").judged(over + ": mean, limit: at least 1 h");
        assertThat(judgement.verdict()).isEqualTo(Verdict.MARGINAL);
        assertThat(judgement.reasons()).extracting(Remark::key).containsExactly("one-" + one);
    }

    /** Nothing but yes (1) and no (0): five of five heads; were half of all so, 0.5⁵ would find as many: 0.96875. */
    @Test
    void yesAndNoAreCounted() {
        for (String head : List.of("a", "b", "c", "d", "e")) {
            unstated(1, Unit.NONE, "head=" + head + ", ear=" + head + "1");
        }
        Judgement judgement = judged("ears: share of 50 %, limit: 1, sense: at least");
        assertThat(judgement.probability().orElseThrow()).isCloseTo(0.96875, within(1e-9));
        assertThat(judgement.verdict()).isEqualTo(Verdict.PASS);
        assertThat(judgement.remarks()).extracting(Remark::key).containsExactly("share-said");
        // 0.05^(1/5) = 0.5493.
        assertThat(judgement.remarks().get(0).figures())
                .containsEntry("confidence", "95")
                .containsEntry("share", "54.9")
                .containsEntry("measured", 5);
        // Of a head it is so where it is so in every ear: four of five.
        unstated(0, Unit.NONE, "head=e, ear=e2");
        // P(at most 3 of 5 inside | 0.5) = 26/32.
        assertThat(judged("ears: share of 50 %, limit: 1, sense: at least")
                        .probability()
                        .orElseThrow())
                .isCloseTo(0.8125, within(1e-9));
    }

    /** With a 2 among them they are numbers, and a share of them is told by their mean and scatter. */
    @Test
    void otherNumbersAreNotCounted() {
        for (String unit : List.of("a", "b", "c", "d")) {
            unstated(unit.equals("a") ? 2 : 1, Unit.NONE, "unit=" + unit);
        }
        Judgement judgement = judged("units: share of 50 %, limit: 1, sense: at least");
        // The share is half where the mean is 1: mean 1.25, s = 0.5, t = 0.25/0.25 = 1 with 3 degrees of freedom:
        // 0.80450.
        assertThat(judgement.probability().orElseThrow()).isCloseTo(0.80450, within(1e-5));
    }

    /** Other units on either side: means of 21 h (19, 21, 23) and 18 h (17, 19), the scatter of both. */
    @Test
    void meansOverOtherUnitsAreHeldAgainstEachOther() {
        int unit = 0;
        for (double value : new double[] {19, 21, 23}) {
            figure(value, Unit.HOUR, 0.1, "firmware=2.1, unit=A" + unit++);
        }
        for (double value : new double[] {1020, 1140}) {
            figure(value, Unit.MINUTE, 6, "firmware=2.0, unit=B" + unit++);
        }
        Judgement judgement = judged("between: {firmware: [\"2.1\", \"2.0\"]}, units: mean, limit: at least 1 h");
        Errors expected =
                new MixedErrors(0, List.of(new Scatter(2, 2 / Math.sqrt(3)), new Scatter(1, Math.sqrt(2 / 2.0))));
        has(judgement, 3, expected.standardUncertainty());
        assertThat(judgement.remarks()).extracting(Remark::key).containsExactly("means-of-units");
        assertThat(judgement.cells().get(0).insertions()).isEqualTo(5);
        figures.remove(4);
        Judgement single = judged("between: {firmware: [\"2.1\", \"2.0\"]}, units: mean, limit: at least 1 h");
        assertThat(single.reasons()).extracting(Remark::key).containsExactly("one-unit");
    }

    /** A ratio of means: 21/18; the scatter of the first over 18, that of the second times 21/18². */
    @Test
    void aRatioOfMeans() {
        FigureMeans ratio = new FigureMeans(new double[] {19, 21, 23}, new double[] {17, 19}, true);
        assertThat(ratio.value()).isCloseTo(21 / 18.0, within(1e-12));
        Errors expected = new MixedErrors(
                0, List.of(new Scatter(2, 2 / Math.sqrt(3) / 18), new Scatter(1, 1 * 21.0 / (18 * 18))));
        assertThat(ratio.errors().orElseThrow().standardUncertainty())
                .isCloseTo(expected.standardUncertainty(), within(1e-12));
        assertThat(new FigureMeans(new double[] {19, 21}, new double[] {17}, true).errors())
                .isEmpty();
        assertThat(new FigureMeans(new double[] {19}, new double[] {17, 18}, true).errors())
                .isEmpty();
    }

    @Test
    void anotherKindOfUnitIsRefused() {
        figure(20, Unit.HOUR, 0.3, "take=1");
        assertThatThrownBy(() -> judged("limit: at least 5 g"))
                .hasCauseInstanceOf(InputException.class)
                .hasMessageContaining("the limit is in 'g' and the figure in 'h'");
        assertThatThrownBy(() -> judged("limit: at least 5"))
                .hasMessageContaining("the limit is in 'plain numbers' and the figure in 'h'");
    }

    /** Five units of 20 to 24 h: the lot is told of beside the verdict. */
    @Test
    void unitsOfALot() {
        for (int i = 0; i < 5; i++) {
            figure(20 + i, Unit.HOUR, 0.3, "unit=A" + i);
        }
        Judgement judgement = judged("units: each, limit: at least 18 h");
        assertThat(judgement.verdict()).isEqualTo(Verdict.PASS);
        assertThat(judgement.remarks())
                .extracting(Remark::key)
                .containsExactly("units-not-product", "lot", "lot-test-at-least");
        assertThat(judgement.notes().get(1)).contains("5 of 5 units").contains("worst unit A0 at 20 h");
    }

    /**
     * 20 to 24 h between 19 and 25 h, the third unit measured again at 24.5 h, which is nearest to an end and counts: the mean of
     * the five is 22.5 h; the ends move by 1.6449 · 0.3 = 0.4935 h.
     */
    @Test
    void aLotBetweenTwoEnds() {
        double[] hours = {21, 20, 22, 23, 24};
        for (int i = 0; i < hours.length; i++) {
            figure(hours[i], Unit.HOUR, 0.3, "unit=A" + i + ", session=one");
        }
        figure(24.5, Unit.HOUR, 0.3, "unit=A2, session=two");
        List<String> notes = judged("units: each, limit: 19 to 25 h").notes();
        // Squares about 22.5: 2.25 + 6.25 + 4 + 0.25 + 2.25 = 15; s = 1.9365; 2.5/5.8095 = 0.4303.
        assertThat(notes.get(1))
                .contains("capability 0.43")
                .contains("mean 22.5")
                .contains("worst unit A2 at 24.5 h");
        assertThat(notes.get(2)).contains("at least 19.49 h and at most 24.51 h");
        assertThat(judged("units: each, limit: 22 to 23 h").notes().get(2)).contains("22.49 h");
        assertThat(judged("units: each, limit: 22 to 22.9 h").notes().get(2)).contains("no value will do");
    }

    @Test
    void nothingMeasuredIsUntested() {
        assertThat(judged("limit: at least 5 h").reasons())
                .extracting(Remark::key)
                .containsExactly("no-reading");
    }
}
