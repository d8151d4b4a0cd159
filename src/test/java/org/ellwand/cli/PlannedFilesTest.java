package org.ellwand.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What a plan writes for the claims of the demo and of every example, where nothing was measured yet: filled in, an audit
 * accepts it, and nothing that was planned is untested.
 */
class PlannedFilesTest {
    @TempDir
    Path temp;

    static List<Path> claims() throws IOException {
        List<Path> all = new ArrayList<>();
        for (String folder : List.of("claims", "claims/examples")) {
            try (Stream<Path> files = Files.list(Path.of(folder))) {
                files.filter(file -> file.toString().endsWith(".yaml")).sorted().forEach(all::add);
            }
        }
        return all;
    }

    private static CommandLineRun run(String... arguments) {
        return CommandLineRun.of(Main.commands(new PrintWriter(Writer.nullWriter())), arguments);
    }

    @ParameterizedTest
    @MethodSource("claims")
    void everySheetOfAPlanIsAccepted(Path claims) throws IOException {
        Path yard = folder(claims);
        assertThat(run("plan", yard.toString()))
                .extracting(CommandLineRun::exitCode)
                .isEqualTo(0);
        Files.delete(yard.resolve("measurements/conditions.yaml"));
        FilledIn.in(yard, 16);

        CommandLineRun audit = run("audit", yard.toString(), "--trials", "1000");
        assertThat(audit.exitCode()).as(audit.err()).isZero();
        assertThat(rows("report/audit.md", yard, "**untested**"))
                .as(Files.readString(yard.resolve("report/audit.md")).replaceAll("(?s).*## What was not tested", ""))
                .isSubsetOf(notPlanned(yard));
    }

    /** Beside the claims a session that knows the conditions that the examples declare. */
    private Path folder(Path claims) throws IOException {
        Path yard = temp.resolve("yard");
        Files.createDirectories(yard.resolve("claims"));
        Files.createDirectories(yard.resolve("measurements"));
        Files.copy(claims, yard.resolve("claims").resolve(claims.getFileName()));
        for (String target : List.of("hearing-target.csv", "house-curve.csv")) {
            Files.copy(
                    Path.of("claims/examples", target), yard.resolve("claims").resolve(target));
        }
        Files.writeString(
                yard.resolve("measurements/conditions.yaml"),
                "session: conditions\nconditions: [applied, direction, distance, hand, sound, washes]\n");
        return yard;
    }

    /** Numbers of the claims that a plan says no reading on people can tell. */
    private static List<String> notPlanned(Path yard) throws IOException {
        List<String> numbers = new ArrayList<>(rows("plan/plan.md", yard, "Out of reach"));
        numbers.addAll(rows("plan/plan.md", yard, "on a fixture, not on people"));
        return numbers;
    }

    private static List<String> rows(String file, Path yard, String with) throws IOException {
        return Files.readString(yard.resolve(file))
                .lines()
                .filter(line -> line.matches("\\| \\[?\\d+.*") && line.contains(with))
                .map(line -> line.replaceFirst("\\| \\[?(\\d+).*", "$1"))
                .toList();
    }
}
