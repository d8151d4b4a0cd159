package org.ellwand.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.ellwand.input.InputException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Functions of {@code words.ftl} by themselves, called from a template of the user's. */
class SentencesOfArticlesTest {
    @TempDir
    Path templates;

    private String said(String expression) throws IOException, InputException {
        Files.writeString(templates.resolve("figure.txt.ftl"), "<#import \"words.ftl\" as w>${" + expression + "}");
        byte[] text = TemplateWriter.with(Optional.of(templates)).write("figure.txt.ftl", Map.of());
        return new String(text, StandardCharsets.UTF_8);
    }

    /** 66.1 % is not 23.9 % below 90 %, but a quarter of it. */
    @Test
    void betweenPercentagesLiePercentagePoints() throws IOException, InputException {
        assertThat(said("w.points('23.9 %')")).isEqualTo("23.9 percentage points");
        assertThat(said("w.points('3.1 dB')")).isEqualTo("3.1 dB");
        assertThat(said("w.points('')")).isEmpty();
    }

    private static String shifted(String session, String shift) {
        return "{'key': 'scaled-open-ear', 'text': 'open ear of " + session + " by " + shift + "', 'figures': ["
                + "{'name': 'session', 'text': '" + session + "'}, {'name': 'shift', 'text': '" + shift + "'},"
                + " {'name': 'stimulus', 'text': 'pink-80'}]}";
    }

    /** Three ears at three levels would be nine sentences that differ in a number. */
    @Test
    void openEarsThatWereShiftedAreToldInOneSentence() throws IOException, InputException {
        String caveats = "w.caveats({'notes': [{'key': 'onset-levels', 'text': 'five levels', 'figures': []}, %s,"
                + " {'key': 'differs-under', 'text': 'said already', 'figures': []}]})?join('|')";
        assertThat(said(caveats.formatted(shifted("a", "+10.0")))).isEqualTo("open ear of a by +10.0|five levels");
        assertThat(said(caveats.formatted(
                        shifted("a", "+10.0") + ", " + shifted("a", "+15.0") + ", " + shifted("b", "+10.0"))))
                .isEqualTo("open ears measured under pink-80 and shifted by +10.0 and +15.0 dB (a and b)|five levels");
    }
}
