package org.ellwand.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ellwand.input.InputException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class UserTemplateTest {
    @TempDir
    Path folder;

    private Map<String, byte[]> rendered(String name, String template) throws IOException, InputException {
        Files.writeString(folder.resolve(name), template);
        return ReportWriter.with(Optional.of(folder)).render(SampleAudit.audit(), ReportOptions.plain());
    }

    @Test
    void oneFileStandsInForItsNamesakeAndTheOthersStay() throws IOException, InputException {
        Files.writeString(folder.resolve("my-end.ftl"), "the end");
        Map<String, byte[]> files = rendered(
                "article.md.ftl",
                "<#ftl output_format=\"Markdown\">\n<#list products as p>${p.name}: ${p.counts.fail} fail, </#list><#include \"my-end.ftl\">");
        assertThat(new String(files.get("article.md"), StandardCharsets.UTF_8))
                .isEqualTo("Skerry Tide: 3 fail, the end");
        assertThat(files.get("audit.md"))
                .isEqualTo(ReportWriter.with(Optional.empty())
                        .render(SampleAudit.audit(), ReportOptions.plain())
                        .get("audit.md"));
    }

    @Test
    void aNameThatIsNotThereIsNamedWithItsPlaceAndWithWhatIsThere() {
        assertThatThrownBy(() -> rendered(
                        "audit.md.ftl", "one\n<#list sessions as s><#list s.causes as c>${c.nmae}</#list></#list>"))
                .isInstanceOf(InputException.class)
                .hasMessage("templates/audit.md.ftl:2:45: there is no c.nmae; there is, in c: name, sizes, sharedBy,"
                        + " acrossBands");
        assertThatThrownBy(() -> rendered("audit.md.ftl", "${product}"))
                .hasMessage("templates/audit.md.ftl:1:3: there is no product; there is, at the top: dated, products,"
                        + " shared, sessions, findings, cautions, inputs, script");
    }

    @Test
    void aSlipInTheSyntaxIsNamedWithItsPlace() {
        assertThatThrownBy(() -> rendered("article.html.ftl", "<p>\n<#if dated>\n</p>"))
                .isInstanceOf(InputException.class)
                .hasMessageStartingWith("templates/article.html.ftl:")
                .hasMessageContaining("#if");
    }

    @Test
    void aNameThatReplacesNothingIsRefused() {
        assertThatThrownBy(() -> rendered("audt.md.ftl", "x"))
                .hasMessage("templates/audt.md.ftl: replaces no template; the templates are "
                        + String.join(", ", KnownTemplates.NAMES) + "; a file to include begins with my-");
    }

    @Test
    void reachesNoClassAndNoFileOutside() throws IOException {
        assertThatThrownBy(() -> rendered("audit.md.ftl", "${\"freemarker.template.utility.Execute\"?new()(\"id\")}"))
                .isInstanceOf(InputException.class)
                .hasMessageStartingWith("templates/audit.md.ftl:1:1: ")
                .hasMessageContaining("not allowed");
        assertThatThrownBy(() -> rendered("audit.md.ftl", "${products?api.size()}"))
                .isInstanceOf(InputException.class);
        Files.writeString(folder.resolveSibling("my-secret.ftl"), "secret");
        assertThatThrownBy(() -> rendered("audit.md.ftl", "<#include \"../my-secret.ftl\">"))
                .isInstanceOf(InputException.class);
    }

    /** Ways out of a template that its language knows: a class, a value's own methods, files, the net, text run as a template. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "${\"freemarker.template.utility.ObjectConstructor\"?new()(\"java.io.File\", \"x\")}",
                "${\"freemarker.template.utility.JythonRuntime\"?new()}",
                "${products?api.class}",
                "${products.class.protectionDomain}",
                "${products[0].name.getClass()}",
                "${.data_model.getClass()}",
                "<#include \"/etc/passwd\">",
                "<#include \"file:///etc/passwd\">",
                "<#include \"../../../../../../etc/passwd\">",
                "<#include \"http://127.0.0.1:9/x\">",
                "<#import \"/etc/passwd\" as p>",
                "${.get_optional_template('/etc/passwd').include()}",
                "<#assign x = '${\"freemarker.template.utility.Execute\"?new()(\"id\")}'?interpret><@x/>",
                "<@'${\"freemarker.template.utility.Execute\"?new()(\"id\")}'?interpret/>",
                "${'\"freemarker.template.utility.Execute\"?new()(\"id\")'?eval}",
                "<#setting url_escaping_charset='x'>${.now?api}"
            })
    void knowsNoWayOut(String template) {
        assertThatThrownBy(() -> rendered("audit.md.ftl", template))
                .isInstanceOf(InputException.class)
                .hasMessageStartingWith("templates/");
    }

    @Test
    void wordsOfOnesOwnChangeEveryPage() throws IOException, InputException {
        String words = Files.readString(Path.of("templates/words.ftl"))
                .replace("This is not a rating. A rating needs", "Dies ist kein Rating. A rating needs");
        Map<String, byte[]> files = rendered("words.ftl", words);
        for (String page : List.of("audit.html", "audit.md", "article.html", "article.md")) {
            assertThat(new String(files.get(page), StandardCharsets.UTF_8))
                    .as(page)
                    .contains("Dies ist kein Rating.")
                    .doesNotContain("This is not a rating.");
        }
    }
}
