package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Bound;
import org.ellwand.acoustics.Resolution;
import org.ellwand.amount.Interval;
import org.ellwand.amount.Unit;
import org.ellwand.claim.Statistic;
import org.ellwand.measurement.Conditions;
import org.ellwand.quantity.Formula;
import org.ellwand.quantity.Outcome;
import org.ellwand.quantity.Reach;
import org.ellwand.statistics.NormalErrors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a rule's statistic says of numbers with u = 1 at 95 %; five u and more are beyond doubt. All numbers in dB. */
class ConclusionTest {
    private static final double NONE = Double.POSITIVE_INFINITY;
    private static final Subject ANY =
            new Subject(Conditions.of(Map.of()), List.of(), 1, new Formula.Mean(List.of()), List.of());

    private final List<Points.One> points = new ArrayList<>();
    private final List<Ready> ready = new ArrayList<>();
    private boolean staged;

    /** One more cell with some numbers. */
    private ConclusionTest cell(boolean missing, double... values) {
        for (double value : values) {
            point(value, Bound.MEASURED);
        }
        List<Band> lacking = missing ? List.of(new Band(Resolution.OCTAVE, 3)) : List.of();
        ready.add(new Ready(ANY, Resolution.OCTAVE, List.of(), lacking, Map.of()));
        return this;
    }

    /** A number of the cell that is added next. */
    private ConclusionTest point(double value, Bound bound) {
        points.add(new Points.One(
                ready.size(),
                points.size(),
                1,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                value,
                new NormalErrors(1),
                true,
                bound));
        return this;
    }

    private Decision decision(Statistic statistic, double lower, double upper) {
        List<Reach> reaches =
                IntStream.range(0, ready.size()).mapToObj(i -> Reach.UNLIMITED).toList();
        Evaluation evaluation =
                new Evaluation(Outcome.CURVE, staged, List.of(), new Points(points), List.of(), reaches);
        return new Conclusion(
                        statistic,
                        Interval.of(lower, upper, Unit.DB),
                        0.95,
                        ready,
                        evaluation,
                        new JointTail(List.of(), 0))
                .decide();
    }

    private static Verdict verdict(Statistic statistic, double lower, double upper, boolean missing, double... values) {
        return new ConclusionTest()
                .cell(missing, values)
                .decision(statistic, lower, upper)
                .verdict();
    }

    @ParameterizedTest
    @CsvSource({"MEAN", "SLOPE", "OVERALL"})
    void aSumThatLacksABandIsNeverFirm(Statistic statistic) {
        assertThat(verdict(statistic, 0, NONE, false, 5)).isEqualTo(Verdict.PASS);
        assertThat(verdict(statistic, 0, NONE, false, -5)).isEqualTo(Verdict.FAIL);
        assertThat(verdict(statistic, 0, NONE, true, 5)).isEqualTo(Verdict.MARGINAL);
        assertThat(verdict(statistic, 0, NONE, true, -5)).isEqualTo(Verdict.MARGINAL);
    }

    @Test
    void everyBandCannotPassWithoutOneButCanFail() {
        assertThat(verdict(Statistic.EVERY_BAND, 0, NONE, false, 5, 6)).isEqualTo(Verdict.PASS);
        assertThat(verdict(Statistic.EVERY_BAND, 0, NONE, true, 5, 6)).isEqualTo(Verdict.MARGINAL);
        assertThat(verdict(Statistic.EVERY_BAND, 0, NONE, true, 5, -6)).isEqualTo(Verdict.FAIL);
    }

