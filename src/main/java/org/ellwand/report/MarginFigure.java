package org.ellwand.report;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ellwand.acoustics.Bound;
import org.ellwand.amount.Interval;
import org.ellwand.amount.Unit;
import org.ellwand.audit.ClaimAudit;
import org.ellwand.audit.Judgement;
import org.ellwand.audit.Point;
import org.ellwand.audit.ProductAudit;

/**
 * All claims of a product that are in decibels, one row each: how far the number that decides lies inside what was claimed
 * (to the right of zero) or outside, with U.
 */
final class MarginFigure {
    private static final double ROW_PX = 26;
    private static final int NAME_CHARACTERS = 24;
    /** What number and verdict add to a claim's name. */
    private static final double MORE_PX = Sheet.textPx("00. : marginal");
    /** One claim alone has its own figure. */
    private static final int FEWEST = 2;

    private final List<Row> rows;
    private final Frame frame;

    private record Row(int number, ClaimAudit claim, double marginDb, double expandedDb, Bound bound) {
        String label() {
            return Sheet.shortened(claim.claim().id(), NAME_CHARACTERS);
        }
    }

    private MarginFigure(List<Row> rows) {
        this.rows = rows;
        this.frame = frame();
    }

    /** The shapes of the figure; absent where there are too few claims in decibels. */
    static Optional<Map<String, Object>> of(ProductAudit product) {
        List<Row> rows = new ArrayList<>();
        int number = 0;
        for (ClaimAudit claim : product.claims()) {
            int place = ++number;
            claim.plain().flatMap(plain -> row(place, claim, plain)).ifPresent(rows::add);
        }
        return rows.size() < FEWEST ? Optional.empty() : Optional.of(new MarginFigure(rows).model());
    }

    private static Optional<Row> row(int number, ClaimAudit claim, Judgement plain) {
        Interval limit = plain.rule().limit();
        boolean decibels = limit.unit() == Unit.DB || limit.unit().isLevel();
        Optional<Point> point = plain.point();
        if (!decibels || point.isEmpty() || plain.standardUncertainty().isEmpty()) {
            return Optional.empty();
        }
        double above = point.get().value() - limit.lower();
        double below = limit.upper() - point.get().value();
        Bound bound = above <= below ? point.get().bound() : point.get().bound().negated();
        double expanded =
                bound == Bound.MEASURED ? 2 * plain.standardUncertainty().getAsDouble() : 0;
        return Optional.of(new Row(number, claim, Math.min(above, below), expanded, bound));
    }

    private Map<String, Object> model() {
        return FigureParts.of("margin", frame)
                .and("xTicks", FigureParts.xTicks(frame, 1, 4))
                .and("claimed", List.of(inside()))
                .and("rows", shapes())
                .and(
                        "shows",
                        Fields.of("bounds", rows.stream().anyMatch(row -> row.bound() != Bound.MEASURED))
                                .map())
                .map();
    }

    private Object inside() {
        return Fields.of("from", Frame.px(frame.x(0)))
                .and("to", Frame.px(frame.right()))
                .and("size", Frame.px(frame.right() - frame.x(0)))
                .and("hasFrom", true)
                .and("hasTo", false)
                .map();
    }

    private List<Object> shapes() {
        List<Object> shapes = new ArrayList<>();
        for (Row row : rows) {
            shapes.add(Fields.of("number", 0)
                    .and("claimNumber", row.number())
                    .and("name", row.claim().claim().id())
                    .and("label", row.label())
                    .and("verdict", row.claim().verdict().word())
                    .and("y", Frame.px(frame.top() + ROW_PX * (shapes.size() + 0.5)))
                    .and("x", Frame.px(frame.x(row.marginDb())))
                    .and("from", Frame.px(frame.x(row.marginDb() - row.expandedDb())))
                    .and("to", Frame.px(frame.x(row.marginDb() + row.expandedDb())))
                    .and("hasBar", row.expandedDb() > 0)
                    .and("bound", FigureParts.bound(row.bound()))
                    .and("value", Numbers.fixed(row.marginDb(), 1))
                    .and("expanded", row.expandedDb() > 0 ? Numbers.fixed(row.expandedDb(), 1) : "")
                    .map());
        }
        return shapes;
    }

    private Frame frame() {
        DoubleSummaryStatistics shown = new DoubleSummaryStatistics();
        shown.accept(-1);
        shown.accept(1);
        rows.forEach(row -> {
            shown.accept(row.marginDb() - row.expandedDb());
            shown.accept(row.marginDb() + row.expandedDb());
        });
        double step = Ticks.step(shown.getMax() - shown.getMin(), 4);
        double from = Math.floor(shown.getMin() / step) * step;
        double to = Math.ceil(shown.getMax() / step) * step;
        double left = Sheet.GAP
                + 6
                + MORE_PX
                + Sheet.widestPx(rows.stream().map(Row::label).toList());
        return new Frame(
                left, Sheet.LOW_TOP, Sheet.WIDTH - left - 2 * Sheet.RIGHT, rows.size() * ROW_PX, from, to, 0, 1);
    }
}
