package org.ellwand.quantity;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Resolution;
import org.ellwand.acoustics.Spectrum;
import org.ellwand.acoustics.Weighting;
import org.ellwand.amount.Interval;
import org.ellwand.amount.Unit;
import org.ellwand.audit.Bench;
import org.ellwand.claim.Rule;
import org.ellwand.input.Place;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Reading;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.Stimulus;
import org.ellwand.pairing.Cell;
import org.ellwand.pairing.Insertion;

/** Cells of invented readings, for numbers that are worked by hand. */
final class InventedCells {
    static final Resolution OCTAVE = Resolution.OCTAVE;
    static final Resolution THIRD = Resolution.THIRD_OCTAVE;

    private static final Session SESSION = session();

    private InventedCells() {}

    /** Pink noise of 62, 78 and 94 dB SPL, and quiet. */
    private static Session session() {
        Session made = new Bench("yard", OCTAVE).session();
        Map<String, Stimulus> stimuli = new LinkedHashMap<>(made.stimuli());
        stimuli.put("hush", new Stimulus("hush", Stimulus.QUIET, List.of(), Optional.empty()));
        return new Session(
                made.id(),
                made.file(),
                made.measured(),
                made.rig(),
                made.place(),
                made.resolution(),
                made.levelsIn(),
                stimuli,
                made.openEarScaled(),
                made.settingsSwitchedInPlace(),
                made.declaredConditions(),
                made.uncertainty(),
                made.readings(),
                made.traces(),
                made.harmonics(),
                made.figures(),
                made.dataFiles(),
                made.chain());
    }

    /** Levels in dB at consecutive bands from a nominal frequency. */
    static CurveReading reading(Resolution resolution, double firstHz, double... levelsDb) {
        int first = Band.nearest(resolution, firstHz).index();
        List<Band> bands = new ArrayList<>();
        for (int i = 0; i < levelsDb.length; i++) {
            bands.add(new Band(resolution, first + i));
        }
        return new CurveReading(
                Conditions.of(Map.of("session", "yard", "device", "Skerry")),
                Reading.Values.LEVELS,
                Spectrum.measured(resolution, bands, levelsDb),
                new Place("made.csv", 2, 1));
    }

    /** One insertion of some takes. */
    static Insertion insertion(Reading... takes) {
        return new Insertion("insertion of " + takes.length + " takes", Optional.empty(), List.of(takes));
    }

    /** A cell with an open ear that is to be shifted. */
    static Cell cell(List<Insertion> insertions, List<Reading> openEar, List<Reading> field, double shiftDb) {
        return cell(Reading.Values.LEVELS, insertions, openEar, field, shiftDb);
    }

    /** A cell of one insertion and one take, and one take of the open ear. */
    static Cell cell(Reading inPlace, Reading openEar) {
        return cell(List.of(insertion(inPlace)), List.of(openEar), List.of(), 0);
    }

    static Cell cell(
            Reading.Values values,
            List<Insertion> insertions,
            List<Reading> openEar,
            List<Reading> field,
            double shiftDb) {
        Conditions conditions = Conditions.of(Map.of("session", "yard", "device", "Skerry"));
        return new Cell(SESSION, conditions, insertions, values, openEar, field, shiftDb, List.of());
    }

    /** The bands whose nominal frequencies lie in a range. */
    static List<Band> bands(Resolution resolution, double lowerHz, double upperHz) {
        return Bandwidth.bands(Interval.of(lowerHz, upperHz, Unit.HZ), resolution);
    }

    static Formula.Task task(List<Band> bands, Outcome outcome) {
        return new Formula.Task(bands.get(0).resolution(), bands, outcome, Weighting.Z);
    }

    /** What a formula makes of the readings as they are. */
    static double[] numbers(Formula formula, Formula.Task task) {
        ReadingIndex index = new ReadingIndex();
        Computation computation = formula.computation(task, index);
        double[] numbers = new double[computation.size()];
        computation.compute(index.levelsDb(), numbers);
        return numbers;
    }

    static Rule rule(String stated) {
        return Bench.product(stated).claims().get(0).rule().orElseThrow();
    }
}
