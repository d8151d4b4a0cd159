package org.ellwand.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.ellwand.audit.CellResult;
import org.ellwand.audit.Judgement;
import org.ellwand.audit.Point;
import org.ellwand.check.Finding;

/** A quantity against frequency: each cell's mean curve with its interval, its insertions, and the claimed range. */
final class CurveFigure {
    /** Room for the names of the curves, px. */
    private static final double NAMES_PX = 190;

    private static final double BELOW_PX = 86;
    private static final double LINE_PX = 15;
    private static final int NAME_CHARACTERS = 22;

    private final Judgement judgement;
    private final List<CellResult> cells;
    private final List<Finding> findings;
    private final CellNames names;
    private final Frame frame;

    CurveFigure(Judgement judgement, List<Finding> findings) {
        this.judgement = judgement;
        this.cells = judgement.cells().stream().filter(CurveFigure::isCurve).toList();
        this.findings = findings;
        this.names = new CellNames(judgement.cells());
        this.frame = CurveScale.of(judgement, Wording.curveComparesWithLimit(judgement.rule()));
    }

    static boolean isCurve(CellResult cell) {
        return cell.bands().stream().filter(band -> band.hz().isPresent()).count() > 1;
    }

    Map<String, Object> model() {
        return Fields.of("kind", "curve")
                .and("width", Frame.px(frame.right() + NAMES_PX))
                .and("height", Frame.px(frame.bottom() + BELOW_PX))
                .and("plot", FigureParts.plot(frame))
                .and("xLabel", "Frequency")
                .and("yLabel", Wording.axis(judgement.rule(), FigureParts.curveUnit(judgement.rule())))
                .and("xTicks", xTicks())
                .and("yTicks", yTicks())
                .and("claimed", claimed())
                .and("series", series())
                .and("rows", List.of())
                .and("legend", legend())
                .map();
    }

    private List<Object> xTicks() {
        return Ticks.octaves().stream()
                .filter(hz -> Math.log10(hz) >= frame.fromX() && Math.log10(hz) <= frame.toX())
                .map(hz -> FigureParts.tick(frame.x(Math.log10(hz)), Numbers.hertz(hz)))
                .toList();
    }

    private List<Object> yTicks() {
        double step = frame.toY() - frame.fromY() > 45 ? 10 : 5;
        return Ticks.between(frame.fromY(), frame.toY(), step).stream()
                .map(level -> FigureParts.tick(frame.y(level), Numbers.plain(level)))
                .toList();
    }

    private List<Object> claimed() {
        return Wording.curveComparesWithLimit(judgement.rule())
                ? List.of(FigureParts.claimedAcross(frame, judgement.rule()))
                : List.of();
    }

    private List<Object> series() {
        List<Double> labels = labelHeights();
        return IntStream.range(0, cells.size())
                .mapToObj(i -> series(i, labels.get(i)))
                .toList();
    }

    private Object series(int index, double labelY) {
        CellResult cell = cells.get(index);
        List<Point> bands = curve(cell);
        return Fields.of("number", index)
                .and("name", FigureParts.shortened(names.shortName(cell), NAME_CHARACTERS))
                .and("areas", CurveShapes.areas(frame, bands))
                .and("thin", CurveShapes.thin(frame, cell))
                .and("lines", CurveShapes.lines(frame, bands))
                .and("markers", CurveShapes.markers(frame, bands))
                .and("arrows", CurveShapes.arrows(frame, cell, findings, judgement.rule()))
                .and("nameX", Frame.px(frame.right() + 26))
                .and("nameY", Frame.px(labelY))
                .map();
    }

    private static List<Point> curve(CellResult cell) {
        return cell.bands().stream()
                .filter(band -> band.hz().isPresent())
                .sorted(Comparator.comparingDouble(band -> band.hz().getAsDouble()))
                .toList();
    }

    /** Names stand beside the ends of their curves, pushed apart where they would touch. */
    private List<Double> labelHeights() {
        List<Integer> downwards = IntStream.range(0, cells.size())
                .boxed()
                .sorted(Comparator.comparing(this::endY))
                .toList();
        Double[] heights = new Double[cells.size()];
        double free = frame.top();
        for (int index : downwards) {
            heights[index] = Math.max(endY(index), free);
            free = heights[index] + LINE_PX;
        }
        return List.of(heights);
    }

    private double endY(int index) {
        List<Point> bands = curve(cells.get(index));
        return frame.y(bands.get(bands.size() - 1).value());
    }

    private List<Object> legend() {
        List<Object> lines = new ArrayList<>();
        boolean several = cells.stream().anyMatch(cell -> cell.insertionCurves().size() > 1);
        boolean banded = cells.stream()
                .anyMatch(cell -> cell.bands().stream()
                        .anyMatch(
                                band -> band.lower().isPresent() && band.upper().isPresent()));
        String mean = several ? "Heavy line: mean of the insertions; thin lines: each insertion. " : "";
        lines.add(mean + (banded ? "Tinted: 95 % interval of the measured value." : "The spread is not known."));
        if (cells.stream()
                .anyMatch(cell -> !CurveShapes.arrows(frame, cell, findings, judgement.rule())
                        .isEmpty())) {
            lines.add("Arrow: only a bound was measured; the true value lies in this direction.");
        }
        return lines;
    }
}
