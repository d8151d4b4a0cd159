package org.ellwand.report;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ellwand.audit.Audit;
import org.ellwand.input.InputException;

/** Writes an audit for people: pages, the piece for an article, figures, and the table of verdicts. */
public final class ReportWriter {
    private static final List<String> PAGES = List.of("audit.html", "audit.md", "article.html", "article.md");

    private final Templates templates;

    private ReportWriter(Templates templates) {
        this.templates = templates;
    }

    /**
     * {@return a writer with its templates read, which may be done before there is anything to write}
     *
     * @param userTemplates folder whose files stand in for the built-in templates of the same name; absent: built-in only
     * @throws InputException where a file of that folder replaces no template
     */
    public static ReportWriter with(Optional<Path> userTemplates) throws InputException {
        Templates templates = Templates.of(userTemplates);
        KnownTemplates.NAMES.forEach(templates::read);
        return new ReportWriter(templates);
    }

    /**
     * {@return the files of a report by their paths below the report's folder, with forward slashes} The same audit and
     * options give the same bytes. Nothing is written.
     *
     * @param audit what is told
     * @param options how it is wanted
     * @throws InputException where a template of the user's is at fault
     * @throws IllegalStateException where PNG figures are wanted and this machine has no font to draw them with
     */
    public SortedMap<String, byte[]> render(Audit audit, ReportOptions options) throws InputException {
        FigureDrawer figures = new FigureDrawer(templates, options.png());
        Map<String, Object> model = model(audit, options, figures);
        SortedMap<String, String> texts = new TreeMap<>(figures.drawn());
        List<String> pages = Abreast.each(PAGES, page -> templates.render(page + ".ftl", model));
        for (int i = 0; i < pages.size(); i++) {
            texts.put(PAGES.get(i), pages.get(i));
        }
        texts.put("verdicts.csv", VerdictTable.of(audit));
        CellTable.of(audit).ifPresent(table -> texts.put("cells.csv", table));
        SortedMap<String, byte[]> files = new TreeMap<>();
        texts.forEach((path, text) -> files.put(path, text.getBytes(StandardCharsets.UTF_8)));
        if (options.png()) {
            files.putAll(pngs(List.copyOf(figures.drawn().entrySet())));
        }
        return files;
    }

    private static Map<String, byte[]> pngs(List<Map.Entry<String, String>> svgs) throws InputException {
        List<byte[]> drawn = Abreast.each(svgs, svg -> Raster.png(svg.getKey(), svg.getValue()));
        Map<String, byte[]> pngs = new TreeMap<>();
        for (int i = 0; i < drawn.size(); i++) {
            pngs.put(svgs.get(i).getKey().replaceAll("svg$", "png"), drawn.get(i));
        }
        return pngs;
    }

    Map<String, Object> model(Audit audit, ReportOptions options, FigureDrawer figures) throws InputException {
        Map<String, Object> model = new LinkedHashMap<>(ReportModel.of(audit, options, figures, templates.sentences()));
        model.put("script", PageScript.of(templates));
        return model;
    }
}
