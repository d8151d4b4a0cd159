package org.ellwand.input;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class YamlReaderTest {
    @TempDir
    Path folder;

    private static YamlNode.Mapping mapping(String text) throws InputException {
        return (YamlNode.Mapping) YamlReader.parse(text, "a.yaml");
    }

    @ParameterizedTest
    @ValueSource(strings = {"1.10", "off", "no", "yes", "014", "1_000", "0x1F", "true", "1e3", ".inf", "2026-05-04"})
    void scalarsStayWhatIsWritten(String text) throws InputException {
        for (String written : List.of(text, "'" + text + "'", "\"" + text + "\"")) {
            assertThat(((YamlNode.Scalar) mapping("a: " + written).get("a").orElseThrow()).text())
                    .isEqualTo(text);
        }
    }

    @Test
    void nothingIsAnEmptyText() throws InputException {
        assertThat(mapping("a:\nb: ~\nc: null\nd: ''\n").texts().values()).containsOnly("");
        assertThat(mapping("a: 'null'").texts()).containsEntry("a", "null");
    }

    @ParameterizedTest
    @ValueSource(strings = {"\n", "\r\n", "\r"})
    void placesAreCountedInLinesAndCharacters(String end) throws InputException {
        YamlNode.Entry entry =
                mapping("a: ж" + end + "é𝄞: [1, x]" + end).entry("é𝄞").orElseThrow();
        assertThat(entry.keyPlace()).isEqualTo(new Place("a.yaml", 2, 1));
        assertThat(((YamlNode.Sequence) entry.value()).items().get(1).place()).isEqualTo(new Place("a.yaml", 2, 9));
    }

    record Refused(String text, String message) {}

    static List<Refused> refused() {
        return List.of(
                new Refused("a: 1\nb: 2\na: 3\n", "a.yaml:3:1: 'a' stands here a second time (first in line 1)"),
                new Refused("a: 1\nb: *x\n", "a.yaml:2:4: an alias ('*') is not accepted: write the value out"),
                new Refused(
                        "a: &x 1\n",
                        "a.yaml:1:4: an anchor ('&') is not accepted: write the value out where it is needed"),
                new Refused(
                        "a: &x {b: 1}\n",
                        "a.yaml:1:4: an anchor ('&') is not accepted: write the value out where it is needed"),
                new Refused("<<: {a: 1}\n", "a.yaml:1:1: a merge key ('<<') is not accepted: write the values out"),
                new Refused("a: !x {b: 1}\n", "a.yaml:1:4: a tag ('!x') is not accepted"),
                new Refused("a: 1\n---\nb: 2\n", "a.yaml:2:1: a second document begins here: one file holds one"),
                new Refused("a:\n\tb: 1\n", "a.yaml:2:1: a tab indents this line: use spaces"),
                new Refused("a: b: c\n", "a.yaml:1:5: not readable as YAML: mapping values are not allowed here"),
                new Refused("? [a]\n: b\n", "a.yaml:1:3: a key is text"),
                new Refused("# only\n", "a.yaml: empty"),
                new Refused("a: " + "[".repeat(40), "a.yaml:1:34: nested deeper than 30 levels"),
                new Refused("a: " + "x".repeat(100_001), "a.yaml:1:4: a text longer than 100000 characters"),
                new Refused("#".repeat(1_000_001), "a.yaml: longer than 1000000 characters: split the file"));
    }

    @ParameterizedTest
    @MethodSource("refused")
    void refusesWithThePlace(Refused refused) {
        assertThatThrownBy(() -> YamlReader.parse(refused.text(), "a.yaml"))
                .isInstanceOf(InputException.class)
                .hasMessage(refused.message());
    }

    @Test
    void filesAreUtf8WithOrWithoutAMark() throws Exception {
        Files.write(folder.resolve("a.yaml"), "\uFEFFa: ж".getBytes(StandardCharsets.UTF_8));
        YamlNode.Mapping read = (YamlNode.Mapping) YamlReader.read(folder, "a.yaml");
        assertThat(read.texts()).containsEntry("a", "ж");
        assertThat(read.entries().get(0).keyPlace()).isEqualTo(new Place("a.yaml", 1, 1));
        Files.write(folder.resolve("b.yaml"), new byte[] {'a', ':', ' ', (byte) 0xE4});
        assertThatThrownBy(() -> YamlReader.read(folder, "b.yaml"))
                .hasMessage("b.yaml: not UTF-8 text: save the file as UTF-8");
    }
}
