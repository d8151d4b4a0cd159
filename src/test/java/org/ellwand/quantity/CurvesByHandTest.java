package org.ellwand.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.ellwand.quantity.InventedCells.OCTAVE;
import static org.ellwand.quantity.InventedCells.THIRD;
import static org.ellwand.quantity.InventedCells.bands;
import static org.ellwand.quantity.InventedCells.cell;
import static org.ellwand.quantity.InventedCells.insertion;
import static org.ellwand.quantity.InventedCells.numbers;
import static org.ellwand.quantity.InventedCells.reading;
import static org.ellwand.quantity.InventedCells.task;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Spectrum;
import org.ellwand.acoustics.Weighting;
import org.ellwand.amount.Interval;
import org.ellwand.amount.Unit;
import org.ellwand.claim.Reference;
import org.ellwand.measurement.Reading;
import org.ellwand.pairing.Cell;
import org.junit.jupiter.api.Test;

/** Curves of a cell and the numbers made of them, worked by hand; levels are invented. */
class CurvesByHandTest {
    private static final List<CurvePart> ATTENUATION = List.of(CurvePart.openEar(1), CurvePart.inPlace(-1));
    private static final List<Band> THREE = bands(OCTAVE, 500, 2000);

    private static CellFormula attenuation(Cell cell) {
        return new CellFormula(cell, Optional.empty(), ATTENUATION);
    }

    private static CurvePart part(double inPlace, double openEar, double field, double quiet) {
        return new CurvePart(1, inPlace, openEar, field, quiet, Optional.empty(), Optional.empty());
    }

    /** 84 dB less 60, 58 and 50 dB: 24, 26 and 34 dB. */
    private static CellFormula three() {
        return attenuation(cell(reading(OCTAVE, 500, 60, 58, 50), reading(OCTAVE, 500, 84, 84, 84)));
    }

    /**
     * Takes of 60 and 62 dB are one insertion of 61 dB, beside another of 67 dB: 64 dB in place. The open ear's takes of 80 and
     * 82 dB are 81 dB, 3 dB more at the level that is meant: 84 − 64 = 20 dB.
     */
    @Test
    void takesAreAveragedBeforeInsertionsAndTheOpenEarIsShifted() {
        Cell cell = cell(
                List.of(
                        insertion(reading(OCTAVE, 1000, 60), reading(OCTAVE, 1000, 62)),
                        insertion(reading(OCTAVE, 1000, 67))),
                List.of(reading(OCTAVE, 1000, 80), reading(OCTAVE, 1000, 82)),
                List.of(),
                3);
        List<Band> band = bands(OCTAVE, 1000, 1000);
        assertThat(numbers(attenuation(cell), task(band, Outcome.CURVE))[0]).isCloseTo(20, within(1e-12));
        assertThat(CellFormula.meanLevels(cell, false, OCTAVE, band).get(0)).isCloseTo(64, within(1e-12));
        assertThat(CellFormula.meanLevels(cell, true, OCTAVE, band).get(0)).isCloseTo(84, within(1e-12));
        assertThat(CellFormula.meanLevels(cell, true, OCTAVE, bands(OCTAVE, 1000, 2000)))
                .isEmpty();
    }

    /** 24 − 26, 24 − 34 and 26 − 34 dB; least squares on octaves: (34 − 24) / 2 per ratio of 10^0.3. */
    @Test
    void outcomes() {
        assertThat(numbers(three(), task(THREE, Outcome.CURVE))).containsExactly(24, 26, 34);
        assertThat(numbers(three(), task(THREE, Outcome.PAIRS))).containsExactly(-2, -10, -8);
        assertThat(numbers(three(), task(THREE, Outcome.MEAN))[0]).isCloseTo(28, within(1e-12));
        double octave = Math.log(Math.pow(10, 0.3)) / Math.log(2);
        assertThat(numbers(three(), task(THREE, Outcome.SLOPE))[0]).isCloseTo(5 / octave, within(1e-9));
    }

    /** A of 500 Hz, 1 and 2 kHz is −3.2, 0 and 1.2 dB (IEC 61672-1, table of weightings, from memory). */
    @Test
    void anOverallLevelIsWeighted() {
        CellFormula level = new CellFormula(
                cell(reading(OCTAVE, 500, 60, 50, 40), reading(OCTAVE, 500, 80, 80, 80)),
                Optional.empty(),
                List.of(CurvePart.inPlace(1)));
        double expected = 10 * Math.log10(Math.pow(10, 5.68) + Math.pow(10, 5) + Math.pow(10, 4.12));
        Formula.Task weighted = new Formula.Task(OCTAVE, THREE, Outcome.OVERALL, Weighting.A);
        assertThat(numbers(level, weighted)[0]).isCloseTo(expected, within(0.06));
        double plain = 10 * Math.log10(Math.pow(10, 6) + Math.pow(10, 5) + Math.pow(10, 4));
        assertThat(numbers(level, task(THREE, Outcome.OVERALL))[0]).isCloseTo(plain, within(1e-12));
    }

