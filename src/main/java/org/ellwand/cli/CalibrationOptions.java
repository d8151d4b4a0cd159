package org.ellwand.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.ellwand.amount.Unit;
import org.ellwand.input.InputException;
import org.ellwand.sound.Calibration;
import org.ellwand.sound.RecordedPart;
import org.ellwand.sound.RecordingNote;
import org.ellwand.sound.RecordingNotes;
import org.ellwand.sound.WavFile;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The recorded calibrator that a recording's levels are held against. */
final class CalibrationOptions {
    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec = CommandSpec.create();

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
            names = "--calibration-channel",
            paramLabel = "N",
            description = "Which one of the calibration (default: 1 of a file with one, else that of --channel).")
    private Optional<Integer> calibrationChannel = Optional.empty();

    /**
     * What was measured of the calibrator.
     *
     * @param notes what is wrong with it
     */
    record Tone(Path path, Calibration calibration, List<RecordingNote> notes) {}

    /** Measures it in its own channel, else in that of the recording. */
    Tone tone(Optional<Integer> channel) throws IOException, InputException {
        double levelDb = AmountOption.in(spec, "--calibrated-at", calibratedAt, Unit.DB_SPL, "94 dB SPL");
        double toneHz = AmountOption.in(spec, "--calibrator-frequency", calibratorFrequency, Unit.HZ, "1 kHz");
        WavFile file = NamedRecording.read(calibration);
        RecordedPart part = RecordedPart.of(
                file,
                calibrationChannel.or(() -> file.channels() == 1 ? Optional.of(1) : channel),
                Optional.empty(),
                Optional.empty());
        Calibration measured = Calibration.of(file, part.channel(), levelDb);
        return new Tone(calibration, measured, RecordingNotes.of(measured, toneHz, file.format()));
    }
}
