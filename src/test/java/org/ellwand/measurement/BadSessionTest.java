package org.ellwand.measurement;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every message about a bad session, in full. The cases stand in {@code bad-sessions.txt}. */
class BadSessionTest {
    static final String YAML = """
            session: a
            product: Skerry Tide
            ear: crew-01-left
            resolution: third-octave
            levels in: dB SPL
            stimuli:
              pink-65: {kind: pink noise, level: 65 dB SPL}
              hush: {kind: quiet, level: 24 dB SPL}
            open ear: measured
            uncertainty:
              - {cause: insertion, size: 1.2 dB, shared by: insertion}
            data:
              - {file: a.csv, layout: rows, stimulus: pink-65}
            """;

    static final String CSV = """
            device,setting,insertion,frequency (Hz),level (dB SPL)
            open ear,,,1000,65.2
            open ear,,,1250,66.1
            ,flood,1,1000,45.2
            ,flood,1,1250,46.0
            """;

    @TempDir
    Path folder;

    /** One case of the file. */
    record Case(String name, String yaml, String csv, List<String> expected) {
        @Override
        public String toString() {
            return name;
        }
    }

    static Stream<Case> cases() throws IOException {
        try (InputStream in = Objects.requireNonNull(BadSessionTest.class.getResourceAsStream("bad-sessions.txt"))) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return Stream.of(text.split("(?m)^= ")).skip(1).map(BadSessionTest::parse);
        }
    }

    private static Case parse(String block) {
        List<String> lines = block.lines().toList();
        String yaml = YAML;
        String csv = CSV;
        List<String> expected = new ArrayList<>();
        for (String line : lines.subList(1, lines.size())) {
            if (line.startsWith("yaml: ")) {
                yaml = changed(yaml, line.substring(6));
            } else if (line.startsWith("csv: ")) {
                csv = changed(csv, line.substring(5));
            } else if (!line.isBlank()) {
                expected.add(line.replace("\\n", "\n"));
            }
        }
        return new Case(lines.get(0), yaml, csv, expected);
    }

    private static String changed(String text, String change) {
        int arrow = change.indexOf(" => ");
        String from = change.substring(0, arrow).replace("\\n", "\n");
        assertThat(text).contains(from);
        return text.replace(from, change.substring(arrow + 4).replace("\\n", "\n"));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void saysWhatIsWrongAndWhere(Case bad) throws IOException {
        Folder audited =
                new Folder(folder).with("measurements/a.yaml", bad.yaml).with("measurements/a.csv", bad.csv);
        assertThat(audited.problems()).isNotEmpty().containsExactlyElementsOf(bad.expected);
    }

    @Test
    void theSessionThatTheCasesChangeIsGood() throws IOException {
        Folder audited = new Folder(folder).with("measurements/a.yaml", YAML).with("measurements/a.csv", CSV);
        assertThat(audited.problems()).isEmpty();
    }
}
