package org.ellwand.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DemoDataTest {
    @Test
    void committedSheetsAreWhatTheModelWrites(@TempDir Path folder) throws IOException {
        DemoData.write(folder);
        for (String name : DemoData.sheets().keySet()) {
            assertThat(folder.resolve(name)).hasSameBinaryContentAs(Path.of("measurements", name));
        }
    }

    @Test
    void everyCommittedSheetComesFromTheModel() throws IOException {
        try (var files = Files.list(Path.of("measurements"))) {
            List<String> sheets = files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".csv"))
                    .toList();
            assertThat(sheets)
                    .containsExactlyInAnyOrderElementsOf(DemoData.sheets().keySet());
        }
    }

    @Test
    void sheetsStaySmallerThanAMegabyteTogether() {
        int characters =
                DemoData.sheets().values().stream().mapToInt(String::length).sum();
        assertThat(characters).isLessThan(1_000_000);
    }

    @Test
    void columnsHoldDecimalCommasBetweenSemicolons() {
        Map<String, String> sheets = DemoData.sheets();
        assertThat(sheets.get("skerry-crew-02-open.csv").lines().skip(1))
                .hasSize(21)
                .allMatch(line -> line.matches("\\d+(;\\d+,\\d\\d){9}"));
    }
}