    /** Overall: 10 lg 3 more than 84 dB, less the sum in place. */
    @Test
    void anOverallAttenuationIsADifferenceOfSums() {
        double inPlace = 10 * Math.log10(Math.pow(10, 6) + Math.pow(10, 5.8) + Math.pow(10, 5));
        assertThat(numbers(three(), task(THREE, Outcome.OVERALL))[0])
                .isCloseTo(84 + 10 * Math.log10(3) - inPlace, within(1e-12));
    }

    /** Three thirds of 60 dB make an octave of 60 + 10 lg 3 dB; two of them make none. */
    @Test
    void thirdsAreSummedToOctavesWhereAllThreeAreThere() {
        Reading inPlace = reading(THIRD, 800, 60, 60, 60, 60, 60);
        Reading openEar = reading(THIRD, 630, 90, 90, 90, 90);
        CellFormula formula = attenuation(cell(inPlace, openEar));
        List<Band> octave = bands(OCTAVE, 1000, 1000);
        assertThat(numbers(formula, task(octave, Outcome.CURVE))[0]).isCloseTo(30, within(1e-12));
        List<Double> levels = CellFormula.meanLevels(cell(inPlace, openEar), false, OCTAVE, octave);
        assertThat(levels.get(0)).isCloseTo(60 + 10 * Math.log10(3), within(1e-12));
        assertThat(formula.anyBands(OCTAVE)).isEqualTo(octave);
        assertThat(formula.having(bands(OCTAVE, 500, 2000), OCTAVE)).isEqualTo(octave);
        ReadingIndex index = new ReadingIndex();
        assertThat(formula.computation(task(octave, Outcome.CURVE), index).isLinear())
                .isFalse();
        assertThat(formula.computation(task(bands(THIRD, 800, 1250), Outcome.CURVE), index)
                        .isLinear())
                .isTrue();
    }

    /** Takes of one insertion, the second of which lacks the lowest band: the mean has it not, and 1 kHz at another place. */
    @Test
    void aBandIsThereWhereEveryReadingHasIt() {
        Cell cell = cell(
                List.of(insertion(reading(OCTAVE, 500, 60, 61, 62), reading(OCTAVE, 1000, 65, 66))),
                List.of(reading(OCTAVE, 500, 80, 80, 80)),
                List.of(),
                0);
        CellFormula formula = attenuation(cell);
        List<Band> two = bands(OCTAVE, 1000, 2000);
        assertThat(formula.anyBands(OCTAVE)).isEqualTo(THREE);
        assertThat(formula.having(THREE, OCTAVE)).isEqualTo(two);
        assertThat(numbers(formula, task(two, Outcome.CURVE))).containsExactly(17, 16);
    }

    @Test
    void everyPartThatEntersMustBeThere() {
        Reading one = reading(OCTAVE, 1000, 60);
        Reading two = reading(OCTAVE, 1000, 60, 60);
        List<Band> both = bands(OCTAVE, 1000, 2000);
        List<Band> lower = bands(OCTAVE, 1000, 1000);
        Cell quiet = cell(List.of(insertion(one)), List.of(), List.of(), 0);
        Cell all = cell(List.of(insertion(two)), List.of(two), List.of(two), 0);
        Cell shortOpenEar = cell(List.of(insertion(two)), List.of(one), List.of(two), 0);
        Cell shortField = cell(List.of(insertion(two)), List.of(two), List.of(one), 0);
        assertThat(having(all, Optional.empty(), part(1, -1, 1, 0), both)).isEqualTo(both);
        assertThat(having(shortOpenEar, Optional.empty(), part(1, -1, 1, 0), both))
                .isEqualTo(lower);
        assertThat(having(shortOpenEar, Optional.empty(), part(1, 0, 1, 0), both))
                .isEqualTo(both);
        assertThat(having(shortField, Optional.empty(), part(1, -1, 1, 0), both))
                .isEqualTo(lower);
        assertThat(having(all, Optional.of(quiet), part(1, 0, 0, 1), both)).isEqualTo(lower);
        assertThat(having(all, Optional.empty(), part(1, 0, 0, 1), both)).isEmpty();
        assertThat(having(quiet, Optional.empty(), part(0, 0, 0, 0), both)).isEqualTo(both);
    }

