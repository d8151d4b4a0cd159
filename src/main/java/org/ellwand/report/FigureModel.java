package org.ellwand.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ellwand.audit.CellResult;
import org.ellwand.audit.ClaimAudit;
import org.ellwand.audit.Judgement;
import org.ellwand.audit.ProductAudit;
import org.ellwand.check.Finding;
import org.ellwand.claim.Statistic;
import org.ellwand.measurement.Session;

/**
 * What {@code figure.svg.ftl} and {@code figure.txt.ftl} see: which figures there are, and their shapes. A kind of figure
 * is there only where the audit holds its data.
 */
final class FigureModel {
    private final String id;
    private final String product;
    private final String claim;
    private final List<Map<String, Object>> figures = new ArrayList<>();

    private FigureModel(String id, String product, String claim) {
        this.id = id;
        this.product = product;
        this.claim = claim;
    }

    /**
     * The figures of a claim: the series that its number was found in; its curves; its numbers cell by cell, where nothing
     * else shows them or there are several cells; the traces they were read off. None where nothing was measured.
     */
    static List<Map<String, Object>> of(
            String id, String product, ClaimAudit audited, List<Finding> findings, List<Session> sessions) {
        FigureModel model = new FigureModel(id, product, audited.claim().id());
        audited.plain().filter(plain -> !plain.cells().isEmpty()).ifPresent(plain -> {
            Judgement shown = Worst.of(plain);
            model.add(shown, findings, sessions);
            model.count(shown.cells().size(), plain.cells().size());
        });
        return model.figures;
    }

    /** The figures of a product's claims together: how far inside or outside, the editions, the levels judged by. */
    static List<Map<String, Object>> of(String id, ProductAudit product, List<Session> sessions) {
        FigureModel model = new FigureModel(id, product.product().name(), "");
        MarginFigure.of(product).ifPresent(shapes -> model.add("_claims", shapes));
        model.addAll("_editions", EditionFigures.of(product));
        model.addAll("_levels", LevelsFigures.of(product, sessions));
        return model.figures;
    }

    private void add(Judgement plain, List<Finding> findings, List<Session> sessions) {
        Optional<Map<String, Object>> series = SeriesFigure.of(plain);
        series.ifPresent(shapes -> add("_series", shapes));
        List<CellResult> curves =
                plain.cells().stream().filter(CurveFigure::isCurve).toList();
        addAll("", curves.isEmpty() ? List.of() : curves(plain, curves, findings));
        boolean shown = series.isPresent() || (!curves.isEmpty() && Wording.curveComparesWithLimit(plain.rule()));
        if (!shown || isCellByCell(plain)) {
            add(curves.isEmpty() && series.isEmpty() ? "" : "_value", new RangeFigure(plain).model());
        }
        addAll("_traces", TraceFigure.of(plain, sessions));
    }

    /** Of a limit for every band the curves show more than one number of each could. */
    private static boolean isCellByCell(Judgement plain) {
        return plain.cells().size() > 1 && !plain.rule().statistic().equals(Optional.of(Statistic.EVERY_BAND));
    }

    private static List<Map<String, Object>> curves(Judgement plain, List<CellResult> cells, List<Finding> findings) {
        CurveNames names = CurveNames.of(cells, CurveFigure.FEW);
        Frame frame = CurveScale.of(plain, Wording.curveComparesWithLimit(plain.rule()), names.roomPx(cells));
        List<Map<String, Object>> figures = new ArrayList<>();
        names.panels(cells).forEach((panel, group) -> {
            Map<String, Object> shapes = new CurveFigure(plain, group, findings, names, frame).model();
            shapes.put("panel", panel);
            figures.add(shapes);
        });
        return figures;
    }

    private void addAll(String suffix, List<Map<String, Object>> shapes) {
        for (int i = 0; i < shapes.size(); i++) {
            add(shapes.size() == 1 ? suffix : suffix + "_" + (i + 1), shapes.get(i));
        }
    }

    /** How many cells of how many are shown. */
    private void count(int cells, int inAll) {
        figures.forEach(figure ->
                figure.putAll(Fields.of("cells", cells).and("cellsInAll", inAll).map()));
    }

    private void add(String suffix, Map<String, Object> shapes) {
        figures.add(Fields.of("id", id + suffix)
                .and("product", product)
                .and("claimId", claim)
                .and("panel", "")
                .and(shapes)
                .map());
    }
}
