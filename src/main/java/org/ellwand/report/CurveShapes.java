package org.ellwand.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ellwand.audit.CellResult;
import org.ellwand.audit.Point;
import org.ellwand.check.Finding;
import org.ellwand.claim.Rule;

/** Lines, areas and marks of one curve, in page coordinates. Straight lines from band to band, nothing smoothed. */
final class CurveShapes {
    /** A step that much longer than the shortest one is a missing band, and the line is broken. */
    private static final double GAP = 1.5;

    private static final double ARROW_PX = 16;

    private CurveShapes() {}

    static List<String> lines(Frame frame, List<Point> bands) {
        return runs(bands).stream()
                .map(run -> joined(run.stream().map(band -> at(frame, band, band.value()))))
                .toList();
    }

    static List<String> areas(Frame frame, List<Point> bands) {
        return runs(bands).stream()
                .filter(run -> run.size() > 1 && run.stream().allMatch(CurveShapes::hasInterval))
                .map(run -> area(frame, run))
                .toList();
    }

    /** Each insertion's own curve; none where there is but one. */
    static List<String> thin(Frame frame, CellResult cell) {
        if (cell.insertionCurves().size() < 2) {
            return List.of();
        }
        return cell.insertionCurves().stream()
                .map(curve -> thin(frame, cell, curve))
                .toList();
    }

    static List<Object> markers(Frame frame, List<Point> bands) {
        return bands.stream()
                .map(band -> (Object) Fields.of("x", Frame.px(x(frame, band)))
                        .and("y", Frame.px(frame.y(band.value())))
                        .map())
                .toList();
    }

    /** Bands of which only a bound was measured; the arrow points where the true value lies. */
    static List<Object> arrows(Frame frame, CellResult cell, List<Finding> findings, Rule rule) {
        List<Object> arrows = new ArrayList<>();
        for (Point band : cell.bands()) {
            if (band.hz().isPresent()) {
                pointsUp(band, cell, findings, rule).ifPresent(up -> arrows.add(arrow(frame, band, up)));
            }
        }
        return arrows;
    }

    private static Optional<Boolean> pointsUp(Point band, CellResult cell, List<Finding> findings, Rule rule) {
        return switch (band.bound()) {
            case AT_LEAST -> Optional.of(true);
            case AT_MOST -> Optional.of(false);
            case MEASURED ->
                findings.stream()
                        .filter(finding -> bounds(finding, cell, band))
                        .findFirst()
                        .map(finding -> pointsUp(finding, rule));
        };
    }

    private static boolean bounds(Finding finding, CellResult cell, Point band) {
        return finding.consequence() == Finding.Consequence.BOUNDED
                && finding.errs() != Finding.Errs.EITHER
                && Touching.touches(finding, cell)
                && Touching.speaksOf(finding, band.hz());
    }

    /** What hides attenuation leaves the true attenuation higher, and every other quantity lower. */
    private static boolean pointsUp(Finding finding, Rule rule) {
        return switch (finding.errs()) {
            case READS_LOW -> true;
            case READS_HIGH -> false;
            case HIDES_ATTENUATION -> rule.quantity().equals("attenuation");
            case INVENTS_ATTENUATION, EITHER -> !rule.quantity().equals("attenuation");
        };
    }

    private static Object arrow(Frame frame, Point band, boolean up) {
        double y = frame.y(band.value());
        double tip = up ? y - ARROW_PX : y + ARROW_PX;
        return Fields.of("x", Frame.px(x(frame, band)))
                .and("y", Frame.px(y))
                .and("tip", Frame.px(tip))
                .and("barb", Frame.px(up ? tip + 5 : tip - 5))
                .map();
    }

    private static String thin(Frame frame, CellResult cell, List<Double> curve) {
        return joined(IntStream.range(0, Math.min(curve.size(), cell.bands().size()))
                .filter(i -> cell.bands().get(i).hz().isPresent())
                .boxed()
                .sorted(Comparator.comparingDouble(i -> lg(cell.bands().get(i))))
                .map(i -> at(frame, cell.bands().get(i), curve.get(i))));
    }

    private static String area(Frame frame, List<Point> run) {
        List<String> corners = new ArrayList<>();
        run.forEach(band -> corners.add(at(frame, band, band.upper().getAsDouble())));
        for (int i = run.size() - 1; i >= 0; i--) {
            corners.add(at(frame, run.get(i), run.get(i).lower().getAsDouble()));
        }
        return String.join(" ", corners);
    }

    private static List<List<Point>> runs(List<Point> bands) {
        double longest = GAP * shortestStep(bands);
        List<List<Point>> runs = new ArrayList<>();
        for (int i = 0; i < bands.size(); i++) {
            if (i == 0 || step(bands, i) > longest) {
                runs.add(new ArrayList<>());
            }
            runs.get(runs.size() - 1).add(bands.get(i));
        }
        return runs;
    }

    private static double shortestStep(List<Point> bands) {
        return IntStream.range(1, bands.size())
                .mapToDouble(i -> step(bands, i))
                .min()
                .orElse(0);
    }

    private static double step(List<Point> bands, int i) {
        return lg(bands.get(i)) - lg(bands.get(i - 1));
    }

    private static double lg(Point band) {
        return Math.log10(band.hz().getAsDouble());
    }

    private static double x(Frame frame, Point band) {
        return frame.x(lg(band));
    }

    private static String at(Frame frame, Point band, double value) {
        return Frame.point(x(frame, band), frame.y(value));
    }

    private static boolean hasInterval(Point band) {
        return band.lower().isPresent() && band.upper().isPresent();
    }

    private static String joined(Stream<String> points) {
        return points.collect(Collectors.joining(" "));
    }
}
