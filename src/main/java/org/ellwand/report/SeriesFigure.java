package org.ellwand.report;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.ellwand.acoustics.Bound;
import org.ellwand.audit.CellResult;
import org.ellwand.audit.CellResult.AtLevel;
import org.ellwand.audit.Judgement;

/**
 * Gain (or level at the ear) against the level of the test sound, cell by cell, with the level that was looked for marked
 * on its line. A decibel is as long upwards as across, so that what takes off all that is added falls at 45°.
 */
final class SeriesFigure {
    private static final int NAME_CHARACTERS = 24;
    private static final double STEP_DB = 5;
    private static final double TICKS_DB = 10;
    private static final double LEAST_RANGE_DB = 10;
    private static final double LOWEST_PX = 120;
    private static final double HIGHEST_PX = 420;

    private final Judgement judgement;
    private final Shown shown;
    private final List<CellResult> cells;
    private final CurveNames names;
    private final Frame frame;

    private SeriesFigure(Judgement judgement, List<CellResult> cells) {
        this.judgement = judgement;
        this.shown = Shown.of(judgement.rule(), judgement.rule());
        this.cells = cells;
        this.names = CurveNames.together(cells);
        this.frame = frame();
    }

    /** Absent where nothing was looked for in a series. */
    static Optional<Map<String, Object>> of(Judgement judgement) {
        List<CellResult> cells = judgement.cells().stream()
                .filter(cell -> cell.series().size() > 1)
                .toList();
        return cells.isEmpty() ? Optional.empty() : Optional.of(new SeriesFigure(judgement, cells).model());
    }

    private Map<String, Object> model() {
        double step = frame.toY() - frame.fromY() > 25 ? TICKS_DB : STEP_DB;
        return FigureParts.of("series", frame)
                .and("about", FigureParts.about(judgement.rule(), shown.unit()))
                .and("xTicks", xTicks())
                .and("yTicks", FigureParts.yTicks(frame, 1, step))
                .and("claimed", List.of(FigureParts.claimedAlong(frame, judgement.rule(), shown)))
                .and("claim", shown.limitModel())
                .and("series", series())
                .and("shows", shows())
                .map();
    }

    private List<Object> xTicks() {
        double range = frame.toX() - frame.fromX();
        double step = Ticks.fewer(range > 25 ? TICKS_DB : STEP_DB, range);
        return Ticks.between(frame.fromX(), frame.toX(), step).stream()
                .map(level -> FigureParts.tick(frame.x(level), level))
                .toList();
    }

    private Frame frame() {
        DoubleSummaryStatistics across = new DoubleSummaryStatistics();
        DoubleSummaryStatistics up = new DoubleSummaryStatistics();
        for (CellResult cell : cells) {
            cell.series().forEach(at -> across.accept(at.levelDb()));
            cell.series().forEach(at -> up.accept(at.value()));
            across.accept(cell.value());
        }
        ends().forEach(across::accept);
        double left = STEP_DB * Math.floor((across.getMin() - 1) / STEP_DB);
        double right = STEP_DB * Math.ceil((across.getMax() + 1) / STEP_DB);
        double bottom = STEP_DB * Math.floor((up.getMin() - 1) / STEP_DB);
        double top = Math.max(STEP_DB * Math.ceil((up.getMax() + 1) / STEP_DB), bottom + LEAST_RANGE_DB);
        List<String> labels =
                cells.size() == 1 ? List.of() : cells.stream().map(this::label).toList();
        double width = Sheet.WIDTH - Sheet.LEFT - Sheet.namesPx(labels);
        double height = (top - bottom) * width / (right - left);
        return new Frame(
                Sheet.LEFT,
                Sheet.TOP,
                width,
                Math.max(LOWEST_PX, Math.min(HIGHEST_PX, height)),
                left,
                right,
                bottom,
                top);
    }

    private String label(CellResult cell) {
        return Sheet.shortened(names.name(cell), NAME_CHARACTERS);
    }

    private List<Double> ends() {
        return IntStream.of(0, 1)
                .mapToObj(i -> i == 0
                        ? judgement.rule().limit().lower()
                        : judgement.rule().limit().upper())
                .filter(Double::isFinite)
                .toList();
    }

    private List<Object> series() {
        List<Double> labels = LabelColumn.placed(
                cells.stream().map(cell -> frame.y(last(cell).value())).toList(),
                frame.top(),
                frame.bottom(),
                Sheet.LINE);
        return IntStream.range(0, cells.size())
                .mapToObj(i -> series(i, labels.get(i)))
                .toList();
    }

    private static AtLevel last(CellResult cell) {
        return cell.series().get(cell.series().size() - 1);
    }

    private Object series(int index, double labelY) {
        CellResult cell = cells.get(index);
        String line = cell.series().stream()
                .map(at -> Frame.point(frame.x(at.levelDb()), frame.y(at.value())))
                .collect(Collectors.joining(" "));
        return Fields.of("number", index)
                .and("name", names.name(cell))
                .and("lines", List.of(line))
                .and("markers", cell.series().stream().map(this::marker).toList())
                .and("label", label(cell, labelY))
                .and("mark", mark(cell))
                .map();
    }

    private Object marker(AtLevel at) {
        return Fields.of("x", Frame.px(frame.x(at.levelDb())))
                .and("y", Frame.px(frame.y(at.value())))
                .map();
    }

    private Object label(CellResult cell, double y) {
        return Fields.of("text", cells.size() == 1 ? "" : label(cell))
                .and("x", Frame.px(frame.right() + Sheet.GAP))
                .and("y", Frame.px(y))
                .and("fromX", Frame.px(frame.x(last(cell).levelDb())))
                .and("fromY", Frame.px(frame.y(last(cell).value())))
                .map();
    }

    /** The level that was found, as a place on the drawn line. */
    private Object mark(CellResult cell) {
        boolean measured = cell.bound() == Bound.MEASURED;
        double half = measured ? 2 * cell.standardUncertainty().orElse(0) : 0;
        return Fields.of("x", Frame.px(frame.x(cell.value())))
                .and("y", Frame.px(frame.y(onLine(cell.series(), cell.value()))))
                .and("from", Frame.px(Math.max(frame.left(), frame.x(cell.value() - half))))
                .and("to", Frame.px(Math.min(frame.right(), frame.x(cell.value() + half))))
                .and("hasBar", half > 0)
                .and("bound", FigureParts.bound(cell.bound()))
                .and("value", measured ? shown.value(cell.value()) : shown.written(cell.value()))
                .and("expanded", measured ? shown.uncertainty(cell.standardUncertainty(), 2) : "")
                .map();
    }

    /** Height of the drawn line: straight between its points, and beyond its ends as high as there. */
    private static double onLine(List<AtLevel> series, double levelDb) {
        for (int i = 1; i < series.size(); i++) {
            AtLevel before = series.get(i - 1);
            AtLevel after = series.get(i);
            if (levelDb <= after.levelDb()) {
                double share = Math.max(0, (levelDb - before.levelDb()) / (after.levelDb() - before.levelDb()));
                return before.value() + share * (after.value() - before.value());
            }
        }
        return series.get(series.size() - 1).value();
    }

    private Map<String, Object> shows() {
        boolean known =
                cells.stream().anyMatch(cell -> cell.standardUncertainty().isPresent());
        return Fields.of("interval", known ? "drawn" : "unknown")
                .and("bounds", cells.stream().anyMatch(cell -> cell.bound() != Bound.MEASURED))
                .map();
    }
}