    /** The lowest is at least so much where every band is, and at most so much where some band is. */
    @ParameterizedTest
    @CsvSource({
        "LOWEST, 0, Infinity, false, 5, 20, PASS",
        "LOWEST, 0, Infinity, true, 5, 20, MARGINAL",
        "LOWEST, 0, Infinity, true, -5, 20, FAIL",
        "LOWEST, -Infinity, 10, false, 5, 20, PASS",
        "LOWEST, -Infinity, 10, true, 5, 20, PASS",
        "LOWEST, -Infinity, 10, false, 18, 20, FAIL",
        "LOWEST, -Infinity, 10, true, 18, 20, MARGINAL",
        "LOWEST, 0, 10, false, 5, 20, PASS",
        "LOWEST, 0, 10, true, 5, 20, MARGINAL",
        "LOWEST, 0, 10, false, -5, 20, FAIL",
        "LOWEST, 0, 10, false, 20, 20, FAIL",
        "LOWEST, 0, 10, false, 1, 20, MARGINAL",
        "LOWEST, 0, 10, false, 9, 20, MARGINAL",
        "HIGHEST, 0, Infinity, false, 5, -20, PASS",
        "HIGHEST, 0, Infinity, true, 5, -20, PASS",
        "HIGHEST, 0, Infinity, true, -5, -20, MARGINAL",
        "HIGHEST, -Infinity, 10, false, 5, -20, PASS",
        "HIGHEST, -Infinity, 10, true, 5, -20, MARGINAL",
        "HIGHEST, -Infinity, 10, true, 18, -20, FAIL",
        "HIGHEST, 0, 10, false, 5, -20, PASS",
        "HIGHEST, 0, 10, false, 18, 5, FAIL",
        "HIGHEST, 0, 10, false, -6, -20, FAIL"
    })
    void lowestAndHighest(
            Statistic statistic,
            double lower,
            double upper,
            boolean missing,
            double one,
            double other,
            Verdict expected) {
        assertThat(verdict(statistic, lower, upper, missing, one, other)).isEqualTo(expected);
    }

    /** Numbers are differences of two bands, the larger one first. */
    @ParameterizedTest
    @CsvSource({
        "-Infinity, 8, false, 1, 2, PASS",
        "-Infinity, 8, true, 1, 2, MARGINAL",
        "-Infinity, 8, true, 1, 14, FAIL",
        "-Infinity, 8, false, 1, 7, MARGINAL",
        "8, Infinity, false, 1, 14, PASS",
        "8, Infinity, true, 1, 14, PASS",
        "8, Infinity, false, 1, 2, FAIL",
        "8, Infinity, true, 1, 2, MARGINAL",
        "8, 20, false, 1, 14, PASS",
        "8, 20, false, 1, 2, FAIL",
        "8, 20, false, 1, 26, FAIL",
        "0, 8, false, 0, 0, PASS",
        "0, Infinity, false, 0, 0, PASS"
    })
    void spread(double lower, double upper, boolean missing, double one, double other, Verdict expected) {
        assertThat(verdict(Statistic.SPREAD, lower, upper, missing, one, other)).isEqualTo(expected);
    }

    /** 2 Φ(1) − 1 = 0.6827: a spread of 0 is inside ±1 u at both of its ends. */
    @Test
    void aSpreadHasTwoEnds() {
        assertThat(new ConclusionTest()
                        .cell(false, 0)
                        .decision(Statistic.SPREAD, Double.NEGATIVE_INFINITY, 1)
                        .probability())
                .isCloseTo(0.6826895, within(1e-7));
    }

    /** The lower median: of four bands three must lie above a lower end, two below an upper one; of five three. */
    @ParameterizedTest
    @CsvSource({
        "0, Infinity, false, -9 9 9 9, PASS",
        "0, Infinity, true, -9 9 9 9, MARGINAL",
        "0, Infinity, false, -9 -9 9 9, FAIL",
        "0, Infinity, true, -9 -9 9 9, MARGINAL",
        "-Infinity, 0, false, -9 -9 9 9, PASS",
        "-Infinity, 0, false, -9 9 9 9, FAIL",
        "0, Infinity, false, -9 -9 9 9 9, PASS",
        "0, Infinity, false, -9 -9 -9 9 9, FAIL",
        "-Infinity, 0, false, -9 -9 -9 9 9, PASS",
        "-Infinity, 0, false, -9 -9 9 9 9, FAIL",
        "0, 20, false, -9 9 9 9, PASS",
        "0, 20, false, 9 9 30 30, PASS",
        "0, 20, false, 9 30 30 30, FAIL",
        "0, 20, false, -9 9 1 30, MARGINAL"
    })
    void median(double lower, double upper, boolean missing, String values, Verdict expected) {
        double[] numbers = java.util.Arrays.stream(values.split(" "))
                .mapToDouble(Double::parseDouble)
                .toArray();
        assertThat(verdict(Statistic.MEDIAN, lower, upper, missing, numbers)).isEqualTo(expected);
    }

