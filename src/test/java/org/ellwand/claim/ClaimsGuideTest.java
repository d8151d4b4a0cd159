package org.ellwand.claim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.ellwand.amount.Phrases;
import org.ellwand.quantity.Quantities;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Holds the guide to what the reader does. */
class ClaimsGuideTest {
    @TempDir
    Path folder;

    private static String guide() throws Exception {
        return Files.readString(Path.of("claims/README.md"));
    }

    private static List<String> found(String pattern, String text) {
        return Pattern.compile(pattern, Pattern.DOTALL)
                .matcher(text)
                .results()
                .map(m -> m.group(1))
                .toList();
    }

    private static String section(String title) throws Exception {
        Matcher matcher = Pattern.compile("## " + title + "\n(.*?)(?=\n## |\\z)", Pattern.DOTALL)
                .matcher(guide());
        assertThat(matcher.find()).isTrue();
        return matcher.group(1);
    }

    @Test
    void itsExamplesLoad() throws Exception {
        List<String> examples = found("```yaml\n(.*?)```", guide());
        assertThat(examples).hasSize(2);
        for (String example : examples) {
            assertThat(new ClaimsFolder(folder).refusal(example)).isEqualTo("nothing");
        }
    }

    @Test
    void itsTableOfKeysIsTheReaders() throws Exception {
        List<String> rows = section("Keys of a rule")
                .lines()
                .filter(l -> l.startsWith("| `"))
                .toList();
        List<String> keys = Arrays.stream(RuleKey.values())
                .map(k -> "| `" + k.text() + "` | " + k.description() + " | " + k.accepted() + " |")
                .toList();
        assertThat(rows).isEqualTo(keys);
    }

    @Test
    void itsTableOfQuantitiesIsTheReaders() throws Exception {
        List<String> rows =
                section("Quantities").lines().filter(l -> l.startsWith("| `")).toList();
        List<String> forms = Quantities.forms().stream()
                .map(f -> "| `" + f.name() + "` | " + f.unitText() + " | " + f.definition() + " | "
                        + String.join(", ", new TreeSet<>(f.needed().keySet())) + " |")
                .toList();
        assertThat(rows).isEqualTo(forms);
    }

    @Test
    void itsPhrasesAreRead() throws Exception {
        List<String> phrases =
                found("`([^`]*\\d[^`]*)`", section("Phrases")).stream().toList();
        assertThat(phrases).hasSizeGreaterThan(10);
        phrases.forEach(p -> assertThatCode(() -> Phrases.interval(p)).as(p).doesNotThrowAnyException());
    }
}
