package org.ellwand.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ellwand.audit.ClaimAudit;
import org.ellwand.audit.ProductAudit;
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

    /** Draws a claim's figures; none where there is nothing to draw. */
    List<Object> draw(String id, String product, ClaimAudit claim, List<Finding> findings) throws InputException {
        List<Object> shown = new ArrayList<>();
        for (Map<String, Object> model : FigureModel.of(id, product, claim, findings)) {
            shown.add(draw(Clean.map(model)));
        }
        return shown;
    }

    /** Draws the figure of a product's claims together; none where there is nothing to draw. */
    List<Object> draw(String anchor, ProductAudit product) throws InputException {
        Optional<Map<String, Object>> model = MarginFigure.of(anchor + "_claims", product);
        return model.isPresent() ? List.of(draw(Clean.map(model.get()))) : List.of();
    }

    private Map<String, Object> draw(Map<String, Object> figure) throws InputException {
        String name = "figures/" + figure.get("id");
        String svg = templates.render("figure.svg.ftl", Map.of("figure", figure));
        drawn.put(name + ".svg", svg);
        return Fields.of("path", name + ".svg")
                .and("pngPath", png ? name + ".png" : "")
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
