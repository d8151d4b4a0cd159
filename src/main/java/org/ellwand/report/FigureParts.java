package org.ellwand.report;

import java.util.List;
import java.util.Map;
import org.ellwand.acoustics.Bound;
import org.ellwand.amount.Interval;
import org.ellwand.amount.Unit;
import org.ellwand.claim.Rule;

/** What the figures have in common. They give places, numbers and keys; the words stand in the templates. */
final class FigureParts {
    private FigureParts() {}

    /** A figure with nothing in its plot yet. */
    static Fields of(String kind, Frame frame) {
        return Fields.of("kind", kind)
                .and("width", Frame.px(Sheet.WIDTH))
                .and("plot", plot(frame))
                .and("claimed", List.of())
                .and("xTicks", List.of())
                .and("yTicks", List.of())
                .and("series", List.of())
                .and("rows", List.of());
    }

    private static Map<String, Object> plot(Frame frame) {
        return Fields.of("left", Frame.px(frame.left()))
                .and("top", Frame.px(frame.top()))
                .and("right", Frame.px(frame.right()))
                .and("bottom", Frame.px(frame.bottom()))
                .and("width", Frame.px(frame.width()))
                .and("height", Frame.px(frame.height()))
                .map();
    }

    /** What is drawn, for axes, titles and the words about the figure. */
    static Map<String, Object> about(Rule rule, Unit unit) {
        boolean named = rule.quantity().equals("figure") || Wording.isCalculated(rule);
        return Fields.of("quantity", named ? rule.of().orElse(rule.quantity()) : rule.quantity())
                .and("first", rule.between().map(between -> between.first()).orElse(""))
                .and("second", rule.between().map(between -> between.second()).orElse(""))
                .and("ratio", rule.ratio())
                .and("calculated", Wording.isCalculated(rule))
                .and("statistic", rule.statistic().map(s -> s.text()).orElse(""))
                .and("unit", unit.symbol())
                .map();
    }

    static Object tick(double at, double value) {
        return Fields.of("at", Frame.px(at)).and("value", Numbers.plain(value)).map();
    }

    static List<Object> xTicks(Frame frame, double factor, int least) {
        double step = Ticks.step((frame.toX() - frame.fromX()) * factor, least);
        return Ticks.between(frame.fromX() * factor, frame.toX() * factor, step).stream()
                .map(value -> tick(frame.x(value / factor), value))
                .toList();
    }

    static List<Object> yTicks(Frame frame, double factor, double usual) {
        double step = Ticks.fewer(usual, (frame.toY() - frame.fromY()) * factor);
        return Ticks.between(frame.fromY() * factor, frame.toY() * factor, step).stream()
                .map(value -> tick(frame.y(value / factor), value))
                .toList();
    }

    /** A claimed range of levels, from edge to edge; an open end reaches the plot's own edge. */
    static Object claimedAcross(Frame frame, Rule rule, Shown shown) {
        Interval limit = rule.limit();
        return claimed(
                limit.hasUpper() ? frame.y(limit.upper()) : frame.top(),
                limit.hasLower() ? frame.y(limit.lower()) : frame.bottom(),
                limit.hasUpper(),
                limit.hasLower(),
                shown);
    }

    /** The same along the lower axis. */
    static Object claimedAlong(Frame frame, Rule rule, Shown shown) {
        Interval limit = rule.limit();
        return claimed(
                limit.hasLower() ? frame.x(limit.lower()) : frame.left(),
                limit.hasUpper() ? frame.x(limit.upper()) : frame.right(),
                limit.hasLower(),
                limit.hasUpper(),
                shown);
    }

    private static Object claimed(double from, double to, boolean hasFrom, boolean hasTo, Shown shown) {
        return Fields.of("from", Frame.px(from))
                .and("to", Frame.px(to))
                .and("size", Frame.px(to - from))
                .and("hasFrom", hasFrom)
                .and("hasTo", hasTo)
                .and("limit", shown.limitModel())
                .map();
    }

    /** The unit of the single bands, which a slope and a weighted sum do not share. */
    static Unit curveUnit(Rule rule) {
        Unit unit = rule.limit().unit();
        boolean level = unit.isLevel() && rule.between().isEmpty();
        return unit == Unit.DB || !level ? Unit.DB : Unit.DB_SPL;
    }

    static String bound(Bound bound) {
        return switch (bound) {
            case MEASURED -> "";
            case AT_LEAST -> "at least";
            case AT_MOST -> "at most";
        };
    }
}
