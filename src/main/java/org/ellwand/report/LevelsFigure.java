package org.ellwand.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.ellwand.amount.Unit;
import org.ellwand.audit.CellResult;

/** Levels against frequency under one setting and sound: the open ear and in place, a line for each ear. */
final class LevelsFigure {
    /** What the lines are called, as keys of which the template makes words; they tell how much room to leave. */
    static final List<String> NAMES = List.of("open ear", "in place");

    private final List<CellResult> cells;
    private final String panel;
    private final List<String> wearers;
    private final Frame frame;

    LevelsFigure(List<CellResult> cells, String panel, List<String> wearers, Frame frame) {
        this.cells = cells;
        this.panel = panel;
        this.wearers = wearers;
        this.frame = frame;
    }

    Map<String, Object> model(Unit unit) {
        List<Double> ends = List.of(meanEndY(true), meanEndY(false));
        List<Double> labels = LabelColumn.placed(ends, frame.top(), frame.bottom(), Sheet.LINE);
        return FigureParts.of("levels", frame)
                .and("panel", panel)
                .and("levelUnit", unit.symbol())
                .and("xTicks", FrequencyTicks.x(frame))
                .and("yTicks", FrequencyTicks.y(frame))
                .and("series", List.of(series(true, labels.get(0)), series(false, labels.get(1))))
                .and("wearers", wearers)
                .and(
                        "shows",
                        Fields.of("dbPerDecade", Numbers.plain(CurveScale.dbPerDecade(frame)))
                                .and("lines", cells.size())
                                .map())
                .map();
    }

    private static List<Double> levels(CellResult cell, boolean openEar) {
        return openEar ? cell.openEarDb() : cell.inPlaceDb();
    }

    private double meanEndY(boolean openEar) {
        return cells.stream()
                .mapToDouble(cell -> frame.y(levels(cell, openEar).get(last(cell))))
                .average()
                .orElseThrow();
    }

    private static int last(CellResult cell) {
        return IntStream.range(0, cell.bands().size())
                .boxed()
                .max(Comparator.comparingDouble(i -> hz(cell, i)))
                .orElseThrow();
    }

    private static double hz(CellResult cell, int band) {
        return cell.bands().get(band).hz().orElseThrow();
    }

    private Object series(boolean openEar, double labelY) {
        List<String> lines = new ArrayList<>();
        List<Object> markers = new ArrayList<>();
        for (CellResult cell : cells) {
            List<Double> levels = levels(cell, openEar);
            List<Integer> upwards = IntStream.range(0, levels.size())
                    .boxed()
                    .sorted(Comparator.comparingDouble(i -> hz(cell, i)))
                    .toList();
            lines.add(upwards.stream()
                    .map(i -> Frame.point(frame.x(Math.log10(hz(cell, i))), frame.y(levels.get(i))))
                    .collect(Collectors.joining(" ")));
            if (cells.size() > CurveFigure.FEW) {
                continue;
            }
            upwards.forEach(i -> markers.add(Fields.of("x", Frame.px(frame.x(Math.log10(hz(cell, i)))))
                    .and("y", Frame.px(frame.y(levels.get(i))))
                    .map()));
        }
        return Fields.of("number", openEar ? 0 : 1)
                .and("name", NAMES.get(openEar ? 0 : 1))
                .and("lines", lines)
                .and("markers", markers)
                .and("label", label(openEar, labelY))
                .and("lowest", end(openEar, Comparator.naturalOrder()))
                .and("highest", end(openEar, Comparator.reverseOrder()))
                .map();
    }

    private Object label(boolean openEar, double y) {
        CellResult first = cells.get(0);
        return Fields.of("x", Frame.px(frame.right() + Sheet.GAP))
                .and("y", Frame.px(y))
                .and("fromX", Frame.px(frame.x(Math.log10(hz(first, last(first))))))
                .and("fromY", Frame.px(meanEndY(openEar)))
                .map();
    }

    private record Level(double hz, double db) {}

    /** The lowest or highest level of any ear, and in which band. */
    private Object end(boolean openEar, Comparator<Double> order) {
        Level level = cells.stream()
                .flatMap(cell -> IntStream.range(0, cell.bands().size())
                        .mapToObj(i ->
                                new Level(hz(cell, i), levels(cell, openEar).get(i))))
                .min(Comparator.comparing(Level::db, order))
                .orElseThrow();
        return Fields.of("value", Numbers.fixed(level.db(), 1))
                .and("hz", Numbers.plain(level.hz()))
                .map();
    }
}
