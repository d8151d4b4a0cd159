package org.ellwand.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class InspectCommandTest {
    @TempDir
    Path temp;

    private static CommandLineRun run(String... args) {
        return CommandLineRun.of(Main.commands(new PrintWriter(Writer.nullWriter())), args);
    }

    private static String first(CommandLineRun run) {
        return run.out().lines().limit(4).reduce("", (text, line) -> text + line + "\n");
    }

    @Test
    void findingsAndWhatWasNotCheckedGoToStandardOutput() {
        CommandLineRun run = run("inspect", ".");
        assertThat(run.exitCode()).isZero();
        assertThat(run.err()).isEmpty();
        assertThat(first(run))
                .startsWith("session bench (measurements/bench.yaml)\n  not checked, A-weighted bands: needs");
        assertThat(run.out())
                .contains("""
                          slit leak: 4.5 dB from 125 to 250 Hz, rising by 5.9 dB per octave up to 1 kHz as past a slit; a sealed tip has more than 10 dB or rises less
                            at device Skerry, ear crew-01-left, fit flange, head crew-01, insertion 5, side left, unit BW-0003; 100 to 1000 Hz (11 bands)
                            hides attenuation; noted
                            also at insertion 4; insertion 6
                        """)
                .contains("  not checked, background noise: no reading in quiet of field microphone\n")
                .contains("\nin every session\n  not checked, averaging time: needs")
                .endsWith("11 findings in 5 sessions\n");
        assertThat(run("inspect", ".", "--all").out())
                .contains("slit leak: 4.8 dB")
                .doesNotContain("also at");
    }

    @Test
    void nothingIsWritten() throws IOException {
        Path yard = temp.resolve("yard");
        run("start", yard.toString());
        long before = count(yard);
        assertThat(run("inspect", yard.toString()).exitCode()).isZero();
        assertThat(count(yard)).isEqualTo(before);
    }

    private static long count(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.count();
        }
    }

    @Test
    void aFolderThatIsNoneIsRefused() {
        CommandLineRun run = run("inspect", temp.resolve("none").toString());
        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.err()).isEqualTo(temp.resolve("none") + ": no such folder\n");
    }
}
