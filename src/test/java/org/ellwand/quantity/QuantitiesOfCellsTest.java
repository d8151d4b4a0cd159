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
import static org.ellwand.quantity.InventedCells.rule;
import static org.ellwand.quantity.InventedCells.task;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.ReferenceNoise;
import org.ellwand.acoustics.SingleNumberRating;
import org.ellwand.amount.Unit;
import org.ellwand.claim.Rule;
import org.ellwand.input.Place;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.HarmonicReading;
import org.ellwand.measurement.Reading;
import org.ellwand.pairing.Cell;
import org.ellwand.pairing.Joined;
import org.ellwand.words.Remark;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What each quantity makes of invented cells: which curves it is the sum of, what it cannot use, what it says beside. */
class QuantitiesOfCellsTest {
    private static final String ONSET =
            "quantity: onset level, statistic: every band, drop: 3 dB, bands: 1 kHz to 2 kHz,"
                    + " limit: at least 60 dB SPL";
    private static final String CRITERION =
            "quantity: criterion level, criterion: 73 dB(A), bands: 1 kHz, referred to: eardrum, limit: at most 90 dB SPL";
    private static final List<Band> ONE = bands(OCTAVE, 1000, 1000);

    private static SpectralQuantity quantity(Rule rule) {
        return (SpectralQuantity) Quantities.named(rule.quantity());
    }

    private static Cell under(String stimulus, Reading inPlace, Reading openEar) {
        Cell plain = cell(inPlace, openEar);
        return new Cell(
                plain.session(),
                plain.conditions().with("stimulus", stimulus),
                plain.insertions(),
                plain.values(),
                plain.openEar(),
                plain.field(),
                plain.openEarShiftDb(),
                plain.notes());
    }

    private static Joined joined(Cell... cells) {
        return new Joined(Conditions.of(Map.of("session", "yard")), List.of(cells));
    }

    /** At 1 and 2 kHz 5 and 0 dB under 62, 5 and −1 dB under 78, −1 and −9 dB under 94 dB SPL; loudest first. */
    private static Joined series() {
        return joined(
                under("n94", reading(OCTAVE, 1000, 91, 83), reading(OCTAVE, 1000, 92, 92)),
                under("n62", reading(OCTAVE, 1000, 65, 60), reading(OCTAVE, 1000, 60, 60)),
                under("n78", reading(OCTAVE, 1000, 81, 75), reading(OCTAVE, 1000, 76, 76)),
                under("unheard of", reading(OCTAVE, 1000, 0, 0), reading(OCTAVE, 1000, 0, 0)));
    }

    /** 5 dB fall to 2 dB at 78 + 16 · 3/6 = 86 dB; 0 dB fall to −3 dB at 78 + 16 · 2/8 = 82 dB. */
    @Test
    void aSeriesIsPutInOrderAndEveryBandHasAnOnset() {
        Rule rule = rule(ONSET);
        assertThat(LevelSeries.of(series(), Unit.DB_SPL).level()).containsExactly(62.0, 78.0, 94.0);
        Formula formula = quantity(rule).formula(series(), rule);
        assertThat(numbers(formula, task(bands(OCTAVE, 1000, 2000), Outcome.CURVE)))
                .containsExactly(86, 82);
        Computation computation =
                formula.computation(task(bands(OCTAVE, 1000, 2000), Outcome.CURVE), new ReadingIndex());
        assertThat(computation.seriesLevelsDb()).containsExactly(62.0, 78.0, 94.0);
        assertThat(computation.reach()).isEqualTo(new Reach(62, 94));
        assertThat(computation.readings()).containsExactly(0, 1, 2, 3, 4, 5);
        assertThat(LevelSeries.ofBand(new double[] {1, 2, 3, 4, 5, 6}, 1, 2)).containsExactly(2, 4, 6);
    }

