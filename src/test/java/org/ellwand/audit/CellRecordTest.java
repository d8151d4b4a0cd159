package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.ellwand.acoustics.Bound;
import org.ellwand.acoustics.Resolution;
import org.ellwand.amount.Unit;
import org.ellwand.check.MadeSession;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.SharedBy;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is written down of a cell: value, curves, levels, series and times; all of it invented. */
class CellRecordTest {
    private static final String WHERE = "quantity: attenuation, level: 94 dB SPL, bands: 1 kHz to 2 kHz, statistic: ";

    private static Bench declared() {
        return new Bench("yard", Resolution.OCTAVE)
                .cause("insertion", 0.5, SharedBy.INSERTION, false)
                .cause("reading", 0.2, SharedBy.READING, true);
    }

    private static Bench open(Bench bench) {
        return bench.reading("device=open ear, stimulus=n94, take=1", 1000, 80, 82)
                .reading("device=open ear, stimulus=n94, take=2", 1000, 80, 84);
    }

    private static Session twoInsertions(Bench bench) {
        return open(bench)
                .reading("device=Skerry, stimulus=n94, insertion=1", 1000, 60, 61)
                .reading("device=Skerry, stimulus=n94, insertion=2", 1000, 62, 61)
                .session();
    }

    private static CellResult only(Judgement judgement) {
        assertThat(judgement.cells()).hasSize(1);
        return judgement.cells().get(0);
    }

    /** Open ear 80 and 83 dB, in place 61 and 61 dB: 19 and 22 dB, 20.5 dB in the mean. */
    @ParameterizedTest
    @ValueSource(strings = {"mean, limit: at least 15 dB", "every band, limit: at least 15 dB"})
    void curvesOfOneCell(String statistic) {
        CellResult cell = only(Bench.judge(WHERE + statistic, twoInsertions(declared())));
        assertThat(cell.insertions()).isEqualTo(2);
        assertThat(cell.value()).isEqualTo(statistic.startsWith("mean") ? 20.5 : 19);
        assertThat(cell.bound()).isEqualTo(Bound.MEASURED);
        assertThat(cell.bands()).extracting(Point::value).containsExactly(19.0, 22.0);
        assertThat(cell.bands()).extracting(p -> p.hz().orElseThrow()).containsExactly(1000.0, 2000.0);
        assertThat(cell.inPlaceDb()).containsExactly(61.0, 61.0);
        assertThat(cell.openEarDb()).containsExactly(80.0, 83.0);
        assertThat(cell.insertionCurves()).containsExactly(List.of(20.0, 22.0), List.of(18.0, 22.0));
        assertThat(cell.contributions()).isNotEmpty();
        assertThat(cell.series()).isEmpty();
        assertThat(cell.settled()).isEmpty();
    }

    /** Of an extreme the lowest band of the curve, not the deciding one: they lie 19 and 22 dB high. */
    @Test
    void theValueOfAnExtremeIsThatOfItsCurve() {
        assertThat(only(Bench.judge(WHERE + "lowest, limit: at most 25 dB", twoInsertions(declared())))
                        .value())
                .isEqualTo(19);
        assertThat(only(Bench.judge(WHERE + "highest, limit: at least 15 dB", twoInsertions(declared())))
                        .value())
                .isEqualTo(22);
    }

    @Test
    void whereNothingTellsTheSpreadThereIsNoProbability() {
        Judgement judgement = Bench.judge(
                WHERE + "mean, limit: at least 15 dB", twoInsertions(declared().unknown()));
        CellResult cell = only(judgement);
        assertThat(cell.value()).isEqualTo(20.5);
        assertThat(cell.standardUncertainty()).isEmpty();
        assertThat(cell.probability()).isEmpty();
        assertThat(cell.contributions()).isEmpty();
        assertThat(cell.bands()).allMatch(p -> p.probability().isEmpty());
        assertThat(judgement.correction()).isEmpty();
        assertThat(judgement.probability()).isEmpty();
        Judgement known = Bench.judge(WHERE + "mean, limit: at least 15 dB", twoInsertions(declared()));
        assertThat(known.correction().orElseThrow()).isZero();
        assertThat(only(known).standardUncertainty()).isPresent();
        assertThat(only(known).probability()).isPresent();
    }

    /** Settings switched in place share their insertions: each has a curve of differences, and levels are those of no cell. */
    @Test
    void aComparisonHasCurvesOfItsInsertionsAndNoLevels() {
        Bench bench = open(declared());
        for (int i = 1; i <= 2; i++) {
            bench.reading("device=Skerry, setting=flood, stimulus=n94, insertion=" + i, 1000, 60, 61)
                    .reading("device=Skerry, setting=ebb, stimulus=n94, insertion=" + i, 1000, 64 + i, 61);
        }
        CellResult cell = only(
                Bench.judge(WHERE + "mean, between: {setting: [flood, ebb]}, limit: at least 0.1 dB", bench.session()));
        assertThat(cell.inPlaceDb()).isEmpty();
        assertThat(cell.openEarDb()).isEmpty();
        assertThat(cell.bands()).extracting(Point::value).containsExactly(5.5, 0.0);
        assertThat(cell.insertionCurves()).containsExactly(List.of(5.0, 0.0), List.of(6.0, 0.0));
    }

