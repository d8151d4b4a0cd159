package org.ellwand.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A battery that is said to last 30 h and lasts 20; invented. */
class WaiverTest {
    private static final String WAIVER =
            "    waiver: {owner: A. Engineer, reason: new cells are on their way, until: 2026-12-31}\n";

    @TempDir
    Path yard;

    private CommandLineRun audit(String waiver, String... more) throws IOException {
        Files.createDirectories(yard.resolve("claims"));
        Files.createDirectories(yard.resolve("measurements"));
        Files.writeString(yard.resolve("claims/skerry.yaml"), """
                product: Skerry
                editions: [{id: box, source: Box, dated: 2025}]
                claims:
                  - id: battery
                    edition: box
                    quote: "Thirty hours."
                    stated: {quantity: figure, of: battery life, limit: at least 30 h}
                """ + waiver);
        Files.writeString(yard.resolve("measurements/bench.yaml"), """
                session: bench
                product: Skerry
                figures: [{of: battery life, value: 20 h, uncertainty: 0.5 h}]
                """);
        String[] args = new String[2 + more.length];
        args[0] = "audit";
        args[1] = yard.toString();
        System.arraycopy(more, 0, args, 2, more.length);
        return CommandLineRun.of(Main.commands(new PrintWriter(Writer.nullWriter())), args);
    }

    @ParameterizedTest
    @CsvSource({"2026-12-31, 0", "2027-01-01, 1"})
    void holdsUntilItsLastDay(String day, int exitCode) throws IOException {
        assertThat(audit(WAIVER, "--fail-on", "fail", "--dated", day).exitCode())
                .isEqualTo(exitCode);
        assertThat(audit("", "--fail-on", "fail", "--dated", day).exitCode()).isEqualTo(1);
    }

    @Test
    void theReportPrintsItAndTheVerdictStays() throws IOException {
        audit(WAIVER);
        assertThat(Files.readString(yard.resolve("report/audit.json")))
                .contains("\"verdict\": \"fail\"")
                .contains("waived until 2026-12-31 by A. Engineer: new cells are on their way");
    }

    @Test
    void buildServersSkipItWhileItHolds() throws IOException {
        Path results = yard.resolve("results.xml");
        audit(WAIVER, "--dated", "2026-12-31", "--junit", results.toString());
        assertThat(Files.readString(results))
                .contains("failures=\"0\" errors=\"0\" skipped=\"1\"")
                .contains(
                        "<skipped message=\"fail: 20 h, limit at least 30 h, probability 0.000, waived until 2026-12-31"
                                + " by A. Engineer: new cells are on their way\"/>");
        audit(WAIVER, "--dated", "2027-01-01", "--junit", results.toString());
        assertThat(Files.readString(results)).contains("failures=\"1\"").contains("on their way (expired)\">");
    }

    @Test
    void itsDayIsADay() throws IOException {
        assertThat(audit(WAIVER.replace("2026-12-31", "next year")).err())
                .isEqualTo(
                        "claims/skerry.yaml:8:77: 'until': 'next year' is not a day: accepted are days as 2026-05-04\n");
        assertThat(audit("    waiver: {owner: A. Engineer}\n").err())
                .contains("claims/skerry.yaml:8:13: the key 'reason' is missing");
    }
}
