package org.ellwand.measurement;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Resolution;
import org.ellwand.acoustics.Spectrum;
import org.ellwand.acoustics.Weighting;
import org.ellwand.amount.Amount;
import org.ellwand.amount.Dimension;
import org.ellwand.amount.Unit;
import org.ellwand.input.InputException;
import org.ellwand.sound.Calibration;
import org.ellwand.sound.RecordedHarmonics;
import org.ellwand.sound.RecordedSounds;
import org.ellwand.sound.RecordedSounds.RecordedTrace;
import org.ellwand.sound.RecordingNote;
import org.ellwand.sound.RecordingNotes;
import org.ellwand.sound.ResultCache;
import org.ellwand.sound.SampleFaults;
import org.ellwand.sound.SoundAnalysis;
import org.ellwand.sound.SoundLevels;
import org.ellwand.sound.Transfer;

/** Reads {@code recordings}: each entry is a reading that is measured from a WAV file. */
final class RecordingReader {
    /** Distance of the samples of a trace, as a share of its time constant. */
    private static final double DEFAULT_EVERY = 0.2;

    private static final double LONGEST_EVERY_S = 0.010;
    private static final double LOWEST_TONE_HZ = 20;
    private static final double HIGHEST_TONE_HZ = 10_000;

    private final ConditionFiller filler;
    private final Set<String> conditions;
    private final RecordingFiles files;
    private final RecordedSounds sounds = new RecordedSounds(ResultCache.ofUser());
    private final Optional<Resolution> resolution;
    private final Found problems;
    private final List<CurveReading> readings = new ArrayList<>();
    private final List<Trace> traces = new ArrayList<>();
    private final List<HarmonicReading> harmonics = new ArrayList<>();
    private final List<RecordedNote> notes = new ArrayList<>();
    private final List<String> dataFiles = new ArrayList<>();

    RecordingReader(
            ConditionFiller filler,
            Set<String> conditions,
            DataFiles files,
            Optional<Resolution> resolution,
            Found problems) {
        this.filler = filler;
        this.conditions = conditions;
        this.files = new RecordingFiles(files, sounds, problems);
        this.resolution = resolution;
        this.problems = problems;
    }

    List<CurveReading> readings() {
        return readings;
    }

    List<Trace> traces() {
        return traces;
    }

    List<HarmonicReading> harmonics() {
        return harmonics;
    }

    List<RecordedNote> notes() {
        return List.copyOf(notes);
    }

    List<String> dataFiles() {
        return dataFiles;
    }

    void read(String session, Keys keys) {
        List<Keys> entries = keys.mappings("recordings");
        if (entries.isEmpty()) {
            return;
        }
        keys.need(
                "calibrator",
                "recordings have a level only by a recorded calibrator,"
                        + " as 'calibrator: {file: cal.wav, level: 94 dB SPL}'");
        Optional<Calibration> calibration = keys.mapping("calibrator")
                .flatMap(c -> new CalibratorReader(session, files, sounds, notes).read(c, dataFiles));
        entries.forEach(entry -> read(entry, calibration));
    }

    private void read(Keys keys, Optional<Calibration> calibration) {
        int before = problems.size();
        RecordingKeys.Gives gives = keys.choice("gives", RecordingKeys.GIVES).orElse(RecordingKeys.Gives.BANDS);
        keys.onlyKnown("a recording", ConditionNames.after(RecordingKeys.ownKeys(gives), conditions));
        keys.need("file", "name the WAV file");
        Optional<RecordingFiles.Part> part = files.part(keys);
        part.ifPresent(p -> dataFiles.add(p.file()));
        Optional<Conditions> filled = filler.fill(Map.of(), keys.conditions(conditions), keys.place());
        filled.ifPresent(c -> filler.checkTake(c, keys.place()));
        if (problems.size() > before || part.isEmpty() || filled.isEmpty() || calibration.isEmpty()) {
            return;
        }
        double raise = calibration.get().fullScaleDb();
        files.attempt(keys.place(), () -> {
            switch (gives) {
                case BANDS -> bands(keys, part.get(), filled.get(), raise);
                case TRACE -> trace(keys, part.get(), filled.get(), raise);
                case HARMONICS -> harmonics(keys, part.get(), filled.get(), raise);
            }
            return true;
        });
    }