    /** Firmwares in the same ear, each with insertions of its own: which belong together nobody knows. */
    @Test
    void ofUnrelatedInsertionsThereAreNoCurves() {
        Session session = open(declared())
                .reading("device=Skerry, firmware=2.0, stimulus=n94, insertion=1", 1000, 60, 61)
                .reading("device=Skerry, firmware=2.1, stimulus=n94, insertion=2", 1000, 64, 61)
                .session();
        CellResult cell = only(
                Bench.judge(WHERE + "mean, between: {firmware: [\"2.0\", \"2.1\"]}, limit: at least 0.1 dB", session));
        assertThat(cell.bands()).extracting(Point::value).containsExactly(4.0, 0.0);
        assertThat(cell.insertionCurves()).isEmpty();
    }

    /** The mean over one ear keeps that ear's levels; the mean over two has none. */
    @Test
    void aMeanOverEarsHasNoLevels() {
        String rule = WHERE + "mean, ears: mean, limit: at least 15 dB";
        Bench one = declared().cause("ear", 1, SharedBy.EAR, false);
        assertThat(only(Bench.judge(rule, twoInsertions(one))).inPlaceDb()).containsExactly(61.0, 61.0);
        Bench two = declared();
        for (String who : List.of("head=a, ear=a1, ", "head=b, ear=b1, ")) {
            two.reading("device=open ear, stimulus=n94, " + who + "take=1", 1000, 80, 83)
                    .reading("device=Skerry, stimulus=n94, " + who + "insertion=1", 1000, 60, 61);
        }
        CellResult cell = only(Bench.judge(rule, two.session()));
        assertThat(cell.bands()).extracting(Point::value).containsExactly(20.0, 22.0);
        assertThat(cell.inPlaceDb()).isEmpty();
        assertThat(cell.openEarDb()).isEmpty();
        // The curves of the two heads.
        assertThat(cell.insertionCurves()).hasSize(2);
    }

    @ParameterizedTest
    @ValueSource(ints = {50, 51})
    void moreThanFiftyCurvesCannotBeToldApart(int insertions) {
        Bench bench = open(declared());
        IntStream.rangeClosed(1, insertions)
                .forEach(i -> bench.reading("device=Skerry, stimulus=n94, insertion=" + i, 1000, 60, 61));
        assertThat(only(Bench.judge(WHERE + "mean, limit: at least 15 dB", bench.session()))
                        .insertionCurves())
                .hasSize(insertions == 50 ? 50 : 0);
    }

    private static Session threeLevels() {
        return declared()
                .reading("device=open ear, stimulus=n62", 1000, 60, 60)
                .reading("device=open ear, stimulus=n78", 1000, 76, 76)
                .reading("device=open ear, stimulus=n94", 1000, 92, 92)
                .reading("device=Skerry, stimulus=n62, insertion=1", 1000, 55, 54)
                .reading("device=Skerry, stimulus=n78, insertion=1", 1000, 71, 70)
                .reading("device=Skerry, stimulus=n94, insertion=1", 1000, 81, 80)
                .session();
    }

    /** Gains of −5, −5 and −11 dB at 62, 78 and 94 dB: 3 dB less at 86 dB. */
    @Test
    void anOnsetKeepsTheSeriesItWasLookedForIn() {
        String onset = "quantity: onset level, drop: 3 dB, statistic: mean, limit: at least 70 dB SPL, bands: ";
        CellResult cell = only(Bench.judge(onset + "1 kHz", threeLevels()));
        assertThat(cell.value()).isCloseTo(86, within(1e-9));
        assertThat(cell.series())
                .containsExactly(
                        new CellResult.AtLevel(62, -5),
                        new CellResult.AtLevel(78, -5),
                        new CellResult.AtLevel(94, -11));
        assertThat(cell.insertionCurves()).isEmpty();
        assertThat(cell.inPlaceDb()).isEmpty();
    }

    /** In two bands there are two series, and the onsets themselves are the curve. */
    @Test
    void ofBandsThereIsNoSeries() {
        CellResult cell = only(Bench.judge(
                "quantity: onset level, drop: 3 dB, statistic: every band, limit: at least 70 dB SPL,"
                        + " bands: 1 kHz to 2 kHz",
                threeLevels()));
        assertThat(cell.series()).isEmpty();
        assertThat(cell.bands()).hasSize(2);
        assertThat(cell.insertionCurves()).isEmpty();
    }

    private static Session traces() {
        double[] times = {0, 0.999, 1, 1.1, 2, 2.6, 2.8, 3};
        return new MadeSession("yard")
                .cause("reading", 0.3, SharedBy.READING)
                .timing(2, SharedBy.READING)
                .sound("tone", "tone", 80)
                .trace("device=Skerry, insertion=1", List.of(1.0, 55.0, 80.0), times, new double[] {
                    60, 60, 66, 60, 60, 60, 60, 60
                })
                .session();
    }

    /** Down from 66 dB in 0.1 s: within 3 dB of the new level, 60 dB, after half of it. */
    @Test
    void aTimeKeepsTheTraceItWasReadOff() {
        CellResult cell = only(Bench.judge("quantity: attack time, within: 3 dB, limit: at most 0.09 s", traces()));
        assertThat(cell.settled()).singleElement().satisfies(settled -> {
            assertThat(settled.session()).isEqualTo("yard");
            assertThat(settled.file()).isEqualTo("trace-1.csv");
            assertThat(settled.value()).isCloseTo(0.05, within(1e-9));
        });
        assertThat(Unit.MILLISECOND.convert(50, Unit.SECOND)).isEqualTo(0.05);
        assertThat(cell.bands()).isEmpty();
        assertThat(cell.inPlaceDb()).isEmpty();
        assertThat(cell.insertionCurves()).isEmpty();
    }
}
