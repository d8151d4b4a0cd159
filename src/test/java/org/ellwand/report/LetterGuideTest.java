package org.ellwand.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.ellwand.ask.Letter;
import org.ellwand.ask.LetterOptions;
import org.ellwand.claim.ClaimsReader;
import org.ellwand.claim.Product;
import org.ellwand.quantity.Quantities;
import org.junit.jupiter.api.Test;

/** Holds the part of {@code templates/README.md} about letters to the model, which the demo fills altogether. */
class LetterGuideTest {
    @Test
    void documentsEveryKeyOfALetter() throws Exception {
        TreeSet<String> model = new TreeSet<>();
        for (Product product : new ClaimsReader(Quantities.forms(), Set.of()).readAll(Path.of("."))) {
            LetterOptions options = LetterOptions.plain();
            Map<String, Map<String, Object>> results = Map.of();
            model.addAll(ModelPaths.of(Letter.model(product, options, results, List.of())));
        }
        // The demo has no sentence that leaves nothing open, and none that was answered by a later edition.
        for (String key : List.of("id", "topic", "words", "verbatim", "source", "edition", "editionDated")) {
            model.add("answered[].editions[]." + key);
        }
        model.addAll(List.of(
                "since[].source",
                "since[].dated",
                "clear[].id",
                "clear[].topic",
                "clear[].words",
                "clear[].verbatim",
                "clear[].source",
                "clear[].edition",
                "clear[].editionDated"));
        assertThat(TemplateGuideTest.documented("## What a letter sees")).isEqualTo(model);
    }

    @Test
    void theDemosLettersFillBothTemplates() throws Exception {
        TemplateWriter writer = TemplateWriter.with(Optional.of(Path.of("templates")));
        for (Product product : new ClaimsReader(Quantities.forms(), Set.of()).readAll(Path.of("."))) {
            LetterOptions options = LetterOptions.plain();
            Map<String, Object> model = Letter.model(product, options, Map.of(), List.of());
            assertThat(writer.write("letter.md.ftl", model)).isNotEmpty();
            assertThat(new String(writer.write("letter.html.ftl", model), java.nio.charset.StandardCharsets.UTF_8))
                    .contains("<h1>Questions about " + product.name() + "</h1>")
                    .doesNotContain("http:", "https:", "<script");
        }
        assertThat(Files.readString(Path.of("templates/README.md"))).contains("letter-questions.ftl");
    }
}
