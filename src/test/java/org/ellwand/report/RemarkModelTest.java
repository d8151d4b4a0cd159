package org.ellwand.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.ellwand.input.InputException;
import org.ellwand.words.Sentences;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Reasons, notes, findings and the lines of rules come in the sentences of the user's file, in every page. */
class RemarkModelTest {
    @TempDir
    private Path templates;

    private Map<String, String> pages() throws InputException {
        return ReportWriter.with(Optional.of(templates))
                .render(SampleAudit.two(), ReportOptions.plain())
                .entrySet()
                .stream()
                .filter(file -> file.getKey().matches("(audit|article)\\.(md|html)"))
                .collect(Collectors.toMap(
                        Map.Entry::getKey, file -> new String(file.getValue(), StandardCharsets.UTF_8)));
    }

    private void write(String text) throws IOException {
        Files.writeString(templates.resolve(Sentences.FILE), text);
    }

    @Test
    void anotherLanguageLeavesNoEnglishRemark() throws IOException, InputException {
        write(Sentences.english().keys().stream()
                .map(key -> key + " = \u00ab" + key + "\u00bb")
                .collect(Collectors.joining("\n")));
        assertThat(pages())
                .hasSize(4)
                .allSatisfy((name, page) -> assertThat(page)
                        .doesNotContain("speaks of the ears")
                        .doesNotContain("on the limit: the value")
                        .doesNotContain("no reading under these conditions")
                        .doesNotContain("mean attenuation")
                        .doesNotContain("above the background where"));
        assertThat(pages().get("audit.html"))
                .contains("\u00abears-not-people\u00bb")
                .contains("\u00abon-the-limit\u00bb")
                .contains("\u00abrule-part-and-part\u00bb")
                .contains("\u00abbackground-bounds\u00bb");
        assertThat(pages().get("audit.md")).contains("\u00abbackground-bounds\u00bb");
    }

    @Test
    void aFaultInTheFileIsToldWithItsPlace() throws IOException {
        write("on-the-limit = u {uu}");
        assertThatThrownBy(this::pages)
                .isInstanceOf(InputException.class)
                .hasMessageContaining("templates/remarks.txt:1:1: 'on-the-limit' has no figure 'uu'; there is u");
    }
}