    private static List<Band> having(Cell cell, Optional<Cell> quiet, CurvePart part, List<Band> bands) {
        return new CellFormula(cell, quiet, List.of(part)).having(bands, OCTAVE);
    }

    /** 60 dB in quiet, less the gain of 75 − 70 dB: 55 dB at the open ear. */
    @Test
    void theQuietHasAPartOfItsOwn() {
        Cell quiet = cell(List.of(insertion(reading(OCTAVE, 1000, 60))), List.of(), List.of(), 0);
        Cell lowest = cell(reading(OCTAVE, 1000, 75), reading(OCTAVE, 1000, 70));
        CellFormula formula = new CellFormula(lowest, Optional.of(quiet), List.of(part(-1, 1, 0, 1)));
        assertThat(numbers(formula, task(bands(OCTAVE, 1000, 1000), Outcome.CURVE)))
                .containsExactly(55);
    }

    /**
     * Levels 70, 74, 72 dB and a target of 1, 2, 6 dB, both relative to their means over 500 Hz and 1 kHz, 72 and 1.5 dB:
     * −2 + 0.5, 2 − 0.5 and 0 − 4.5 dB.
     */
    @Test
    void aResponseAndItsTargetAreRelativeToTheSameReference() {
        Optional<Reference> reference = Optional.of(new Reference.MeanOf(Interval.of(500, 1000, Unit.HZ)));
        Spectrum target = Spectrum.of(OCTAVE, Map.of(500.0, 1.0, 1000.0, 2.0, 2000.0, 6.0));
        List<CurvePart> parts = List.of(
                new CurvePart(1, 1, 0, 0, 0, Optional.empty(), reference),
                new CurvePart(-1, 0, 0, 0, 0, Optional.of(target), reference));
        Cell cell = cell(reading(OCTAVE, 500, 70, 74, 72), reading(OCTAVE, 500, 0, 0, 0));
        CellFormula formula = new CellFormula(cell, Optional.empty(), parts);
        assertThat(numbers(formula, task(THREE, Outcome.CURVE))).containsExactly(-1.5, 1.5, -4.5);
        Spectrum shorter = Spectrum.of(OCTAVE, Map.of(500.0, 1.0, 1000.0, 2.0));
        CurvePart lacking = new CurvePart(-1, 0, 0, 0, 0, Optional.of(shorter), reference);
        assertThat(new CellFormula(cell, Optional.empty(), List.of(parts.get(0), lacking)).having(THREE, OCTAVE))
                .isEqualTo(bands(OCTAVE, 500, 1000));
    }

    /** Without the band it is relative to, a response has no band at all. */
    @Test
    void aReferenceThatIsMissingLeavesNothing() {
        CurvePart response = new CurvePart(1, 1, 0, 0, 0, Optional.empty(), Optional.of(new Reference.At(250)));
        Cell cell = cell(reading(OCTAVE, 500, 70, 74, 72), reading(OCTAVE, 500, 0, 0, 0));
        assertThat(new CellFormula(cell, Optional.empty(), List.of(response)).having(THREE, OCTAVE))
                .isEmpty();
        CurvePart there = new CurvePart(1, 1, 0, 0, 0, Optional.empty(), Optional.of(new Reference.At(500)));
        assertThat(new CellFormula(cell, Optional.empty(), List.of(there)).having(THREE, OCTAVE))
                .isEqualTo(THREE);
    }

    /** Bands that were looked up in one spectrum are looked up again in another. */
    @Test
    void placesAreThoseOfTheSpectrumThatIsAsked() {
        Places places = new Places();
        Spectrum three = reading(OCTAVE, 500, 1, 2, 3).spectrum();
        Spectrum two = reading(OCTAVE, 1000, 2, 3).spectrum();
        List<Band> band = bands(OCTAVE, 1000, 1000);
        assertThat(places.of(band, three)).isDeepEqualTo(new int[][] {{1}});
        assertThat(places.of(band, two)).isDeepEqualTo(new int[][] {{0}});
        assertThat(places.of(bands(OCTAVE, 2000, 2000), two)).isDeepEqualTo(new int[][] {{1}});
        assertThat(places.of(bands(OCTAVE, 250, 250), two)).isDeepEqualTo(new int[][] {{}});
    }
}
