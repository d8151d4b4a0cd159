package org.ellwand.input;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
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
                new Refused(
                        "a: b: c\n",
                        "a.yaml:1:5: not readable as YAML: no ': ' is expected here; put text that holds ': ' in quotes, write"
                                + " keys with ': ' behind them, and begin those of one mapping in one column"),
                new Refused(
                        "a:\n  b: 1\n c: 2\n",
                        "a.yaml:3:2: not readable as YAML: this line is indented otherwise than those it belongs to; begin"
                                + " keys of one mapping, and items of one list, in one column"),
                new Refused(
                        "a: 'Flood's 18 dB'\n",
                        "a.yaml:1:11: not readable as YAML: text goes on behind a closing quotation mark; write a mark that"
                                + " belongs to the text twice"),
                new Refused(
                        "a: 1\nb:2\nc: 3\n",
                        "a.yaml:3:1: not readable as YAML: this line or the one above has no ': '; write 'key: value', with a"
                                + " space behind the colon"),
                new Refused(
                        "a: 1\nb: \"Flood\nc: 2\n",
                        "a.yaml:2:4: not readable as YAML: a quotation mark opens here and is not closed"),
                new Refused(
                        "a: >= 15 dB\n",
                        "a.yaml:1:5: not readable as YAML: a text does not begin with '>' or '|'; put it in quotes"),
                new Refused(
                        "a: %10\n",
                        "a.yaml:1:4: not readable as YAML: a text does not begin with this character; put it in quotes"),
                new Refused(
                        "a: {b: 1\nc: 2\n", "a.yaml:2:2: not readable as YAML: a comma or the closing '}' is missing"),
                new Refused(
                        "a: [b, c\nd: 2\n", "a.yaml:2:2: not readable as YAML: a comma or the closing ']' is missing"),
                new Refused("? [a]\n: b\n", "a.yaml:1:3: a key is text"),
                new Refused("# only\n", "a.yaml: empty"),
                new Refused("a: " + "[".repeat(40), "a.yaml:1:34: nested deeper than 30 levels"),
                new Refused("a: " + "x".repeat(100_001), "a.yaml:1:4: a text longer than 100000 characters"),
                new Refused(
                        "#".repeat(1_000_001),
                        "a.yaml: longer than 1000000 characters, which is more than is read from one file"));
    }

    @ParameterizedTest
    @MethodSource("refused")
    void refusesWithThePlace(Refused refused) {
        assertThatThrownBy(() -> YamlReader.parse(refused.text(), "a.yaml"))
                .isInstanceOf(InputException.class)
                .hasMessage(refused.message());
    }

    /** Between braces a decimal comma makes a key of what is behind it. */
    @Test
    void whatACommaCutOffAValueIsKnown() throws InputException {
        YamlNode.Mapping cut = mapping("a: {b: 18,5 dB, c: 1}").get("a").stream()
                .map(YamlNode.Mapping.class::cast)
                .findFirst()
                .orElseThrow();
        assertThat(IntStream.range(0, 3).mapToObj(cut::isCut)).containsExactly(false, true, false);
        YamlNode.Mapping whole = mapping("a: 1\nb:\n");
        assertThat(IntStream.range(0, 2).mapToObj(whole::isCut)).containsExactly(false, false);
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
