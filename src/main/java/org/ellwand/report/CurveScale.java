package org.ellwand.report;

import java.util.Collection;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.stream.Stream;
import org.ellwand.amount.Interval;
import org.ellwand.audit.CellResult;
import org.ellwand.audit.Judgement;
import org.ellwand.audit.Point;

/**
 * The axes of levels over frequency. One decade of the logarithmic frequency axis is as long as 10, 25 or 50 dB of the
 * other, which are aspect ratios of IEC 60263:2020, 4.1 (10, 20, 25 and 50 dB a decade; read in a public extract): the
 * smallest that leaves the figure shorter than wide.
 */
final class CurveScale {
    private static final double LOWEST_HZ = 100;
    private static final double HIGHEST_HZ = 10000;
    /** How far beyond the curve an interval is followed, dB; wider ones are cut at the edge. */
    private static final double FOLLOWED_DB = 15;
    /** Decades' worth of decibels that a plot may be high. */
    private static final double TALLEST = 2;

    private static final List<Double> RATIOS = List.of(10.0, 25.0);
    private static final double STEEPEST = 50;
    /** What would be higher still is drawn out of proportion: a slip of the pen lies there, or a limit beyond all sounds. */
    private static final double MOST_DECADES = 8;

    private CurveScale() {}

    /** Decibels as long as one decade, for a range of decibels that is to be shown. */
    static double dbPerDecade(double rangeDb) {
        return RATIOS.stream()
                .filter(ratio -> rangeDb <= limit(ratio))
                .findFirst()
                .orElse(Math.max(STEEPEST, rangeDb / MOST_DECADES));
    }

    /** The finest ratio magnifies noise, and is kept for what lies within one decade's length. */
    private static double limit(double ratio) {
        return ratio == RATIOS.get(0) ? ratio : TALLEST * ratio;
    }

    /** @param namesPx room for the names at the right, px */
    static Frame of(Judgement judgement, boolean limitShown, double namesPx) {
        List<CellResult> cells = judgement.cells();
        DoubleSummaryStatistics values = values(cells);
        DoubleSummaryStatistics shown = new DoubleSummaryStatistics();
        shown.combine(values);
        bands(cells).forEach(band -> ends(band, values).forEach(shown::accept));
        if (limitShown) {
            ends(judgement.rule().limit()).forEach(shown::accept);
        }
        List<Double> hz =
                bands(cells).flatMap(band -> band.hz().stream().boxed()).toList();
        return of(hz, shown, namesPx, limitShown ? Sheet.TOP : Sheet.LOW_TOP);
    }

    /**
     * Axes for some frequencies and some levels.
     *
     * @param hz at least one
     * @param shown decibels, at least one
     */
    static Frame of(Collection<Double> hz, DoubleSummaryStatistics shown, double namesPx, double topPx) {
        DoubleSummaryStatistics across =
                hz.stream().mapToDouble(Double::doubleValue).summaryStatistics();
        double from = Math.log10(Math.min(LOWEST_HZ, across.getMin() / 1.25));
        double to = Math.log10(Math.max(HIGHEST_HZ, across.getMax() * 1.25));
        double width = Sheet.WIDTH - Sheet.LEFT - namesPx;
        double step = shown.getMax() - shown.getMin() > 7 ? 5 : 1;
        double margin = step == 5 ? 1 : 0.2;
        double bottom = Math.floor((shown.getMin() - margin) / step) * step;
        double top = Math.ceil((shown.getMax() + margin) / step) * step;
        double ratio = dbPerDecade(top - bottom);
        double lacking = Math.max(0, ratio - (top - bottom));
        double under = Math.floor(lacking / 2 / step) * step;
        double height = Math.max(ratio, top - bottom) / ratio * width / (to - from);
        return new Frame(
                Sheet.LEFT,
                topPx,
                width,
                height,
                from,
                to,
                bottom - under,
                bottom - under + Math.max(ratio, top - bottom));
    }

    /** How many decibels of a frame are as long as one decade of it. */
    static double dbPerDecade(Frame frame) {
        double dbPerPx = (frame.toY() - frame.fromY()) / frame.height();
        return Math.round(dbPerPx * frame.width() / (frame.toX() - frame.fromX()) * 1e6) / 1e6;
    }

    private static Stream<Point> bands(List<CellResult> cells) {
        return cells.stream().flatMap(cell -> cell.bands().stream());
    }

    private static DoubleSummaryStatistics values(List<CellResult> cells) {
        DoubleSummaryStatistics values = new DoubleSummaryStatistics();
        for (CellResult cell : cells) {
            cell.bands().forEach(band -> values.accept(band.value()));
            cell.insertionCurves().forEach(curve -> curve.forEach(values::accept));
        }
        return values;
    }

    private static List<Double> ends(Point band, DoubleSummaryStatistics values) {
        double lowest = values.getMin() - FOLLOWED_DB;
        double highest = values.getMax() + FOLLOWED_DB;
        return List.of(
                Math.max(band.lower().orElse(band.value()), lowest),
                Math.min(band.upper().orElse(band.value()), highest));
    }

    private static List<Double> ends(Interval limit) {
        return Stream.of(limit.lower(), limit.upper()).filter(Double::isFinite).toList();
    }
}
