package org.ellwand.report;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.ellwand.audit.CellResult;
import org.ellwand.audit.ClaimAudit;
import org.ellwand.audit.Judgement;
import org.ellwand.audit.Point;
import org.ellwand.check.Finding;
import org.ellwand.claim.Rule;

/** What {@code figure.svg.ftl} sees, with the words for those who do not see the figure. */
final class FigureModel {
    private FigureModel() {}

    /** The figure of a claim; absent where nothing was measured. */
    static Optional<Map<String, Object>> of(String id, String product, ClaimAudit audited, List<Finding> findings) {
        return audited.plain()
                .filter(plain -> !plain.cells().isEmpty())
                .map(plain -> Fields.of("id", id)
                        .and("title", product + ", " + audited.claim().id() + ": " + Wording.quantity(plain.rule()))
                        .and("alt", alt(plain))
                        .and(shapes(plain, findings))
                        .map());
    }

    private static Map<String, Object> shapes(Judgement plain, List<Finding> findings) {
        boolean curves = plain.cells().stream().anyMatch(CurveFigure::isCurve);
        return curves ? new CurveFigure(plain, findings).model() : new RangeFigure(plain).model();
    }

    private static String alt(Judgement plain) {
        CellNames names = new CellNames(plain.cells());
        String cells = plain.cells().stream()
                .map(cell -> names.shortName(cell) + " " + cell(cell, plain.rule()))
                .collect(Collectors.joining("; "));
        return sentence(Wording.quantity(plain.rule())) + ": " + cells + ". "
                + sentence(FigureParts.claimed(plain.rule())) + ".";
    }

    private static String cell(CellResult cell, Rule rule) {
        if (!CurveFigure.isCurve(cell)) {
            return value(cell.value(), rule)
                    + cell.standardUncertainty().stream()
                            .mapToObj(u -> " (U = "
                                    + Numbers.withUnit(
                                            Numbers.expanded(u), rule.limit().unit()) + ")")
                            .collect(Collectors.joining());
        }
        return "between " + extreme(cell, Comparator.naturalOrder()) + " and "
                + extreme(cell, Comparator.reverseOrder());
    }

    private static String extreme(CellResult cell, Comparator<Double> order) {
        Point point = cell.bands().stream()
                .filter(band -> band.hz().isPresent())
                .min(Comparator.comparing(Point::value, order))
                .orElseThrow();
        return Numbers.fixed(point.value(), 1) + " dB at "
                + Numbers.hertz(point.hz().getAsDouble());
    }

    private static String value(double value, Rule rule) {
        return Numbers.withUnit(
                Numbers.value(value, rule.limit().unit(), rule.limit()),
                rule.limit().unit());
    }

    private static String sentence(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
