package org.ellwand.report;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
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
    private static final double LEFT = 250;
    private static final double TOP = 36;
    private static final double WIDTH = 390;
    private static final double ROW_PX = 26;
    private static final double RIGHT_PX = 30;
    private static final double BELOW_PX = 86;
    private static final int NAME_CHARACTERS = 34;
    /** One claim alone has its own figure. */
    private static final int FEWEST = 2;

    private final List<Row> rows;
    private final Frame frame;

    private record Row(String name, double marginDb, double expandedDb) {}

    private MarginFigure(List<Row> rows) {
        this.rows = rows;
        this.frame = frame();
    }

    /** The model of the figure; absent where there are too few claims in decibels. */
    static Optional<Map<String, Object>> of(String id, ProductAudit product) {
        List<Row> rows = new ArrayList<>();
        int number = 0;
        for (ClaimAudit claim : product.claims()) {
            number++;
            String name =
                    number + ". " + claim.claim().id() + ": " + claim.verdict().word();
            claim.plain().flatMap(plain -> row(name, plain)).ifPresent(rows::add);
        }
        if (rows.size() < FEWEST) {
            return Optional.empty();
        }
        String title = product.product().name() + ": how far inside or outside what was claimed";
        return Optional.of(Fields.of("id", id)
                .and("title", title)
                .and("alt", title + ", in dB: " + alt(rows) + ". Claimed: 0 dB or more.")
                .and(new MarginFigure(rows).model())
                .map());
    }

    private static Optional<Row> row(String name, Judgement plain) {
        Interval limit = plain.rule().limit();
        boolean decibels = limit.unit() == Unit.DB || limit.unit().isLevel();
        Optional<Point> point = plain.point();
        if (!decibels || point.isEmpty() || plain.standardUncertainty().isEmpty()) {
            return Optional.empty();
        }
        double value = point.get().value();
        double margin = Math.min(value - limit.lower(), limit.upper() - value);
        return Optional.of(new Row(
                FigureParts.shortened(name, NAME_CHARACTERS),
                margin,
                2 * plain.standardUncertainty().getAsDouble()));
    }

    private static String alt(List<Row> rows) {
        return rows.stream()
                .map(row -> row.name() + " " + Numbers.fixed(row.marginDb(), 1) + " ± "
                        + Numbers.fixed(row.expandedDb(), 1))
                .collect(Collectors.joining("; "));
    }

    private Map<String, Object> model() {
        return Fields.of("kind", "range")
                .and("width", Frame.px(frame.right() + RIGHT_PX))
                .and("height", Frame.px(frame.bottom() + BELOW_PX))
                .and("plot", FigureParts.plot(frame))
                .and("xLabel", "distance from the nearest end of what was claimed (dB)")
                .and("yLabel", "")
                .and(
                        "xTicks",
                        Ticks.between(frame.fromX(), frame.toX(), Ticks.step(frame.toX() - frame.fromX(), 4)).stream()
                                .map(value -> FigureParts.tick(frame.x(value), Numbers.plain(value)))
                                .toList())
                .and("yTicks", List.of())
                .and("claimed", List.of(claimed()))
                .and("series", List.of())
                .and("rows", shapes())
                .and("legend", List.of("Dot: the number that decides; bar: U (k = 2). Right of zero it lies inside."))
                .map();
    }

    private Object claimed() {
        return Fields.of("from", Frame.px(frame.x(0)))
                .and("size", Frame.px(frame.right() - frame.x(0)))
                .and("hasFrom", true)
                .and("hasTo", false)
                .and("to", Frame.px(frame.right()))
                .and("label", "inside what was claimed")
                .and("labelAt", FigureParts.above(frame))
                .map();
    }

    private List<Object> shapes() {
        List<Object> shapes = new ArrayList<>();
        for (Row row : rows) {
            shapes.add(Fields.of("number", 0)
                    .and("name", row.name())
                    .and("y", Frame.px(frame.top() + 6 + ROW_PX * (shapes.size() + 0.5)))
                    .and("x", Frame.px(frame.x(row.marginDb())))
                    .and("from", Frame.px(frame.x(row.marginDb() - row.expandedDb())))
                    .and("to", Frame.px(frame.x(row.marginDb() + row.expandedDb())))
                    .and("hasBar", row.expandedDb() > 0)
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
        return new Frame(LEFT, TOP, WIDTH, rows.size() * ROW_PX + 12, from, to, 0, 1);
    }
}
