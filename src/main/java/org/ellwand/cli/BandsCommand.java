package org.ellwand.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.ellwand.input.InputException;
import org.ellwand.sound.Calibration;
import org.ellwand.sound.LevelListener;
import org.ellwand.sound.RecordedPart;
import org.ellwand.sound.RecordingNote;
import org.ellwand.sound.RecordingNotes;
import org.ellwand.sound.SoundAnalysis;
import org.ellwand.sound.SoundLevels;
import org.ellwand.sound.SoundMeter;
import org.ellwand.sound.SoundSheets;
import org.ellwand.sound.Transfer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Measures a recording: band levels as a curve sheet, a level-time trace, weighted levels, and what is wrong with it. */
@Command(
        name = "bands",
        description = "Measures a recording: band levels as a curve sheet, and a level-time trace.",
        footer = {
            "",
            "Example: third-octave levels of ear.wav, with a calibrator recorded in cal.wav, and the level every 10 ms:",
            "  ellwand bands ear.wav --calibration cal.wav --calibrated-at \"94 dB SPL\" \\",
            "    --out ear.csv --trace ear-trace.csv",
            "Without --out the sheet goes to standard output. A session names it under 'data' with 'layout: rows'."
        })
final class BandsCommand implements Callable<Integer> {
    private final Progress progress;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "RECORDING", description = "A WAV file, 44.1 to 192 kHz, 16, 24 or 32 bits or floats.")
    private Path recording = Path.of("");

    @Mixin
    private CalibrationOptions calibration = new CalibrationOptions();

    @Mixin
    private PartOptions parts = new PartOptions();

    @Mixin
    private AnalysisOptions analyses = new AnalysisOptions();

    @Option(names = "--out", paramLabel = "CSV", description = "A new file for the curve sheet.")
    private Optional<Path> out = Optional.empty();

    @Option(names = "--trace", paramLabel = "CSV", description = "A new file for the level-time trace.")
    private Optional<Path> trace = Optional.empty();

    @Option(
            names = "--stimulus",
            paramLabel = "WAV",
            description = "What was played, with --times-from 'sync mark': says how much of the recording follows it.")
    private Optional<Path> stimulus = Optional.empty();

    @Option(names = "--transfer", paramLabel = "CSV", description = "A new file for gain and coherence re --stimulus.")
    private Optional<Path> transfer = Optional.empty();

    BandsCommand(Progress progress) {
        this.progress = progress;
    }

    @Override
    public Integer call() throws Exception {
        checkStimulus();
        checkTrace();
        checkFiles();
        SoundAnalysis analysis = analyses.analysis();
        CalibrationOptions.Tone tone = calibration.tone(parts.channel());
        RecordedPart part = parts.of(recording, parts.channel());
        Calibration calibrated = tone.calibration();
        // What cannot be compared is refused before anything is written.
        Optional<RecordedPart> played =
                stimulus.isPresent() ? Optional.of(parts.of(stimulus.get(), Optional.of(1))) : Optional.empty();
        Optional<Transfer> compared =
                played.isPresent() ? Optional.of(Transfer.of(played.get(), part)) : Optional.empty();
        SoundLevels levels = measured(part, analysis, calibrated.fullScaleDb());
        say(part, levels, calibrated);
        notes(tone.notes(), tone.path());
        notes(RecordingNotes.of(levels.check(), part.file().format()), recording);
        notes(RecordingNotes.of(levels, analysis, part.file().rateHz()), recording);
        if (played.isPresent() && compared.isPresent()) {
            StimulusComparison.say(
                    played.get(),
                    part,
                    compared.get(),
                    transfer,
                    spec.commandLine().getErr());
        }
        spec.commandLine().getErr().flush();
        return ExitCode.DONE;
    }

    private void checkStimulus() {
        if (stimulus.isPresent() && parts.countFromFile()) {
            throw new ParameterException(
                    spec.commandLine(), "--stimulus needs --times-from 'sync mark': both are compared from there on");
        }
        if (transfer.isPresent() && stimulus.isEmpty()) {
            throw new ParameterException(spec.commandLine(), "--transfer needs --stimulus");
        }
    }

    /** What says how a trace is made says nothing where none is. */
    private void checkTrace() {
        for (String option : List.of("--every", "--weighting")) {
            if (trace.isEmpty() && spec.commandLine().getParseResult().hasMatchedOption(option)) {
                throw new ParameterException(
                        spec.commandLine(), option + " needs --trace: it is about the trace alone");
            }
        }
    }

    /** All files are new ones, and each is another. */
    private void checkFiles() throws InputException {
        Map<Path, String> named = new HashMap<>();
        checkFile("--out", out, named);
        checkFile("--trace", trace, named);
        checkFile("--transfer", transfer, named);
    }

    private void checkFile(String option, Optional<Path> file, Map<Path, String> named) throws InputException {
        if (file.isPresent()) {
            String before = named.putIfAbsent(NewFile.checked(file.get()), option);
            if (before != null) {
                throw new ParameterException(
                        spec.commandLine(), before + " and " + option + " name the same file; give each its own");
            }
        }
    }

    private SoundLevels measured(RecordedPart part, SoundAnalysis analysis, double fullScaleDb) throws Exception {
        if (trace.isEmpty()) {
            SoundLevels levels = measured(part, analysis, fullScaleDb, LevelListener.NONE);
            write(levels);
            return levels;
        }
        try (NewFile file = new NewFile(trace.get())) {
            SoundLevels levels;
            try (Writer rows = file.writer()) {
                rows.write(SoundSheets.traceHeader(analysis.traced()));
                levels = measured(part, analysis, fullScaleDb, (s, db) -> row(rows, s, db + fullScaleDb));
            }
            write(levels);
            file.keep();
            return levels;
        }
    }

    private static void row(Writer rows, double timeS, double levelDb) {
        try {
            rows.write(SoundSheets.traceRow(timeS, levelDb));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private SoundLevels measured(RecordedPart part, SoundAnalysis analysis, double fullScaleDb, LevelListener listener)
            throws Exception {
        return progress.during("measuring ...", () -> SoundMeter.measure(part, analysis, listener))
                .raised(fullScaleDb);
    }

    private void write(SoundLevels levels) throws InputException, IOException {
        String sheet = SoundSheets.curve(levels);
        if (out.isEmpty()) {
            spec.commandLine().getOut().print(sheet);
            spec.commandLine().getOut().flush();
            return;
        }
        try (NewFile file = new NewFile(out.get())) {
            file.write(sheet.getBytes(StandardCharsets.UTF_8));
            file.keep();
        }
    }

    private void say(RecordedPart part, SoundLevels levels, Calibration calibrated) {
        PrintWriter err = spec.commandLine().getErr();
        BandsSummary.lines(part, levels, calibrated, analyses.timeConstant()).forEach(err::println);
        out.ifPresent(file -> err.println("curve sheet written to " + file));
        trace.ifPresent(file -> err.println("trace written to " + file));
    }

    private void notes(List<RecordingNote> notes, Path file) {
        notes.forEach(note ->
                spec.commandLine().getErr().println(note.of(file.toString()).text()));
    }
}