    @Test
    void aSeriesNeedsItsLevels() {
        Rule onset = rule(ONSET);
        Rule criterion = rule(CRITERION);
        assertThat(quantity(onset).unusable(series(), onset)).isEmpty();
        Cell soft = series().cells().get(1);
        Cell loud = series().cells().get(0);
        Optional<Remark> two = quantity(onset).unusable(joined(soft, loud, soft), onset);
        assertThat(two.orElseThrow().key()).isEqualTo("short-series");
        assertThat(two.orElseThrow().figures()).containsEntry("levels", 2L).containsEntry("least", 3);
        assertThat(quantity(criterion).unusable(joined(soft, loud), criterion)).isEmpty();
        assertThat(quantity(criterion)
                        .unusable(joined(soft), criterion)
                        .orElseThrow()
                        .key())
                .isEqualTo("short-series");
        Remark levels = quantity(onset).notes(series().cells(), onset).get(0);
        assertThat(levels.figures()).containsEntry("levels", 3L);
    }

    /** 73 dB(A) are reached under 62 dB SPL already, exactly there, half way to 78, and never. */
    @ParameterizedTest
    @CsvSource({"74, 90, 99, -Infinity", "73, 90, 99, 62", "65, 81, 99, 70", "65, 70, 72, Infinity"})
    void whereACriterionIsReached(double first, double second, double third, double expected) {
        Rule rule = rule(CRITERION);
        Computation computation =
                quantity(rule).formula(series(), rule).computation(task(ONE, Outcome.OVERALL), new ReadingIndex());
        double[] out = new double[1];
        computation.outer(new double[] {first, second, third}, out);
        assertThat(out).containsExactly(expected);
        assertThat(computation.seriesLevelsDb()).containsExactly(62.0, 78.0, 94.0);
    }

    private static Cell of(Reading.Values values, double levelDb) {
        return cell(values, List.of(insertion(reading(OCTAVE, 1000, levelDb))), List.of(), List.of(), 0);
    }

    /** Readings that are differences already keep or turn their sign. */
    @ParameterizedTest
    @CsvSource({
        "attenuation, ATTENUATION, 12",
        "attenuation, SUBJECT_ATTENUATION, 12",
        "attenuation, INSERTION_GAIN, -12",
        "insertion gain, ATTENUATION, -12",
        "insertion gain, INSERTION_GAIN, 12"
    })
    void differencesAsReadings(String name, Reading.Values values, double expected) {
        Rule rule = rule("quantity: " + name + ", level: 94 dB SPL, bands: 1 kHz, statistic: mean, limit: 0 dB ± 3 dB");
        Formula formula = quantity(rule).formula(joined(of(values, 12)), rule);
        assertThat(numbers(formula, task(ONE, Outcome.MEAN))).containsExactly(expected);
    }

    @Test
    void anOnsetLooksAtGains() {
        SpectralQuantity onset = quantity(rule(ONSET));
        assertThat(onset.partsOfDifferences(true)).containsExactly(CurvePart.inPlace(-1));
        assertThat(onset.partsOfDifferences(false)).containsExactly(CurvePart.inPlace(1));
    }

    private static Optional<String> unusable(String stated, Cell cell) {
        Rule rule = rule(stated);
        return quantity(rule).unusable(joined(cell), rule).map(Remark::key);
    }

