package org.ellwand.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.ellwand.quantity.InventedCells.OCTAVE;
import static org.ellwand.quantity.InventedCells.THIRD;
import static org.ellwand.quantity.InventedCells.bands;
import static org.ellwand.quantity.InventedCells.cell;
import static org.ellwand.quantity.InventedCells.insertion;
import static org.ellwand.quantity.InventedCells.reading;
import static org.ellwand.quantity.InventedCells.task;

import java.util.List;
import java.util.Optional;
import org.ellwand.acoustics.Band;
import org.ellwand.amount.Interval;
import org.ellwand.amount.Unit;
import org.ellwand.claim.Reference;
import org.ellwand.measurement.Reading;
import org.ellwand.pairing.Cell;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** How far numbers move with a level: in closed form, and by raising each level by 1 dB, which is the same where they are linear. */
class SlopesByHandTest {
    private static final List<Band> THREE = bands(OCTAVE, 500, 2000);
    private static final List<CurvePart> ATTENUATION = List.of(CurvePart.openEar(1), CurvePart.inPlace(-1));

    /** Two insertions, the first of two takes; the open ear has a band more, so that its bands stand elsewhere. */
    private static Cell twoInsertions() {
        Reading lower = reading(OCTAVE, 500, 60, 61, 62);
        Reading upper = reading(OCTAVE, 500, 63, 62, 61);
        Reading other = reading(OCTAVE, 500, 59, 58, 57);
        return cell(
                List.of(insertion(lower, upper), insertion(other)),
                List.of(reading(OCTAVE, 250, 80, 81, 82, 83)),
                List.of(),
                2);
    }

    private static Formula attenuation() {
        return new CellFormula(twoInsertions(), Optional.empty(), ATTENUATION);
    }

    private static Formula response() {
        Reference reference = new Reference.MeanOf(Interval.of(500, 1000, Unit.HZ));
        CurvePart part = new CurvePart(1, 1, 0, 0, 0, Optional.empty(), Optional.of(reference));
        return new CellFormula(twoInsertions(), Optional.empty(), List.of(part));
    }

    private static Formula other() {
        return new CellFormula(
                cell(reading(OCTAVE, 500, 50, 51, 52), reading(OCTAVE, 500, 70, 70, 70)),
                Optional.empty(),
                ATTENUATION);
    }

    /** Slopes by number, reading and place, times a factor. */
    private static double[][][] told(Computation computation, double factor, double[][] levelsDb) {
        double[][][] slopes = new double[computation.size()][levelsDb.length][4];
        assertThat(computation.addSlopes(factor, (r, b, p, slope) -> slopes[p][r][b] += slope))
                .isTrue();
        return slopes;
    }

    private static void checkSlopes(Formula formula, Outcome outcome) {
        ReadingIndex index = new ReadingIndex();
        Computation computation = formula.computation(task(THREE, outcome), index);
        assertThat(computation.isLinear()).isTrue();
        double[][] levelsDb = index.levelsDb();
        double[][][] told = told(computation, 1, levelsDb);
        double[][][] doubled = told(computation, 2, levelsDb);
        double[] before = new double[computation.size()];
        double[] after = new double[computation.size()];
        computation.compute(levelsDb, before);
        for (int r = 0; r < levelsDb.length; r++) {
            for (int b = 0; b < levelsDb[r].length; b++) {
                levelsDb[r][b] += 1;
                computation.compute(levelsDb, after);
                levelsDb[r][b] -= 1;
                for (int p = 0; p < before.length; p++) {
                    assertThat(told[p][r][b]).isCloseTo(after[p] - before[p], within(1e-9));
                    assertThat(doubled[p][r][b]).isCloseTo(2 * (after[p] - before[p]), within(1e-9));
                }
            }
        }
    }

    @ParameterizedTest
    @EnumSource(
            value = Outcome.class,
            names = {"CURVE", "PAIRS", "MEAN", "SLOPE"})
    void slopesAreWhatADecibelDoes(Outcome outcome) {
        checkSlopes(attenuation(), outcome);
        checkSlopes(response(), outcome);
        checkSlopes(new Formula.Comparison(attenuation(), other(), false), outcome);
        checkSlopes(new Formula.Mean(List.of(attenuation(), other(), response())), outcome);
        checkSlopes(
                new Formula.Comparison(new Formula.Mean(List.of(attenuation(), other())), response(), false), outcome);
    }

