package org.ellwand.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The table of verdicts that the demo should come to: whole, and with every verdict in it. */
class ExpectedVerdictsTest {
    private static final Path TABLE = Path.of("src/test/resources/org/ellwand/demo/expected-verdicts.csv");

    @Test
    void everyClaimHasItsRow() throws IOException {
        assertThat(plain("Skerry")).containsExactlyElementsOf(ids("skerry.yaml"));
        assertThat(plain("Skerry Tide")).containsExactlyElementsOf(ids("skerry-tide.yaml"));
    }

    @Test
    void everyVerdictOccurs() throws IOException {
        assertThat(rows().stream().map(row -> row[3]).distinct())
                .containsExactlyInAnyOrder("pass", "marginal", "fail", "untested");
    }

    private static List<String> plain(String product) throws IOException {
        return rows().stream()
                .filter(row -> row[0].equals(product) && row[2].isEmpty())
                .map(row -> row[1])
                .toList();
    }

    private static List<String[]> rows() throws IOException {
        return Files.readAllLines(TABLE).stream()
                .skip(1)
                .map(row -> row.split(",", -1))
                .toList();
    }

    private static List<String> ids(String file) throws IOException {
        List<String> lines = Files.readAllLines(Path.of("claims", file));
        return lines.subList(lines.indexOf("claims:"), lines.size()).stream()
                .filter(line -> line.startsWith("  - id: "))
                .map(line -> line.substring("  - id: ".length()))
                .toList();
    }
}
