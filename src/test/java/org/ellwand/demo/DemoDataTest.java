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

    /** Better seal: 10 to 20 dB more below 500 Hz (common practice, no source), in the readings themselves. */
    @Test
    void betterSealShowsInTheReadings() throws IOException {
        for (String sheet : List.of("tide-crew-01.csv", "tide-crew-02.csv", "skerry-crew-01.csv")) {
            List<String> rows = Files.readAllLines(Path.of("measurements", sheet));
            assertThat(lowLevelDb(rows, "flange") - lowLevelDb(rows, "foam"))
                    .as(sheet)
                    .isBetween(10.0, 20.0);
        }
    }

    private static double lowLevelDb(List<String> rows, String fit) {
        return rows.stream()
                .skip(1)
                .map(row -> row.split(",", -1))
                .filter(cells -> cells[1].equals(fit) && cells[2].equals("flood") && cells[3].equals("pink-94"))
                .filter(cells -> Double.parseDouble(cells[6]) < 500)
                .mapToDouble(cells -> Double.parseDouble(cells[7]))
                .average()
                .orElseThrow();
    }
}
