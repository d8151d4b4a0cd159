package org.ellwand.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.ellwand.amount.Unit;
import org.ellwand.input.InputException;
import org.ellwand.sound.RecordedPart;
import org.ellwand.sound.WavFile;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Which channel and which part of a recording are measured. */
final class PartOptions {
    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec = CommandSpec.create();

    @Option(
            names = "--channel",
            paramLabel = "N",
            description = "Which channel, from 1; needed where there are several.")
    private Optional<Integer> channel = Optional.empty();

    @Option(names = "--from", paramLabel = "TIME", description = "Where the part to measure begins, as '2.5 s'.")
    private Optional<String> from = Optional.empty();

    @Option(names = "--to", paramLabel = "TIME", description = "Where it ends.")
    private Optional<String> to = Optional.empty();

    @Option(
            names = "--times-from",
            paramLabel = "WHAT",
            defaultValue = "file",
            description = "What --from and --to count from: file, or 'sync mark' (default: ${DEFAULT-VALUE}).")
    private String timesFrom = "file";

    Optional<Integer> channel() {
        return channel;
    }

    /** Whether times count from where the file begins. */
    boolean countFromFile() {
        return timesFrom.equals("file");
    }

    /** The part between --from and --to. */
    RecordedPart of(Path path, Optional<Integer> number) throws IOException, InputException {
        WavFile file = NamedRecording.read(path);
        Optional<Double> fromS = time("--from", from);
        Optional<Double> toS = time("--to", to);
        if (countFromFile()) {
            return RecordedPart.of(file, number, fromS, toS);
        }
        if (!timesFrom.equals("sync mark")) {
            throw new ParameterException(
                    spec.commandLine(), "--times-from takes file or 'sync mark', not '" + timesFrom + "'");
        }
        double zeroS = StimulusComparison.markS(file, number);
        return RecordedPart.of(file, number, Optional.of(zeroS + fromS.orElse(0.0)), toS.map(s -> s + zeroS));
    }

    private Optional<Double> time(String option, Optional<String> text) {
        return text.map(t -> AmountOption.in(spec, option, t, Unit.SECOND, "2.5 s"));
    }
}
