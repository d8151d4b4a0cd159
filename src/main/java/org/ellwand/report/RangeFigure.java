package org.ellwand.report;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.ellwand.amount.Interval;
import org.ellwand.amount.Unit;
import org.ellwand.audit.CellResult;
import org.ellwand.audit.Judgement;

/** Single numbers: per cell a dot with a bar, over the claimed range. */
final class RangeFigure {
    private static final double LEFT = 190;
    private static final double TOP = 36;
    private static final double WIDTH = 450;
    private static final double ROW_PX = 30;
    private static final double RIGHT_PX = 30;
    private static final double BELOW_PX = 86;
    private static final int NAME_CHARACTERS = 26;

    private final Judgement judgement;
    private final List<CellResult> cells;
    private final CellNames names;
    private final Frame frame;

    RangeFigure(Judgement judgement) {
        this.judgement = judgement;
        this.cells = judgement.cells();
        this.names = new CellNames(cells);
        this.frame = frame();
    }

    Map<String, Object> model() {
        Unit unit = judgement.rule().limit().unit();
        return Fields.of("kind", "range")
                .and("width", Frame.px(frame.right() + RIGHT_PX))
                .and("height", Frame.px(frame.bottom() + BELOW_PX))
                .and("plot", FigureParts.plot(frame))
                .and("xLabel", Wording.axis(judgement.rule(), unit))
                .and("yLabel", "")
                .and("xTicks", xTicks())
                .and("yTicks", List.of())
                .and("claimed", List.of(claimed()))
                .and("series", List.of())
                .and("rows", rows())
                .and("legend", List.of(legend()))
                .map();
    }

    private Frame frame() {
        DoubleSummaryStatistics shown = new DoubleSummaryStatistics();
        for (CellResult cell : cells) {
            Interval bar = bar(cell);
            shown.accept(bar.lower());
            shown.accept(bar.upper());
        }
        Interval limit = judgement.rule().limit();
        shown.accept(limit.hasLower() ? limit.lower() : shown.getMin());
        shown.accept(limit.hasUpper() ? limit.upper() : shown.getMax());
        double range = shown.getMax() > shown.getMin() ? shown.getMax() - shown.getMin() : 1;
        double step = Ticks.step(range, 4);
        double from = Math.floor((shown.getMin() - range * 0.08) / step) * step;
        double to = Math.ceil((shown.getMax() + range * 0.08) / step) * step;
        return new Frame(LEFT, TOP, WIDTH, cells.size() * ROW_PX + 12, from, to, 0, 1);
    }

    private List<Object> xTicks() {
        return Ticks.between(frame.fromX(), frame.toX(), Ticks.step(frame.toX() - frame.fromX(), 4)).stream()
                .map(value -> FigureParts.tick(frame.x(value), Numbers.plain(value)))
                .toList();
    }

    private Object claimed() {
        Interval limit = judgement.rule().limit();
        double left = limit.hasLower() ? frame.x(limit.lower()) : frame.left();
        double right = limit.hasUpper() ? frame.x(limit.upper()) : frame.right();
        return Fields.of("from", Frame.px(left))
                .and("size", Frame.px(right - left))
                .and("hasFrom", limit.hasLower())
                .and("hasTo", limit.hasUpper())
                .and("to", Frame.px(right))
                .and("label", FigureParts.claimed(judgement.rule()))
                .and("labelAt", FigureParts.above(frame))
                .map();
    }

    private List<Object> rows() {
        return IntStream.range(0, cells.size()).mapToObj(this::row).toList();
    }

    private Object row(int index) {
        CellResult cell = cells.get(index);
        Interval bar = bar(cell);
        return Fields.of("number", index)
                .and("name", FigureParts.shortened(Wording.cell(judgement.rule(), names, cell), NAME_CHARACTERS))
                .and("y", Frame.px(frame.top() + 6 + ROW_PX * (index + 0.5)))
                .and("x", Frame.px(frame.x(cell.value())))
                .and("from", Frame.px(frame.x(bar.lower())))
                .and("to", Frame.px(frame.x(bar.upper())))
                .and(
                        "hasBar",
                        !Wording.isCalculated(judgement.rule())
                                && cell.standardUncertainty().isPresent())
                .map();
    }

    /** The judged interval for the cell that decides; for the others only their standard uncertainty is at hand. */
    private Interval bar(CellResult cell) {
        Unit unit = judgement.rule().limit().unit();
        boolean decides = Deciding.cell(judgement).equals(Optional.of(cell));
        if (decides && judgement.lower().isPresent() && judgement.upper().isPresent()) {
            double lower = Math.min(judgement.lower().getAsDouble(), cell.value());
            return Interval.of(lower, Math.max(judgement.upper().getAsDouble(), cell.value()), unit);
        }
        double expanded = 2 * cell.standardUncertainty().orElse(0);
        return Interval.of(cell.value() - expanded, cell.value() + expanded, unit);
    }

    private String legend() {
        if (Wording.isCalculated(judgement.rule())) {
            return "Dot: calculated value.";
        }
        if (cells.stream().noneMatch(cell -> cell.standardUncertainty().isPresent())) {
            return "Dot: measured value. The spread is not known.";
        }
        return cells.size() == 1
                ? "Dot: measured value; bar: its 95 % interval."
                : "Dot: measured value; bar: 95 % interval of the deciding one, twice the standard uncertainty of the others.";
    }
}