    private void bands(Keys keys, RecordingFiles.Part part, Conditions filled, double raise)
            throws IOException, InputException {
        if (filled.get(ConditionNames.STIMULUS).isEmpty()) {
            problems.add(keys.place(), "no stimulus: a level says nothing without the sound it was measured under");
            return;
        }
        if (resolution.isEmpty()) {
            return;
        }
        filler.once("reading", filled, keys.place());
        SoundAnalysis analysis = SoundAnalysis.of(resolution.get());
        SoundLevels levels = sounds.levels(part.samples(), analysis);
        Map<Band, Spectrum.Level> measured = new TreeMap<>();
        for (int i = 0; i < levels.bands().size(); i++) {
            double levelDb = levels.levelDb().get(i) + raise;
            if (levels.isLongEnough(levels.bands().get(i)) && Double.isFinite(levelDb)) {
                measured.put(levels.bands().get(i), Spectrum.Level.measured(levelDb));
            }
        }
        if (measured.isEmpty()) {
            problems.add(keys.place(), "the part is too short or too quiet for any band");
            return;
        }
        readings.add(new CurveReading(
                filled, Reading.Values.LEVELS, new Spectrum(resolution.get(), measured), keys.place()));
        note(part, filled, levels.check());
        add(
                part,
                filled,
                RecordingNotes.of(levels, analysis, part.samples().file().rateHz()));
        compare(keys, part, filled);
    }

    /** Holds a take against the stimulus that was played. */
    private void compare(Keys keys, RecordingFiles.Part part, Conditions filled) throws IOException, InputException {
        if (!keys.has(RecordingFiles.STIMULUS_FILE)) {
            return;
        }
        keys.need("times from", "a take is compared with its stimulus from the 'sync mark' on");
        Optional<RecordingFiles.Part> stimulus = files.stimulus(keys);
        if (stimulus.isPresent()) {
            dataFiles.add(stimulus.get().file());
            Transfer transfer = sounds.transfer(stimulus.get().samples(), part.samples());
            add(part, filled, transfer.note().map(List::of).orElse(List.of()));
        }
    }

    private void trace(Keys keys, RecordingFiles.Part part, Conditions filled, double raise)
            throws IOException, InputException {
        int before = problems.size();
        keys.need("time constant", "the time weighting, as 'fast', 'slow' or '5 ms': attack and release depend on it");
        Optional<Double> constantS =
                keys.text("time constant").flatMap(text -> RecordingKeys.timeConstantS(keys, text));
        Weighting weighting = keys.choice("weighting", RecordingKeys.WEIGHTINGS).orElse(Weighting.Z);
        Optional<Step> step = keys.mapping("step").flatMap(TraceReader::step);
        Unit unit = weighting.levelUnit();
        step.filter(s -> s.from().unit() != unit)
                .ifPresent(s -> problems.add(
                        keys.placeOf("step"), "is in another unit than the trace, which is in " + unit.symbol()));
        if (problems.size() > before || constantS.isEmpty()) {
            return;
        }
        filler.once(TraceReader.kind(step), filled, keys.place());
        double everyS = Math.min(LONGEST_EVERY_S, DEFAULT_EVERY * constantS.get());
        RecordedTrace recorded = sounds.trace(part.samples(), weighting, constantS.get(), everyS);
        step.ifPresent(s -> TraceReader.checkStepInside(s, recorded.timeS(), keys));
        if (recorded.timeS().size() < 2) {
            problems.add(keys.place(), "the part is too short or too quiet for a trace");
        }
        if (problems.size() == before) {
            List<Double> levels =
                    recorded.levelDb().stream().map(db -> db + raise).toList();
            traces.add(new Trace(filled, step, unit, recorded.timeS(), levels, keys.place(), constantS));
            note(part, filled, recorded.faults());
        }
    }

    private void harmonics(Keys keys, RecordingFiles.Part part, Conditions filled, double raise)
            throws IOException, InputException {
        keys.need("fundamental", "give the tone's frequency, as 'fundamental: 500 Hz'");
        Optional<Amount> fundamental =
                keys.amount("fundamental", unit -> unit.dimension() == Dimension.FREQUENCY, "a frequency in Hz or kHz");
        if (fundamental.isEmpty()) {
            return;
        }
        double hz = fundamental.get().in(Unit.HZ);
        if (!(hz >= LOWEST_TONE_HZ && hz <= HIGHEST_TONE_HZ)) {
            problems.add(keys.placeOf("fundamental"), "a tone has 20 Hz to 10 kHz");
            return;
        }
        filler.once("row of harmonics of " + fundamental.get().value(), filled, keys.place());
        RecordedHarmonics found = sounds.harmonics(part.samples(), hz);
        Map<Integer, Double> levels = new TreeMap<>();
        for (int order = 1; order <= found.levelDb().size(); order++) {
            levels.put(order, found.levelDb().get(order - 1) + raise);
        }
        harmonics.add(HarmonicReading.of(filled, fundamental, levels, keys.place()));
        note(part, filled, found.faults());
        add(part, filled, RecordingNotes.of(found, hz));
    }

    private void note(RecordingFiles.Part part, Conditions filled, SampleFaults faults) {
        add(part, filled, RecordingNotes.of(faults, part.samples().file().format()));
    }

    private void add(RecordingFiles.Part part, Conditions filled, List<RecordingNote> found) {
        found.forEach(note -> notes.add(new RecordedNote(filled, part.file(), note)));
    }
}
