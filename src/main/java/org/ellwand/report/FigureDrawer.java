package org.ellwand.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.regex.Pattern;
import org.ellwand.audit.ClaimAudit;
import org.ellwand.audit.ProductAudit;
import org.ellwand.check.Finding;
import org.ellwand.input.InputException;
import org.ellwand.measurement.Session;

/** Draws the figures of a report, keeps them by path, and tells the pages what they need to show them. Safe for threads. */
final class FigureDrawer {
    private static final Pattern STYLE = Pattern.compile("<style>.*?</style>\\s*", Pattern.DOTALL);

    private final Templates templates;
    private final boolean png;
    private final SortedMap<String, String> drawn = new ConcurrentSkipListMap<>();

    FigureDrawer(Templates templates, boolean png) {
        this.templates = templates;
        this.png = png;
    }

    /** Draws a claim's figures; none where there is nothing to draw. */
    List<Object> draw(String id, String product, ClaimAudit claim, List<Finding> findings, List<Session> sessions)
            throws InputException {
        return draw(FigureModel.of(id, product, claim, findings, sessions));
    }

    /** Draws the figures of a product's claims together; none where there is nothing to draw. */
    List<Object> draw(String anchor, ProductAudit product, List<Session> sessions) throws InputException {
        return draw(FigureModel.of(anchor, product, sessions));
    }

    private List<Object> draw(List<Map<String, Object>> models) throws InputException {
        List<Object> shown = new ArrayList<>();
        for (Map<String, Object> model : models) {
            shown.add(draw(said(Clean.map(model))));
        }
        return shown;
    }

    /** With its title and the words for those who do not see it: the first line of the template's text, and the rest. */
    private Map<String, Object> said(Map<String, Object> model) throws InputException {
        String[] lines = templates
                .render("figure.txt.ftl", Map.of("figure", model))
                .strip()
                .split("\n", 2);
        Map<String, Object> said = new LinkedHashMap<>(model);
        said.put("title", lines[0].strip());
        said.put("alt", lines.length < 2 ? "" : lines[1].strip().replaceAll("\\s+", " "));
        return said;
    }

    private Map<String, Object> draw(Map<String, Object> figure) throws InputException {
        String name = "figures/" + figure.get("id");
        String svg = templates.render("figure.svg.ftl", Map.of("figure", figure));
        drawn.put(name + ".svg", svg);
        return Fields.of("path", name + ".svg")
                .and("pngPath", png ? name + ".png" : "")
                .and("kind", figure.getOrDefault("kind", ""))
                .and("title", figure.getOrDefault("title", ""))
                .and("alt", figure.getOrDefault("alt", ""))
                .and("svg", unstyled(svg))
                .map();
    }

    /** Without its style sheet: a page has its own, and a raster has one scheme of colours only. */
    static String unstyled(String svg) {
        return STYLE.matcher(svg).replaceAll("");
    }

    /** SVG texts by their paths. */
    SortedMap<String, String> drawn() {
        return drawn;
    }
}