    /** Differences are no energies that could be summed, over bands or to wider ones, and no levels at the ear. */
    @Test
    void whatDifferencesDoNotServe() {
        String attenuation = "quantity: attenuation, level: 94 dB SPL, bands: 1 kHz, limit: at least 3 dB, statistic: ";
        Cell differences = of(Reading.Values.ATTENUATION, 12);
        Cell levels = of(Reading.Values.LEVELS, 12);
        Cell thirds =
                cell(Reading.Values.ATTENUATION, List.of(insertion(reading(THIRD, 1000, 12))), List.of(), List.of(), 0);
        assertThat(unusable(attenuation + "mean", differences)).isEmpty();
        assertThat(unusable(attenuation + "overall, weighting: A", differences)).contains("differences-only");
        assertThat(unusable(attenuation + "overall, weighting: A", levels)).isEmpty();
        assertThat(unusable(attenuation + "mean, resolution: octave", thirds)).contains("differences-only");
        assertThat(unusable(attenuation + "mean, resolution: third-octave", thirds))
                .isEmpty();
        assertThat(unusable(attenuation + "mean, resolution: octave", differences))
                .isEmpty();
        String output =
                "quantity: output level, level: 94 dB SPL, bands: 1 kHz, statistic: mean, limit: at most 90 dB SPL,"
                        + " referred to: ";
        assertThat(unusable(output + "eardrum", differences)).contains("differences-only");
        assertThat(unusable(output + "eardrum", levels)).isEmpty();
        assertThat(unusable(output + "field", levels)).contains("no-field-reading");
        Reading one = reading(OCTAVE, 1000, 60);
        assertThat(unusable(output + "field", cell(List.of(insertion(one)), List.of(one), List.of(one), 0)))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "attenuation, level: 94 dB SPL, statistic: mean, bands: 1 kHz, limit: at least 3 dB|true",
                "output level, level: 94 dB SPL, statistic: mean, bands: 1 kHz, referred to: eardrum, limit: at most 90"
                        + " dB SPL|false",
                "output level, level: 94 dB SPL, statistic: mean, bands: 1 kHz, referred to: field, limit: at most 90"
                        + " dB SPL|true"
            })
    void whoNeedsTheOpenEar(String stated, boolean expected) {
        Rule rule = rule("quantity: " + stated);
        assertThat(quantity(rule).usesOpenEar(rule)).isEqualTo(expected);
    }

    /** 40 dB(A) in quiet at 1 kHz, less a gain of 5 dB under 62 dB SPL: 35 dB(A) at the open ear. */
    @Test
    void aNoiseIsReferredToTheOpenEarByTheGain() {
        Rule rule = rule("quantity: equivalent input noise, bands: 1 kHz, limit: at most 40 dB(A)");
        Cell quiet = under("hush", reading(OCTAVE, 1000, 40), reading(OCTAVE, 1000, 20));
        Cell soft = under("n62", reading(OCTAVE, 1000, 65), reading(OCTAVE, 1000, 60));
        Formula formula = quantity(rule).formula(joined(quiet, soft), rule);
        assertThat(numbers(formula, task(ONE, Outcome.OVERALL))[0]).isCloseTo(35, within(1e-12));
        List<Remark> notes = quantity(rule).notes(List.of(quiet, soft, soft), rule);
        assertThat(notes).extracting(Remark::key).containsExactly("referred-by-gain");
        assertThat(notes.get(0).figures()).containsEntry("stimulus", "n62");
    }

    /** 70 and 74 dB in place, 60 and 61 dB open, both relative to 1 kHz: 4 − 1 = 3 dB at 2 kHz. */
    @Test
    void aResponseAgainstTheOpenEar() {
        String response = "quantity: response, statistic: mean, bands: 2 kHz, reference: 1 kHz, limit: 0 dB ± 9 dB";
        Cell cell = cell(reading(OCTAVE, 1000, 70, 74), reading(OCTAVE, 1000, 60, 61));
        List<Band> two = bands(OCTAVE, 2000, 2000);
        Rule against = rule(response + ", target: open ear");
        assertThat(numbers(quantity(against).formula(joined(cell), against), task(two, Outcome.MEAN)))
                .containsExactly(3);
        Rule alone = rule(response);
        assertThat(numbers(quantity(alone).formula(joined(cell), alone), task(two, Outcome.MEAN)))
                .containsExactly(4);
    }

    /**
     * From 1 kHz, which is the middle of 500 Hz to 2 kHz: −10 dB from 0 dB between 2 and 4 kHz, 6 dB down at
     * 1995.26 · 10^(0.3 · 0.6) Hz; downwards 5 dB between 1 kHz and 500 Hz, 2 dB down at 1000 · 10^(−0.3 · 0.4) Hz.
     */
    @Test
    void aRangeSeenFromTheMiddleOfItsReference() {
        Cell cell = cell(reading(OCTAVE, 500, 60, 65, 65, 55, 40, 30), reading(OCTAVE, 500, 0));
        List<Band> all = bands(OCTAVE, 500, 16000);
        String upper = "quantity: upper limiting frequency, drop: 6 dB, bands: all, level: 94 dB SPL, reference: ";
        Rule one = rule(upper + "1 kHz, limit: at least 1 kHz");
        Formula formula = quantity(one).formula(joined(cell), one);
        assertThat(numbers(formula, task(all, Outcome.MEAN))[0])
                .isCloseTo(1.99526231 * Math.pow(10, 0.18), within(1e-6));
        Reach reach =
                formula.computation(task(all, Outcome.MEAN), new ReadingIndex()).reach();
        assertThat(reach.lowest()).isCloseTo(0.501187, within(1e-6));
        assertThat(reach.highest()).isCloseTo(15.848932, within(1e-6));
        // 50, 65 and 65 dB have the mean 60 dB: 54 dB are one of the fifteen from 55 to 40 dB. At 500 Hz nobody begins.
        Cell dull = cell(reading(OCTAVE, 500, 50, 65, 65, 55, 40, 30), reading(OCTAVE, 500, 0));
        Rule mean = rule(upper + "mean of 500 Hz to 2 kHz, limit: at least 1 kHz");
        assertThat(numbers(quantity(mean).formula(joined(dull), mean), task(all, Outcome.MEAN))[0])
                .isCloseTo(3.98107171 * Math.pow(10, 0.3 / 15), within(1e-6));
        Rule lower = rule("quantity: lower limiting frequency, drop: 2 dB, bands: all, level: 94 dB SPL,"
                + " reference: 1 kHz, limit: at most 1000 Hz");
        assertThat(numbers(quantity(lower).formula(joined(cell), lower), task(all, Outcome.MEAN))[0])
                .isCloseTo(1000 * Math.pow(10, -0.12), within(1e-6));
    }

    @Test
    void formsSayWhichWayAndWhatFor() {
        assertThat(LimitingFrequency.upper().form().definition()).startsWith("highest");
        assertThat(LimitingFrequency.lower().form().definition()).startsWith("lowest");
        assertThat(NoiseExposure.dose().form().unitText()).isEqualTo("%");
        assertThat(NoiseExposure.duration().form().unitText()).isEqualTo("h");
        assertThat(NoiseExposure.dose().form().definition()).endsWith("times 100");
        assertThat(NoiseExposure.duration().form().definition()).startsWith("duration that the exposure rule allows");
        assertThat(Keys.ofNumbers()).contains("setting", "between", "ears").doesNotContain("resolution", "weighting");
    }

    /** At the eardrum the rules of workplaces do not hold, and the numbers say so. */
    @Test
    void anExposureSaysWhereItWasTaken() {
        String dose = "quantity: noise dose, exposure: 29 CFR 1910.95, duration: 8 h, bands: 1 kHz, level: 94 dB SPL,"
                + " limit: at most 50 %, referred to: ";
        assertThat(notes(dose + "eardrum")).containsExactly("exposure-at-eardrum");
        assertThat(notes(dose + "field")).containsExactly("exposure-arithmetic");
    }

    private static List<String> notes(String stated) {
        Rule rule = rule(stated);
        return quantity(rule).notes(List.of(), rule).stream().map(Remark::key).toList();
    }

    private static HarmonicReading harmonics(Map<Integer, Double> levelsDb) {
        return HarmonicReading.of(
                Conditions.of(Map.of("session", "yard")), Optional.empty(), levelsDb, new Place("made.csv", 2, 1));
    }

    /**
     * Takes of 40 and 44 dB of the second harmonic under 90 dB are one insertion of −48 dB, the other insertion is −44 dB:
     * −46 dB, 100 · 10^(−46/20) %.
     */
    @Test
    void takesOfHarmonicsAreAveragedBeforeInsertions() {
        Rule rule = rule("quantity: harmonic distortion, harmonics: 2 to 5, limit: at most 3 %");
        CellQuantity distortion = (CellQuantity) Quantities.named("harmonic distortion");
        Cell cell = cell(
                List.of(
                        insertion(harmonics(Map.of(1, 90.0, 2, 40.0)), harmonics(Map.of(1, 90.0, 2, 44.0))),
                        insertion(harmonics(Map.of(1, 90.0, 2, 46.0, 4, 10.0)))),
                List.of(),
                List.of(),
                0);
        Formula formula = distortion.formula(joined(cell), rule);
        assertThat(numbers(formula, task(ONE, Outcome.MEAN))[0])
                .isCloseTo(100 * Math.pow(10, -46 / 20.0), within(1e-12));
        assertThat(formula.computation(task(ONE, Outcome.MEAN), new ReadingIndex())
                        .isLinear())
                .isFalse();
        assertThat(distortion.unusable(joined(cell), rule)).isEmpty();
        assertThat(distortion.lacking(cell, rule).orElseThrow().figures()).containsEntry("orders", "3, 4, 5");
    }

    @Test
    void withoutTheFundamentalThereIsNoDistortion() {
        Rule rule = rule("quantity: harmonic distortion, harmonics: 2 to 3, limit: at most 3 %");
        CellQuantity distortion = (CellQuantity) Quantities.named("harmonic distortion");
        Cell cell = cell(List.of(insertion(harmonics(Map.of(2, 40.0, 3, 40.0)))), List.of(), List.of(), 0);
        assertThat(distortion.unusable(joined(cell), rule).map(Remark::key)).contains("no-harmonics");
    }

    /**
     * Two subjects, one 3 dB above and one 3 dB below 20 dB at low tones, and the other way at high ones. By the edition of 1994
     * every band has a deviation of 3 · √2 dB, so that the rating of 20 dB falls by as much; by that of 2018 it is the mean of
     * both subjects' ratings less their deviation.
     */
    @Test
    void ratingsOfAPanelByBothEditions() {
        SortedMap<String, SortedMap<Integer, Double>> subjects = new TreeMap<>();
        subjects.put("a", tilted(3));
        subjects.put("b", tilted(-3));
        Panel panel = new Panel(subjects, 2);
        SingleNumberRating snr = SingleNumberRating.SNR;
        Rating rating = (Rating) Quantities.named("rating");
        String stated = "quantity: rating, of: SNR, performance: 84 %, limit: at least 20 dB, method: ";
        assertThat(rating.ofDb(rule(stated + "\"ISO 4869-2:1994\""), panel))
                .isCloseTo(snr.ofDb(tilted(0)) - 3 * Math.sqrt(2), within(1e-9));
        double one = snr.ofDb(above63(tilted(3)));
        double other = snr.ofDb(above63(tilted(-3)));
        assertThat(Math.abs(one - other)).isGreaterThan(0.5);
        assertThat(rating.ofDb(rule(stated + "\"ISO 4869-2:2018\""), panel))
                .isCloseTo((one + other) / 2 - Math.abs(one - other) / Math.sqrt(2), within(1e-9));
    }

    private static SortedMap<Integer, Double> tilted(double db) {
        SortedMap<Integer, Double> levels = new TreeMap<>();
        for (int hz : new ArrayList<>(ReferenceNoise.OCTAVES_HZ)) {
            levels.put(hz, 20 + (hz < 1000 ? db : -db));
        }
        return levels;
    }

    private static SortedMap<Integer, Double> above63(SortedMap<Integer, Double> levels) {
        return levels.tailMap(64);
    }
}
