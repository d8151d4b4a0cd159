package org.ellwand.report;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.ellwand.audit.CellResult;
import org.ellwand.audit.Judgement;
import org.ellwand.audit.Point;
import org.ellwand.check.Finding;

/**
 * A quantity against frequency: each cell's mean curve with its interval, its insertions, and the claimed range. Where
 * there are many cells, their means alone.
 */
final class CurveFigure {
    static final int NAME_CHARACTERS = 16;
    /** With more curves than that, intervals and insertions would hide each other. */
    static final int FEW = 4;

    private final Judgement judgement;
    private final List<CellResult> cells;
    private final List<Finding> findings;
    private final CurveNames names;
    private final Frame frame;

    /**
     * One of the sibling figures of a rule, on axes that all of them share.
     *
     * @param cells those shown here
     */
    CurveFigure(Judgement judgement, List<CellResult> cells, List<Finding> findings, CurveNames names, Frame frame) {
        this.judgement = judgement;
        this.cells = cells;
        this.findings = findings;
        this.names = names;
        this.frame = frame;
    }

    static boolean isCurve(CellResult cell) {
        return cell.bands().stream().filter(band -> band.hz().isPresent()).count() > 1;
    }

    Map<String, Object> model() {
        Shown shown = Shown.of(judgement.rule(), judgement.rule());
        boolean compares = Wording.curveComparesWithLimit(judgement.rule());
        return FigureParts.of("curve", frame)
                .and("about", FigureParts.about(judgement.rule(), FigureParts.curveUnit(judgement.rule())))
                .and("xTicks", FrequencyTicks.x(frame))
                .and("yTicks", FrequencyTicks.y(frame))
                .and(
                        "claimed",
                        compares ? List.of(FigureParts.claimedAcross(frame, judgement.rule(), shown)) : List.of())
                .and("claim", shown.limitModel())
                .and("series", series())
                .and("shows", shows())
                .map();
    }

    private boolean isFew() {
        return cells.size() <= FEW;
    }

    private List<Object> series() {
        List<Double> labels =
                LabelColumn.placed(cells.stream().map(this::endY).toList(), frame.top(), frame.bottom(), Sheet.LINE);
        return IntStream.range(0, cells.size())
                .mapToObj(i -> series(i, labels.get(i)))
                .toList();
    }

    private Object series(int index, double labelY) {
        CellResult cell = cells.get(index);
        List<Point> bands = curve(cell);
        return Fields.of("number", index)
                .and("name", names.name(cell))
                .and("areas", isFew() ? CurveShapes.areas(frame, bands) : List.of())
                .and("thin", isFew() ? CurveShapes.thin(frame, cell) : List.of())
                .and("lines", CurveShapes.lines(frame, bands))
                .and("markers", CurveShapes.markers(frame, bands))
                .and("arrows", CurveShapes.arrows(frame, cell, findings, judgement.rule()))
                .and("label", label(bands.get(bands.size() - 1), cells.size() == 1 ? "" : names.label(cell), labelY))
                .and("lowest", end(bands, Comparator.comparingDouble(Point::value)))
                .and("highest", end(bands, Comparator.comparingDouble((Point band) -> -band.value())))
                .map();
    }

    /** A name beside the end of its curve. */
    private Object label(Point end, String text, double y) {
        return Fields.of("text", text)
                .and("x", Frame.px(frame.right() + Sheet.GAP))
                .and("y", Frame.px(y))
                .and("fromX", Frame.px(frame.x(Math.log10(end.hz().orElseThrow()))))
                .and("fromY", Frame.px(frame.y(end.value())))
                .map();
    }

    private static Object end(List<Point> bands, Comparator<Point> order) {
        Point point = bands.stream().min(order).orElseThrow();
        return Fields.of("value", Numbers.fixed(point.value(), 1))
                .and("hz", Numbers.plain(point.hz().orElseThrow()))
                .and("bound", FigureParts.bound(point.bound()))
                .map();
    }

    private static List<Point> curve(CellResult cell) {
        return cell.bands().stream()
                .filter(band -> band.hz().isPresent())
                .sorted(Comparator.comparingDouble(band -> band.hz().getAsDouble()))
                .toList();
    }

    private double endY(CellResult cell) {
        List<Point> bands = curve(cell);
        return frame.y(bands.get(bands.size() - 1).value());
    }

    private Map<String, Object> shows() {
        boolean thin = isFew()
                && cells.stream().anyMatch(cell -> cell.insertionCurves().size() > 1);
        boolean banded = cells.stream()
                .flatMap(cell -> cell.bands().stream())
                .anyMatch(band -> band.lower().isPresent() && band.upper().isPresent());
        return Fields.of("repeats", thin ? repeats() : "")
                .and("interval", banded ? isFew() ? "drawn" : "left out" : "unknown")
                .and("bounds", hasArrows())
                .and("dbPerDecade", Numbers.plain(CurveScale.dbPerDecade(frame)))
                .map();
    }

    private boolean hasArrows() {
        return cells.stream()
                .anyMatch(cell -> !CurveShapes.arrows(frame, cell, findings, judgement.rule())
                        .isEmpty());
    }

    /** Whose curves the thin lines are: a mean over ears or units is made of theirs. */
    private String repeats() {
        boolean ears =
                judgement.rule().ears().filter(p -> p.isBeyondTheMeasured()).isPresent();
        boolean units =
                judgement.rule().units().filter(p -> p.isBeyondTheMeasured()).isPresent();
        return ears ? "head" : units ? "unit" : "insertion";
    }
}
