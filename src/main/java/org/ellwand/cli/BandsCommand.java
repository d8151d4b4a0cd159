package org.ellwand.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.ellwand.acoustics.Resolution;
import org.ellwand.acoustics.Weighting;
import org.ellwand.amount.Unit;
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
import org.ellwand.sound.WavFile;
import picocli.CommandLine.Command;
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
            "  ellwand bands ear.wav --calibration cal.wav --calibrated-at \"94 dB SPL\" --out ear.csv --trace ear-trace.csv",
            "Without --out the sheet goes to standard output. A session names it under 'data' with 'layout: rows'."
        })
final class BandsCommand implements Callable<Integer> {
    private final Progress progress;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "RECORDING", description = "A WAV file, 44.1 to 192 kHz, 16, 24 or 32 bits or floats.")
    private Path recording = Path.of("");

    @Option(
            names = "--calibration",
            required = true,
            paramLabel = "WAV",
            description = "The calibrator, recorded with the same gain.")
    private Path calibration = Path.of("");

    @Option(
            names = "--calibrated-at",
            required = true,
            paramLabel = "LEVEL",
            description = "Its level, as '94 dB SPL'.")
    private String calibratedAt = "";

    @Option(
            names = "--calibrator-frequency",
            paramLabel = "HZ",
            defaultValue = "1 kHz",
            description = "Its frequency (default: ${DEFAULT-VALUE}).")
    private String calibratorFrequency = "1 kHz";

    @Option(
            names = "--channel",
            paramLabel = "N",
            description = "Which channel, from 1; needed where there are several.")
    private Optional<Integer> channel = Optional.empty();

    @Option(
            names = "--calibration-channel",
            paramLabel = "N",
            description = "Which one of the calibration (default: 1 of a file with one, else that of --channel).")
    private Optional<Integer> calibrationChannel = Optional.empty();

    @Option(names = "--from", paramLabel = "TIME", description = "Where the part to measure begins, as '2.5 s'.")
    private Optional<String> from = Optional.empty();

    @Option(names = "--to", paramLabel = "TIME", description = "Where it ends.")
    private Optional<String> to = Optional.empty();

    @Option(
            names = "--resolution",
            paramLabel = "WIDTH",
            defaultValue = "third-octave",
            description = "octave, third-octave, sixth-octave or twelfth-octave (default: ${DEFAULT-VALUE}).")
    private String resolution = "third-octave";

    @Option(
            names = "--weighting",
            paramLabel = "A|C|Z",
            defaultValue = "A",
            description = "Frequency weighting of the trace (default: ${DEFAULT-VALUE}).")
    private Weighting weighting = Weighting.A;

    @Option(
            names = "--time-constant",
            paramLabel = "TIME",
            defaultValue = "fast",
            description = "fast (125 ms), slow (1 s) or a time, as '5 ms' (default: ${DEFAULT-VALUE}).")
    private String timeConstant = "fast";

    @Option(
            names = "--every",
            paramLabel = "TIME",
            defaultValue = "10 ms",
            description = "How often the trace has a level (default: ${DEFAULT-VALUE}).")
    private String every = "10 ms";

    @Option(names = "--out", paramLabel = "CSV", description = "A new file for the curve sheet.")
    private Optional<Path> out = Optional.empty();

    @Option(names = "--trace", paramLabel = "CSV", description = "A new file for the level-time trace.")
    private Optional<Path> trace = Optional.empty();

    @Option(
            names = "--times-from",
            paramLabel = "WHAT",
            defaultValue = "file",
            description = "What --from and --to count from: file, or 'sync mark' (default: ${DEFAULT-VALUE}).")
    private String timesFrom = "file";

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
        SoundAnalysis analysis = analysis();
        double levelDb = AmountOption.in(spec, "--calibrated-at", calibratedAt, Unit.DB_SPL, "94 dB SPL");
        double toneHz = AmountOption.in(spec, "--calibrator-frequency", calibratorFrequency, Unit.HZ, "1 kHz");
        RecordedPart part = part(recording, channel);
        WavFile tone = WavFile.read(calibration, calibration.toString());
        RecordedPart tonePart = RecordedPart.of(
                tone,
                calibrationChannel.or(() -> tone.channels() == 1 ? Optional.of(1) : channel),
                Optional.empty(),
                Optional.empty());
        Calibration calibrated = Calibration.of(tone, tonePart.channel(), levelDb);
        SoundLevels levels = measured(part, analysis, calibrated.fullScaleDb());
        say(part, levels, calibrated);
        notes(RecordingNotes.of(calibrated, toneHz, tone.format()), calibration);
        notes(RecordingNotes.of(levels.check(), part.file().format()), recording);
        notes(RecordingNotes.of(levels, analysis, part.file().rateHz()), recording);
        if (stimulus.isPresent()) {
            RecordedPart played = part(stimulus.get(), Optional.of(1));
            StimulusComparison.of(played, part, transfer, spec.commandLine().getErr());
        }
        spec.commandLine().getErr().flush();
        return ExitCode.DONE;
    }

    /** The part between --from and --to. */
    private RecordedPart part(Path path, Optional<Integer> number) throws IOException, InputException {
        WavFile file = WavFile.read(path, path.toString());
        Optional<Double> fromS = time("--from", from);
        Optional<Double> toS = time("--to", to);
        if (timesFrom.equals("file")) {
            return RecordedPart.of(file, number, fromS, toS);
        }
        if (!timesFrom.equals("sync mark")) {
            throw new ParameterException(
                    spec.commandLine(), "--times-from takes file or 'sync mark', not '" + timesFrom + "'");
        }
        double zeroS = StimulusComparison.markS(file, number);
        return RecordedPart.of(file, number, Optional.of(zeroS + fromS.orElse(0.0)), toS.map(s -> s + zeroS));
    }

    private void checkStimulus() {
        if (stimulus.isPresent() && timesFrom.equals("file")) {
            throw new ParameterException(
                    spec.commandLine(), "--stimulus needs --times-from 'sync mark': both are compared from there on");
        }
        if (transfer.isPresent() && stimulus.isEmpty()) {
            throw new ParameterException(spec.commandLine(), "--transfer needs --stimulus");
        }
    }

    private SoundAnalysis analysis() {
        Resolution width = Resolution.named(resolution)
                .orElseThrow(() -> new ParameterException(
                        spec.commandLine(),
                        "--resolution takes octave, third-octave, sixth-octave or twelfth-octave, not '" + resolution
                                + "'"));
        SoundAnalysis plain = SoundAnalysis.of(width);
        double everyS = positive("--every", every, 0.0001, 60);
        double constantS = switch (timeConstant) {
            case "fast" -> SoundAnalysis.FAST_S;
            case "slow" -> SoundAnalysis.SLOW_S;
            default -> positive("--time-constant", timeConstant, 0.0001, 60);
        };
        return new SoundAnalysis(width, plain.lowestHz(), plain.highestHz(), constantS, everyS, weighting);
    }

    private double positive(String option, String text, double least, double most) {
        double seconds = AmountOption.in(spec, option, text, Unit.SECOND, "10 ms");
        if (!(seconds >= least && seconds <= most)) {
            throw new ParameterException(
                    spec.commandLine(), option + " takes a time from 0.1 ms to 60 s, not '" + text + "'");
        }
        return seconds;
    }

    private Optional<Double> time(String option, Optional<String> text) {
        return text.map(t -> AmountOption.in(spec, option, t, Unit.SECOND, "2.5 s"));
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
                rows.write(SoundSheets.traceHeader(weighting));
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
        BandsSummary.lines(part, levels, calibrated, timeConstant).forEach(err::println);
        out.ifPresent(file -> err.println("curve sheet written to " + file));
        trace.ifPresent(file -> err.println("trace written to " + file));
    }

    private void notes(List<RecordingNote> notes, Path file) {
        notes.forEach(note ->
                spec.commandLine().getErr().println(note.of(file.toString()).text()));
    }
}
