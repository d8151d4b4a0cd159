package org.ellwand.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import org.ellwand.amount.Unit;
import org.ellwand.audit.CellResult;
import org.ellwand.audit.ClaimAudit;
import org.ellwand.audit.Judgement;
import org.ellwand.audit.Point;
import org.ellwand.check.Finding;
import org.ellwand.claim.Rule;

/** What {@code figure.svg.ftl} sees, with the words for those who do not see the figure. */
final class FigureModel {
    private FigureModel() {}

    /**
     * The figures of a claim: its curves, and its single numbers where there are no curves or where the limit is not one
     * for the bands (a slope, a weighted sum). None where nothing was measured.
     */
    static List<Map<String, Object>> of(String id, String product, ClaimAudit audited, List<Finding> findings) {
        Judgement plain = audited.plain().map(Worst::of).orElse(null);
        if (plain == null || plain.cells().isEmpty()) {
            return List.of();
        }
        String title = product + ", " + audited.claim().id() + ": " + Wording.quantity(plain.rule());
        List<Map<String, Object>> figures = new ArrayList<>();
        boolean curves = plain.cells().stream().anyMatch(CurveFigure::isCurve);
        if (curves) {
            Map<String, Object> shapes = new CurveFigure(plain, findings).model();
            figures.add(figure(id, title, alt(plain, FigureModel::curve), shapes));
        }
        if (!curves || !Wording.curveComparesWithLimit(plain.rule())) {
            String subject = Wording.subject(plain.rule());
            Map<String, Object> shapes = new RangeFigure(plain).model();
            String full = subject.isEmpty() ? title : title + ", " + subject;
            figures.add(figure(curves ? id + "_value" : id, full, alt(plain, FigureModel::number), shapes));
        }
        return figures;
    }

    private static Map<String, Object> figure(String id, String title, String alt, Map<String, Object> shapes) {
        return Fields.of("id", id)
                .and("title", title)
                .and("alt", alt)
                .and(shapes)
                .map();
    }

    private static String alt(Judgement plain, BiFunction<CellResult, Rule, String> words) {
        CellNames names = new CellNames(plain.cells());
        String cells = plain.cells().stream()
                .map(cell -> Wording.cell(plain.rule(), names, cell) + " " + words.apply(cell, plain.rule()))
                .collect(Collectors.joining("; "));
        return sentence(Wording.quantity(plain.rule())) + ": " + cells + ". "
                + sentence(FigureParts.claimed(plain.rule())) + ".";
    }

    private static String number(CellResult cell, Rule rule) {
        Unit unit = rule.limit().unit();
        return Numbers.withUnit(Numbers.value(cell.value(), unit, rule.limit()), unit)
                + (Wording.isCalculated(rule) ? OptionalDouble.empty() : cell.standardUncertainty())
                        .stream()
                                .mapToObj(u -> " (U = " + Numbers.withUnit(Numbers.expanded(u), unit) + ")")
                                .collect(Collectors.joining());
    }

    private static String curve(CellResult cell, Rule rule) {
        return CurveFigure.isCurve(cell)
                ? "between " + extreme(cell, Comparator.naturalOrder()) + " and "
                        + extreme(cell, Comparator.reverseOrder())
                : number(cell, rule);
    }

    private static String extreme(CellResult cell, Comparator<Double> order) {
        Point point = cell.bands().stream()
                .filter(band -> band.hz().isPresent())
                .min(Comparator.comparing(Point::value, order))
                .orElseThrow();
        return Numbers.fixed(point.value(), 1) + " dB at "
                + Numbers.hertz(point.hz().getAsDouble());
    }

    private static String sentence(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
