package org.ellwand.report;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.stream.Stream;
import org.ellwand.amount.Interval;
import org.ellwand.audit.CellResult;
import org.ellwand.audit.Judgement;
import org.ellwand.audit.Point;

/**
 * The axes of a curve: a logarithmic frequency axis, and a level axis on which one decade is as long as 25 dB or, for
 * tall curves, 50 dB (IEC 60263, from a public abstract).
 */
final class CurveScale {
    private static final double LEFT = 64;
    private static final double TOP = 36;
    private static final double DECADE_PX = 270;
    private static final double LOWEST_HZ = 100;
    private static final double HIGHEST_HZ = 10000;
    private static final double LEAST_RANGE_DB = 25;
    /** Above this range 25 dB per decade would not fit a page. */
    private static final double TALL_DB = 45;
    /** How far beyond the curve an interval is followed, dB; wider ones are cut at the edge. */
    private static final double FOLLOWED_DB = 15;

    private CurveScale() {}

    static double dbPerDecade(double rangeDb) {
        return rangeDb > TALL_DB ? 50 : 25;
    }

    static Frame of(Judgement judgement, boolean limitShown) {
        DoubleSummaryStatistics values = values(judgement.cells());
        DoubleSummaryStatistics shown = new DoubleSummaryStatistics();
        shown.combine(values);
        judgement.cells().stream()
                .flatMap(cell -> cell.bands().stream())
                .forEach(band -> ends(band, values).forEach(shown::accept));
        if (limitShown) {
            ends(judgement.rule().limit()).forEach(shown::accept);
        }
        double bottom = Math.floor((shown.getMin() - 1) / 5) * 5;
        double top = Math.max(Math.ceil((shown.getMax() + 1) / 5) * 5, bottom + LEAST_RANGE_DB);
        return frame(judgement.cells(), bottom, top);
    }

    private static Frame frame(List<CellResult> cells, double bottom, double top) {
        DoubleSummaryStatistics hz = cells.stream()
                .flatMap(cell -> cell.bands().stream())
                .flatMapToDouble(band -> band.hz().stream())
                .summaryStatistics();
        double from = Math.log10(Math.min(LOWEST_HZ, hz.getMin() / 1.25));
        double to = Math.log10(Math.max(HIGHEST_HZ, hz.getMax() * 1.25));
        double height = (top - bottom) / dbPerDecade(top - bottom) * DECADE_PX;
        return new Frame(LEFT, TOP, (to - from) * DECADE_PX, height, from, to, bottom, top);
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
