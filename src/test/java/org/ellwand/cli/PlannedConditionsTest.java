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

/** Claims of an invented earplug of which one names a condition and others do not: what is planned, an audit accepts as the plan says. */
class PlannedConditionsTest {
    private static final String CLAIMS = """
            product: Skerry
            editions: [{id: box, source: The box, dated: 2025}]
            claims:
              - id: all
                edition: box
                quote: "Takes 20 dB off."
                stated: {quantity: attenuation, setting: flood, limit: 20 dB}
                assumed: {tolerance: 4 dB, bands: 125 Hz to 8 kHz, level: 90 dB SPL, statistic: mean}
              - id: hiss
                edition: box
                quote: "No hiss."
                stated: {quantity: output level, setting: flood, limit: at most 40 dB(A)}
                assumed: {bands: 125 Hz to 8 kHz, statistic: overall, weighting: A, stimulus: quiet, referred to: eardrum}
              - id: better
                edition: box
                quote: "The new one is better."
                stated: {quantity: attenuation, between: {%s}, setting: flood, limit: at least 2 dB}
                assumed: {bands: 125 Hz to 8 kHz, level: 90 dB SPL, statistic: mean}
              - id: range
                edition: box
                quote: "At any level."
                stated: {quantity: attenuation, setting: flood, limit: at least 10 dB}
                assumed: {bands: 250 Hz to 4 kHz, level: 70 to 90 dB SPL, statistic: mean}
              - id: soft
                edition: box
                quote: "Even at little."
                stated: {quantity: attenuation, setting: flood, limit: at least 10 dB}
                assumed: {bands: 1 kHz, level: 70 dB SPL, statistic: mean}
              - id: clean
                edition: box
                quote: "Clean."
                stated: {quantity: harmonic distortion, setting: flood, limit: at most 5 %%}
                assumed: {harmonics: 2 to 3, level: 84 dB SPL}
            """;

    @TempDir
    Path temp;

    private Path yard = Path.of("");

    @BeforeEach
    void folders() throws IOException {
        yard = temp.resolve("yard");
        Files.createDirectories(yard.resolve("claims"));
        Files.createDirectories(yard.resolve("measurements"));
    }

    private static CommandLineRun run(String... arguments) {
        return CommandLineRun.of(Main.commands(new PrintWriter(Writer.nullWriter())), arguments);
    }

    private String plan(String between) throws IOException {
        Files.writeString(yard.resolve("claims/skerry.yaml"), CLAIMS.formatted(between));
        CommandLineRun plan = run("plan", yard.toString());
        assertThat(plan.exitCode()).as(plan.err()).isZero();
        FilledIn.in(yard, 20);
        return Files.readString(yard.resolve("plan/plan.md"));
    }

    /** As the plan asks: the condition under 'assumed' of three claims. The one at 70 dB is read beside the range, under its condition alone. */
    private void say(String condition, String between) throws IOException {
        String said = CLAIMS.formatted(between)
                .replaceFirst("assumed: \\{tolerance", "assumed: {" + condition + ", tolerance")
                .replaceFirst("bands: 250 Hz", condition + ", bands: 250 Hz")
                .replaceFirst("statistic: overall", condition + ", statistic: overall");
        Files.writeString(yard.resolve("claims/skerry.yaml"), said);
    }

    private CommandLineRun audit() {
        return run("audit", yard.toString(), "--trials", "1000");
    }

    @Test
    void aFirmwareThatOneClaimNamesIsToBeNamedByTheOthers() throws IOException {
        String between = "firmware: [\"2.1\", \"2.0\"]";
        assertThat(plan(between))
                .contains(
                        "**Before the audit:** readings of firmware 2.0, 2.1 will be there, and claims 1, 2, 4 say nothing of it.")
                .contains("write `firmware: \"2.1\"` under `assumed` of each");
        // No reading in place is left without a firmware: no claim could ask for it.
        assertThat(Files.readAllLines(yard.resolve("plan/plan-skerry.csv")).stream()
                        .filter(row -> row.startsWith(",")))
                .isNotEmpty()
                .noneMatch(row -> row.startsWith(",,"));
        assertThat(audit().exitCode()).isEqualTo(2);
        say("firmware: \"2.1\"", between);
        CommandLineRun audit = audit();
        assertThat(audit.exitCode()).as(audit.err()).isZero();
        assertThat(Files.readString(yard.resolve("report/audit.md"))).contains(" 0 untested.**");
    }

    @Test
    void aUnitThatOneClaimNamesIsToBeNamedByTheOthers() throws IOException {
        String between = "unit: [washed, new]";
        assertThat(plan(between)).contains("write `unit: \"washed\"` under `assumed` of each");
        say("unit: washed", between);
        CommandLineRun audit = audit();
        assertThat(audit.exitCode()).as(audit.err()).isZero();
        assertThat(Files.readString(yard.resolve("report/audit.md"))).contains(" 0 untested.**");
    }

    /** Harmonics are those of one tone; noise has none that could be told. */
    @Test
    void harmonicsAreReadUnderATone() throws IOException {
        plan("firmware: [\"2.1\", \"2.0\"]");
        assertThat(Files.readString(yard.resolve("plan/plan-skerry-bench.yaml")))
                .contains("\"pure-tone-84\": {kind: \"pure tone\", level: 84 dB SPL}")
                .doesNotContain("noise");
    }

    /** Nothing is to be said where no claim names what another leaves open. */
    @Test
    void whereNoneNamesItNothingIsAsked() throws IOException {
        Files.writeString(yard.resolve("claims/skerry.yaml"), CLAIMS.substring(0, CLAIMS.indexOf("  - id: better")));
        assertThat(run("plan", yard.toString()).exitCode()).isZero();
        assertThat(Files.readString(yard.resolve("plan/plan.md"))).doesNotContain("Before the audit");
    }
}
