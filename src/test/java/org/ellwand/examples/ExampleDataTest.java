package org.ellwand.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class ExampleDataTest {
    private static final Map<String, String> FILES = ExampleData.files(Errors.AS_DECLARED);

    @Test
    void committedSheetsAreWhatTheModelsWrite() {
        FILES.forEach(
                (path, text) -> assertThat(Path.of(path)).hasBinaryContent(text.getBytes(StandardCharsets.UTF_8)));
    }

    @Test
    void everyCommittedSheetComesFromAModel() throws IOException {
        assertThat(Stream.concat(sheets("measurements/examples").stream(), sheets("claims/examples").stream()))
                .containsExactlyInAnyOrderElementsOf(FILES.keySet());
    }

    @Test
    void sheetsStaySmallTogether() {
        assertThat(FILES.values().stream().mapToInt(String::length).sum()).isLessThan(150_000);
    }

    private static List<String> sheets(String folder) throws IOException {
        try (Stream<Path> files = Files.list(Path.of(folder))) {
            return files.map(file -> file.toString().replace('\\', '/'))
                    .filter(name -> name.endsWith(".csv"))
                    .toList();
        }
    }
}