    /** In each of two cells some band must hold; a fail in either is shared: Φ(−1.9) = 0.0287 is enough of one, not of two. */
    @Test
    void someMustHoldInEveryCell() {
        assertThat(cells(5, 6).verdict()).isEqualTo(Verdict.PASS);
        assertThat(cells(5, 1).verdict()).isEqualTo(Verdict.MARGINAL);
        assertThat(cells(5, 1).probability()).isCloseTo(0.8413447, within(1e-7));
        assertThat(cells(5, -1.96).verdict()).isEqualTo(Verdict.FAIL);
        assertThat(cells(5, -1.9).verdict()).isEqualTo(Verdict.MARGINAL);
        assertThat(verdict(Statistic.HIGHEST, 0, NONE, false, -1.9)).isEqualTo(Verdict.FAIL);
    }

    private static Decision cells(double first, double second) {
        return new ConclusionTest()
                .cell(false, first, -50)
                .cell(false, second, -50)
                .decision(Statistic.HIGHEST, 0, NONE);
    }

    /** A bound supports what it proves with the confidence (15 and 11.645 above 10) and refutes nothing. */
    @ParameterizedTest
    @CsvSource({
        "EVERY_BAND, 10, Infinity, 15, AT_LEAST, PASS",
        "EVERY_BAND, 10, Infinity, 11.6449, AT_LEAST, PASS",
        "EVERY_BAND, 10, Infinity, 11.6448, AT_LEAST, MARGINAL",
        "EVERY_BAND, 10, Infinity, 5, AT_LEAST, MARGINAL",
        "EVERY_BAND, -Infinity, 10, 5, AT_LEAST, MARGINAL",
        "EVERY_BAND, -Infinity, 10, 15, AT_LEAST, MARGINAL",
        "EVERY_BAND, 10, 30, 15, AT_LEAST, MARGINAL",
        "EVERY_BAND, -Infinity, 10, 5, AT_MOST, PASS",
        "EVERY_BAND, -Infinity, 10, 15, AT_MOST, MARGINAL",
        "EVERY_BAND, 10, Infinity, 5, AT_MOST, MARGINAL",
        "EVERY_BAND, 10, Infinity, 15, AT_MOST, MARGINAL",
        "HIGHEST, 10, Infinity, 15, AT_LEAST, PASS",
        "HIGHEST, 10, Infinity, 5, AT_LEAST, MARGINAL",
        "LOWEST, -Infinity, 10, 5, AT_MOST, PASS",
        "LOWEST, -Infinity, 10, 15, AT_MOST, MARGINAL"
    })
    void bounds(Statistic statistic, double lower, double upper, double value, Bound bound, Verdict expected) {
        Decision decision = new ConclusionTest().point(value, bound).cell(false).decision(statistic, lower, upper);
        assertThat(decision.verdict()).isEqualTo(expected);
    }

    /** Beside a bound of no use what was measured decides: it can fail, and not pass. */
    @Test
    void whatWasMeasuredDecidesBesideABoundOfNoUse() {
        assertThat(besideABound(Statistic.EVERY_BAND, 0)).isEqualTo(Verdict.FAIL);
        assertThat(besideABound(Statistic.EVERY_BAND, 20)).isEqualTo(Verdict.MARGINAL);
        assertThat(besideABound(Statistic.HIGHEST, 20)).isEqualTo(Verdict.PASS);
        assertThat(besideABound(Statistic.HIGHEST, 0)).isEqualTo(Verdict.MARGINAL);
    }

    private static Verdict besideABound(Statistic statistic, double measured) {
        return new ConclusionTest()
                .point(5, Bound.AT_LEAST)
                .cell(false, measured)
                .decision(statistic, 10, NONE)
                .verdict();
    }

    /** Errors of numbers that were looked for tell already what lies beyond. */
    @Test
    void ofASeriesABoundIsAsGoodAsANumber() {
        ConclusionTest series = new ConclusionTest();
        series.staged = true;
        series.point(30, Bound.AT_LEAST).cell(false);
        assertThat(series.decision(Statistic.EVERY_BAND, Double.NEGATIVE_INFINITY, 20)
                        .verdict())
                .isEqualTo(Verdict.FAIL);
    }
}
