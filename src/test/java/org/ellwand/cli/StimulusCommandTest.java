package org.ellwand.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StimulusCommandTest {
    @TempDir
    Path temp;

    private CommandLineRun stimulus(String kind, String... more) {
        String[] first = {
            "stimulus", kind, "--time", "4 s", "--out", temp.resolve("a.wav").toString()
        };
        return CommandLineRun.of(
                Main.commands(new PrintWriter(Writer.nullWriter())),
                java.util.stream.Stream.concat(java.util.Arrays.stream(first), java.util.Arrays.stream(more))
                        .toArray(String[]::new));
    }

    /**
     * After the mark of a quarter of a second and half a second of silence the tone begins, at 0.75 s; it steps 4 s and 8 s later and ends 12 s
     * later, with a ramp of 20 ms. A part begins 2 s before its step.
     */
    @Test
    void eachStepIsAPartThatASessionTakes() {
        CommandLineRun run = stimulus("step", "--tone", "2 kHz", "--from-level", "-50 dB", "--level", "-30 dB");
        assertThat(run.exitCode()).as(run.err()).isZero();
        assertThat(run.err())
                .endsWith("times from: sync mark\n"
                        + "  from: 2.750 s, to: 8.730 s, step: {at: 2.000 s, from: FILL dB SPL, to: FILL dB SPL}"
                        + "   2000 Hz, up by 20.0 dB\n"
                        + "  from: 6.750 s, to: 12.730 s, step: {at: 2.000 s, from: FILL dB SPL, to: FILL dB SPL}"
                        + "   2000 Hz, down by 20.0 dB\n");
    }

    @Test
    void aStepToALowerLevelGoesDownFirst() {
        assertThat(stimulus("step", "--level", "-50 dB").err())
                .containsSubsequence("1000 Hz, down by 5.0 dB\n", "1000 Hz, up by 5.0 dB\n");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            step  | --level -20dB --level -30dB    | step takes one --level, not 2
            step  | --crest 10dB                   | step takes no --crest
            step  | --tone 500Hz --tone 1kHz       | step takes one --tone, not 2
            step  | --level -45dB                  | --level and --from-level are the same: a step goes from one level to another
            tones | --level -20dB --level -30dB    | tones takes one --level, not 2
            tones | --from-level -50dB             | tones takes no --from-level
            pink  | --tone 1kHz                    | pink takes no --tone
            pink  | --from-level -50dB             | pink takes no --from-level
            """)
    void whatAKindMakesNothingOfIsRefused(String kind, String options, String said) {
        CommandLineRun run = stimulus(kind, options.split(" "));
        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.err()).startsWith("ellwand stimulus: " + said + "\n");
        assertThat(temp.resolve("a.wav")).doesNotExist();
    }
}
