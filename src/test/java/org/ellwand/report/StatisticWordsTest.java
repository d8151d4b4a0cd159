package org.ellwand.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.ellwand.claim.RuleKey;
import org.ellwand.claim.Statistic;
import org.ellwand.words.Sentences;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every statistic has its words: in the line of a rule, on the pages, in the figures, in letters and in the list of what is accepted. */
class StatisticWordsTest {
    @TempDir
    Path folder;

    private static Stream<String> names() {
        return Arrays.stream(Statistic.values()).map(Statistic::text);
    }

    /** What a function of the templates says of each. */
    private List<String> said(String call) throws Exception {
        String list = String.join(",", names().toList());
        Files.writeString(folder.resolve("article.md.ftl"), """
                <#ftl output_format="Markdown"><#import "words.ftl" as w><#import "figure-words.ftl" as f>
                <#list "%s"?split(",") as s>${s}: ${%s}
                </#list>""".formatted(list, call));
        byte[] page = ReportWriter.with(Optional.of(folder))
                .render(SampleAudit.audit(), ReportOptions.plain())
                .get("article.md");
        return new String(page, StandardCharsets.UTF_8).strip().lines().toList();
    }

    @Test
    void onPagesAndInFigures() throws Exception {
        for (String call : List.of("w.statistic(s)", "f.subject({\"statistic\": s})")) {
            assertThat(said(call)).as(call).hasSize(Statistic.values().length).noneMatch(line -> line.endsWith(": "));
        }
    }

    @Test
    void inTheLineOfARule() {
        assertThat(Sentences.english().keys())
                .containsAll(
                        names().map(name -> "rule-" + name.replace(' ', '-')).toList());
    }

    @Test
    void inLetters() throws Exception {
        String questions = Files.readString(Path.of("templates/letter-questions.ftl"));
        String asked = questions.substring(questions.indexOf("\"statistic\": {"));
        assertThat(asked.substring(0, asked.indexOf('}')))
                .contains(names().map(name -> '"' + name + "\": ").toList());
    }

    @Test
    void amongWhatIsAccepted() {
        assertThat(RuleKey.STATISTIC.accepted()).isEqualTo(String.join(", ", names().toList()));
    }
}
