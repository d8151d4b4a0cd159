package org.ellwand.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.ellwand.input.InputException;
import org.junit.jupiter.api.Test;

/** Holds {@code templates/README.md} against the model: each key it documents exists, and each that exists is there. */
class TemplateGuideTest {
    private static final Pattern ROW = Pattern.compile("(?m)^\\| `([^`]+)` \\| \\S.* \\|$");

    @Test
    void documentsEveryKeyOfThePages() throws IOException, InputException {
        FigureDrawer figures = new FigureDrawer(Templates.of(Optional.empty()), false);
        SortedSet<String> model = ModelPaths.of(
                ReportWriter.with(Optional.empty()).model(SampleAudit.two(), ReportOptions.plain(), figures));
        assertThat(documented("## What the pages see")).isEqualTo(model);
    }

    /** Title and words come of the same model, and are there when the figure is drawn. */
    @Test
    void documentsEveryKeyOfAFigure() throws IOException {
        SortedSet<String> model = new TreeSet<>(List.of("figure.title", "figure.alt"));
        FigureSamples.models().forEach(figure -> model.addAll(ModelPaths.of(Map.of("figure", figure))));
        assertThat(documented("## What a figure sees")).isEqualTo(model);
    }

    @Test
    void namesEveryTemplate() throws IOException {
        List<String> files;
        try (var listed = Files.list(Path.of("templates"))) {
            files = listed.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".ftl"))
                    .sorted()
                    .toList();
        }
        assertThat(KnownTemplates.NAMES).isEqualTo(files);
        String guide = Files.readString(Path.of("templates/README.md"));
        assertThat(KnownTemplates.NAMES).contains("words.ftl", "script.js.ftl");
        files.forEach(name -> assertThat(guide).contains("| `" + name + "` |"));
    }

    static SortedSet<String> documented(String heading) throws IOException {
        String guide = Files.readString(Path.of("templates/README.md"));
        String part = guide.substring(guide.indexOf(heading) + heading.length());
        int next = part.indexOf("\n## ");
        return ROW.matcher(next < 0 ? part : part.substring(0, next))
                .results()
                .map(row -> row.group(1))
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