    /**
     * In place a take of the first insertion counts a quarter, the second insertion a half; the open ear counts whole, at the
     * second of its bands. Of the pair of 500 Hz and 1 kHz the higher band counts the other way.
     */
    @Test
    void slopesOfAnAttenuation() {
        ReadingIndex index = new ReadingIndex();
        Computation curve = attenuation().computation(task(THREE, Outcome.CURVE), index);
        double[][][] slopes = told(curve, 1, index.levelsDb());
        int openEar = index.of(twoInsertionsOpenEar(index));
        assertThat(slopes[0][openEar]).containsExactly(0, 1, 0, 0);
        assertThat(slopes[2][openEar]).containsExactly(0, 0, 0, 1);
        assertThat(inPlace(slopes[0], openEar)).containsExactlyInAnyOrder(-0.25, -0.25, -0.5);
        Computation pairs = attenuation().computation(task(THREE, Outcome.PAIRS), index);
        assertThat(pairs.size()).isEqualTo(3);
        Computation mean = attenuation().computation(task(THREE, Outcome.MEAN), new ReadingIndex());
        assertThat(told(mean, 1, index.levelsDb())[0][openEar]).containsExactly(0, 1 / 3.0, 1 / 3.0, 1 / 3.0);
    }

    private static Reading twoInsertionsOpenEar(ReadingIndex index) {
        return index.readings().stream()
                .filter(r -> r.numbers().length == 4)
                .findFirst()
                .orElseThrow();
    }

    private static List<Double> inPlace(double[][] slopes, int openEar) {
        return java.util.stream.IntStream.range(0, slopes.length)
                .filter(r -> r != openEar)
                .mapToObj(r -> slopes[r][0])
                .toList();
    }

    /** Nothing is told of a sum of energies, nor of a ratio. */
    @Test
    void whatIsNotLinearHasNoSlopes() {
        notTold(attenuation(), task(THREE, Outcome.OVERALL));
        notTold(new Formula.Comparison(attenuation(), other(), true), task(THREE, Outcome.MEAN));
        notTold(new Formula.Mean(List.of(attenuation(), other())), task(THREE, Outcome.OVERALL));
        Formula thirds = new CellFormula(
                cell(reading(THIRD, 800, 60, 60, 60), reading(THIRD, 800, 80, 80, 80)), Optional.empty(), ATTENUATION);
        notTold(thirds, task(bands(OCTAVE, 1000, 1000), Outcome.MEAN));
    }

    private static void notTold(Formula formula, Formula.Task task) {
        Computation computation = formula.computation(task, new ReadingIndex());
        assertThat(computation.isLinear()).isFalse();
        assertThat(computation.addSlopes(1, (r, b, p, slope) -> {
                    throw new AssertionError("a slope was told");
                }))
                .isFalse();
    }

    /** The mean of numbers is linear in them, and has no slopes of its own in closed form. */
    @Test
    void numbersAreLinearWithoutSlopes() {
        Reading one = number(12);
        Reading two = number(18);
        Reading three = number(30);
        Formula mean =
                new NumberFormula(cell(List.of(insertion(one, two), insertion(three)), List.of(), List.of(), 0), 0.001);
        ReadingIndex index = new ReadingIndex();
        Computation computation = mean.computation(task(THREE, Outcome.MEAN), index);
        double[] out = new double[1];
        computation.compute(index.levelsDb(), out);
        // 12 and 18 ms are one insertion of 15 ms, beside one of 30 ms; told in seconds.
        assertThat(out[0]).isCloseTo(0.0225, within(1e-12));
        assertThat(computation.isLinear()).isTrue();
        assertThat(computation.readings()).containsExactly(0, 1, 2);
        assertThat(computation.addSlopes(1, (r, b, p, slope) -> {
                    throw new AssertionError("a slope was told");
                }))
                .isFalse();
        assertThat(computation.addends()).containsExactly(new Computation.Addend(computation, 1));
    }

    private static Reading number(double value) {
        return new org.ellwand.measurement.NumberReading(
                org.ellwand.measurement.Conditions.of(java.util.Map.of("session", "yard")),
                value,
                Optional.empty(),
                new org.ellwand.input.Place("made.csv", 2, 1));
    }

    /** Positions of the readings that move a number; of several computations all together, each once. */
    @Test
    void readingsOfAComputation() {
        ReadingIndex index = new ReadingIndex();
        index.of(reading(OCTAVE, 500, 1));
        Cell cell = twoInsertions();
        Formula formula = new CellFormula(cell, Optional.empty(), ATTENUATION);
        assertThat(formula.computation(task(THREE, Outcome.MEAN), index).readings())
                .containsExactly(1, 2, 3, 4);
        Formula twice = new Formula.Comparison(other(), formula, false);
        assertThat(twice.computation(task(THREE, Outcome.MEAN), index).readings())
                .containsExactly(1, 2, 3, 4, 5, 6);
        Computation any = new JoinedComputation(List.of());
        assertThat(Computation.readings(List.of(any, formula.computation(task(THREE, Outcome.MEAN), index))))
                .isEmpty();
        assertThat(index.readings()).hasSize(7);
    }
}
