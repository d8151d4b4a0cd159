package org.ellwand.report;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ellwand.audit.ClaimAudit;
import org.ellwand.check.Finding;
import org.ellwand.input.InputException;

/** Draws the figures of a report, keeps them by path, and tells the pages what they need to show them. */
final class FigureDrawer {
    private final Templates templates;
    private final boolean png;
    private final SortedMap<String, String> drawn = new TreeMap<>();

    FigureDrawer(Templates templates, boolean png) {
        this.templates = templates;
        this.png = png;
    }

    /** Draws a claim's figure; the map is empty where there is nothing to draw. */
    Map<String, Object> draw(String id, String product, ClaimAudit claim, List<Finding> findings)
            throws InputException {
        Optional<Map<String, Object>> model = FigureModel.of(id, product, claim, findings);
        if (model.isEmpty()) {
            return Map.of();
        }
        String path = "figures/" + id + ".svg";
        Map<String, Object> figure = Clean.map(model.get());
        String svg = templates.render("figure.svg.ftl", Map.of("figure", figure));
        drawn.put(path, svg);
        return Fields.of("path", path)
                .and("pngPath", png ? "figures/" + id + ".png" : "")
                .and("title", figure.getOrDefault("title", ""))
                .and("alt", figure.getOrDefault("alt", ""))
                .and("svg", svg)
                .map();
    }

    /** SVG texts by their paths. */
    SortedMap<String, String> drawn() {
        return drawn;
    }
}
