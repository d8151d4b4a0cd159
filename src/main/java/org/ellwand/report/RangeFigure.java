package org.ellwand.report;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.ellwand.acoustics.Bound;
import org.ellwand.amount.Interval;
import org.ellwand.amount.Unit;
import org.ellwand.audit.CellResult;
import org.ellwand.audit.Judgement;

/** Single numbers, ear by ear (or stimulus by stimulus): per cell a dot with a bar, over the claimed range. */
final class RangeFigure {
    private static final double ROW_PX = 28;
    private static final double LEAST_LEFT = 90;
    private static final int NAME_CHARACTERS = 24;

    private final Judgement judgement;
    private final List<CellResult> cells;
    private final CellNames names;
    private final Shown shown;
    private final Frame frame;

    RangeFigure(Judgement judgement) {
        this.judgement = judgement;
        this.cells = judgement.cells();
        this.names = new CellNames(cells);
        this.shown = Shown.of(judgement.rule(), judgement.rule());
        this.frame = frame();
    }

    Map<String, Object> model() {
        return FigureParts.of("range", frame)
                .and("about", FigureParts.about(judgement.rule(), shown.unit()))
                .and("xTicks", FigureParts.xTicks(frame, shown.factor(), 4))
                .and("claimed", List.of(FigureParts.claimedAlong(frame, judgement.rule(), shown)))
                .and("claim", shown.limitModel())
                .and(
                        "rows",
                        IntStream.range(0, cells.size()).mapToObj(this::row).toList())
                .and("shows", shows())
                .map();
    }

    private Frame frame() {
        DoubleSummaryStatistics spread = new DoubleSummaryStatistics();
        for (CellResult cell : cells) {
            Interval bar = bar(cell);
            spread.accept(bar.lower());
            spread.accept(bar.upper());
        }
        Interval limit = judgement.rule().limit();
        spread.accept(limit.hasLower() ? limit.lower() : spread.getMin());
        spread.accept(limit.hasUpper() ? limit.upper() : spread.getMax());
        double range = spread.getMax() > spread.getMin() ? spread.getMax() - spread.getMin() : 1;
        double step = Ticks.step(range, 4);
        double from = Math.floor((spread.getMin() - range * 0.08) / step) * step;
        double to = Math.ceil((spread.getMax() + range * 0.08) / step) * step;
        double left = Math.max(
                LEAST_LEFT,
                Sheet.GAP + 6 + Sheet.widestPx(cells.stream().map(this::name).toList()));
        return new Frame(
                left, Sheet.LOW_TOP, Sheet.WIDTH - left - 2 * Sheet.RIGHT, cells.size() * ROW_PX, from, to, 0, 1);
    }

    private String name(CellResult cell) {
        return Sheet.shortened(names.tellingName(cell), NAME_CHARACTERS);
    }

    private Object row(int index) {
        CellResult cell = cells.get(index);
        Interval bar = bar(cell);
        return Fields.of("number", index)
                .and("name", names.tellingName(cell))
                .and("label", name(cell))
                .and("y", Frame.px(frame.top() + ROW_PX * (index + 0.5)))
                .and("x", Frame.px(frame.x(cell.value())))
                .and("from", Frame.px(frame.x(bar.lower())))
                .and("to", Frame.px(frame.x(bar.upper())))
                .and("hasBar", hasBar(cell))
                .and("bound", FigureParts.bound(cell.bound()))
                .and("value", cell.bound() == Bound.MEASURED ? shown.value(cell.value()) : shown.written(cell.value()))
                .and("expanded", hasBar(cell) ? shown.uncertainty(cell.standardUncertainty(), 2) : "")
                .map();
    }

    /** A calculated value has no spread of its own, and of a bound nothing tells how far off the value lies. */
    private boolean hasBar(CellResult cell) {
        return !Wording.isCalculated(judgement.rule())
                && cell.bound() == Bound.MEASURED
                && cell.standardUncertainty().isPresent();
    }

    private boolean decides(CellResult cell) {
        return Deciding.cell(judgement).equals(Optional.of(cell));
    }

    /** The judged interval for the cell that decides; for the others only their standard uncertainty is at hand. */
    private Interval bar(CellResult cell) {
        Unit unit = judgement.rule().limit().unit();
        if (!hasBar(cell)) {
            return Interval.of(cell.value(), cell.value(), unit);
        }
        if (decides(cell) && judgement.lower().isPresent() && judgement.upper().isPresent()) {
            double lower = Math.min(judgement.lower().getAsDouble(), cell.value());
            return Interval.of(lower, Math.max(judgement.upper().getAsDouble(), cell.value()), unit);
        }
        double expanded = 2 * cell.standardUncertainty().orElse(0);
        return Interval.of(cell.value() - expanded, cell.value() + expanded, unit);
    }

    private Map<String, Object> shows() {
        boolean bars = cells.stream().anyMatch(this::hasBar);
        return Fields.of("interval", bars ? "drawn" : "unknown")
                .and("bounds", cells.stream().anyMatch(cell -> cell.bound() != Bound.MEASURED))
                .and("others", cells.stream().anyMatch(cell -> hasBar(cell) && !decides(cell)))
                .map();
    }
}
