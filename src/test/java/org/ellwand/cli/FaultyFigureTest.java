package org.ellwand.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is found about single figures reaches the verdicts about them, from files to the report. Everything is invented. */
class FaultyFigureTest {
    private static final String CLAIMS = """
            product: Skerry
            editions:
              - {id: box, source: The box, dated: "2026-01"}
            claims:
              - id: weight
                edition: box
                topic: weight
                quote: "No plug weighs more than 6 g."
                stated: {quantity: figure, of: weight, limit: at most 6 g}
                assumed: {units: each}
              - id: noise
                edition: box
                topic: noise
                quote: "Its noise is at most 30 dB SPL."
                stated: {quantity: figure, of: noise, limit: at most 30 dB SPL}
                assumed: {units: each}
            """;

    @TempDir
    Path folder;

    private String audit(String weightOfThird, String after) throws IOException {
        Files.createDirectories(folder.resolve("claims"));
        Files.createDirectories(folder.resolve("measurements"));
        Files.writeString(folder.resolve("claims/skerry.yaml"), CLAIMS);
        Files.writeString(folder.resolve("measurements/bench.yaml"), """
                session: bench
                measured: 2026-06-11
                product: Skerry
                calibration: {before: 94.0 dB SPL, after: %s dB SPL}
                figures:
                  - {of: weight, value: 4.5 g, uncertainty: 0.1 g, unit: SN-1}
                  - {of: weight, value: 4.6 g, uncertainty: 0.1 g, unit: SN-2}
                  - {of: weight, value: %s g, uncertainty: 0.1 g, unit: SN-3}
                  - {of: noise, value: 22 dB SPL, uncertainty: 1 dB, unit: SN-1}
                """.formatted(after, weightOfThird));
        CommandLineRun run = CommandLineRun.of(
                Main.commands(new PrintWriter(Writer.nullWriter())), "audit", folder.toString(), "--trials", "1000");
        assertThat(run.exitCode()).as(run.toString()).isZero();
        return Files.readString(folder.resolve("report/audit.md"));
    }

    @Test
    void soundOnesAreJudged() throws IOException {
        assertThat(audit("4.4", "94.2"))
                .contains("2 pass, 0 marginal, 0 fail")
                .doesNotContain("decimal point misplaced");
    }

    @Test
    void aLostDecimalPointFailsNothing() throws IOException {
        assertThat(audit("44", "94.2"))
                .contains("1 pass, 1 marginal, 0 fail")
                .contains("44 g is 9.7 times the 4.55 g of the others: is a decimal point misplaced?")
                .contains("without that finding the verdict would be fail");
    }

    @Test
    void aCalibratorThatDriftedTouchesLevelsAndNoWeight() throws IOException {
        assertThat(audit("4.4", "95.5"))
                .contains("1 pass, 1 marginal, 0 fail")
                .contains("the data themselves are in doubt (calibration in session bench)");
    }
}
