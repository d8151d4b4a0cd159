package org.ellwand.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class WordChangesTest {
    private static Map<String, String> run(String kind, String text) {
        return Map.of("kind", kind, "text", text);
    }

    @Test
    void keepsWhatIsCommonInOrder() {
        assertThat(WordChanges.between("Flood takes 27 dB off.", "Flood takes about 22 dB off."))
                .isEqualTo(List.of(
                        run("same", "Flood takes"), run("gone", "27"), run("new", "about 22"), run("same", "dB off.")));
    }

    @Test
    void equalTextsAreOneRun() {
        assertThat(WordChanges.between("as  it was", "as it was")).isEqualTo(List.of(run("same", "as it was")));
    }

    @Test
    void textsOfTenThousandCharactersAreNotCompared() {
        assertThat(WordChanges.between("word ".repeat(2000), "word")).isEmpty();
    }
}
