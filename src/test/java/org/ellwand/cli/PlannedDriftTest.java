package org.ellwand.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Traces of a drift are planned in the ear that all else is read in, so that an audit of both takes them for one ear's. */
class PlannedDriftTest {
    private static final String DRIFT = "stated: {quantity: level drift, setting: flood, limit: at most 1 dB}";
    private static final String STEADINESS = "stated: {quantity: gain steadiness, setting: flood, stimulus: speech,"
            + " level: 65 dB SPL, within: 2 dB, limit: at least 90 %}";

    @TempDir
    Path yard;

    @BeforeEach
    void worn() throws IOException {
        Files.createDirectories(yard.resolve("claims"));
        Files.createDirectories(yard.resolve("measurements"));
        Files.writeString(yard.resolve("measurements/crew.yaml"), """
                session: crew
                product: Skerry
                ear: crew-01-left
                resolution: octave
                levels in: dB SPL
                stimuli: {pink-84: {kind: pink noise, level: 84 dB SPL}}
                uncertainty: [{cause: insertion, size: 1 dB, shared by: insertion}]
                data: [{file: crew.csv, layout: rows, stimulus: pink-84}]
                """);
        Files.writeString(
                yard.resolve("measurements/crew.csv"),
                "device,setting,insertion,frequency,level\nopen ear,,,1000,84\n,flood,1,1000,64\n");
    }

    private void claims(String... stated) throws IOException {
        StringBuilder text =
                new StringBuilder("product: Skerry\neditions: [{id: box, source: The box, dated: 2025}]\nclaims:\n");
        for (int i = 0; i < stated.length; i++) {
            text.append("  - {id: claim-" + i + ", edition: box, quote: \"Steady.\", " + stated[i] + "}\n");
        }
        Files.writeString(yard.resolve("claims/skerry.yaml"), text);
    }

    /** What the plan writes for the bench; the audit of it, filled in, is to be accepted. */
    private String followed() throws IOException {
        CommandLineRun plan = run("plan", yard.toString());
        assertThat(plan.exitCode()).as(plan.err()).isZero();
        FilledIn.in(yard, 16);
        CommandLineRun audit = run("audit", yard.toString(), "--trials", "1000");
        assertThat(audit.exitCode()).as(audit.err()).isZero();
        return Files.readString(yard.resolve("plan/plan-skerry-bench.yaml"));
    }

    private static CommandLineRun run(String... arguments) {
        return CommandLineRun.of(Main.commands(new PrintWriter(Writer.nullWriter())), arguments);
    }

    @Test
    void besideAProgrammeInAnEarTheDriftIsReadInThatEarToo() throws IOException {
        claims(DRIFT, STEADINESS);
        assertThat(followed().lines().filter(line -> line.contains("-steady-")))
                .isNotEmpty()
                .allMatch(line -> line.contains("ear: \"crew-01-left\""));
    }

    @Test
    void whereADriftWasReadInNoEarItIsReadSoAgain() throws IOException {
        Files.writeString(yard.resolve("measurements/bench.yaml"), """
                session: bench
                product: Skerry
                levels in: dB SPL
                traces: [{file: steady.csv, setting: flood, insertion: 1}]
                """);
        StringBuilder steady = new StringBuilder("time (s),level\n");
        for (int second = 0; second < 20; second++) {
            steady.append(second + "," + (60 + 0.05 * second) + "\n");
        }
        Files.writeString(yard.resolve("measurements/steady.csv"), steady);
        claims(DRIFT);
        assertThat(followed().lines().filter(line -> line.contains("-steady-")))
                .isNotEmpty()
                .noneMatch(line -> line.contains("ear:"));
    }
}
