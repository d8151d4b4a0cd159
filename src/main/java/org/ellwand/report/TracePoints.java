package org.ellwand.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.ellwand.measurement.Trace;

/** The points of a trace's line: as many as can be told apart on the page. */
final class TracePoints {
    /** So many pixels keep two samples, the lowest and the highest. */
    private static final double COLUMN_PX = 1;

    private TracePoints() {}

    /** Samples inside the plot, and one beyond each edge so that the line reaches it. */
    static String of(Trace trace, DoubleUnaryOperator x, Frame frame) {
        int first = 0;
        int last = trace.timeS().size() - 1;
        while (first < last && x.applyAsDouble(trace.timeS().get(first + 1)) < frame.left()) {
            first++;
        }
        while (last > first && x.applyAsDouble(trace.timeS().get(last - 1)) > frame.right()) {
            last--;
        }
        List<String> points = new ArrayList<>();
        for (int from = first; from <= last; ) {
            double column = Math.floor(x.applyAsDouble(trace.timeS().get(from)) / COLUMN_PX);
            int to = from;
            while (to + 1 <= last && Math.floor(x.applyAsDouble(trace.timeS().get(to + 1)) / COLUMN_PX) == column) {
                to++;
            }
            ends(trace, from, to)
                    .forEach(i -> points.add(Frame.point(
                            x.applyAsDouble(trace.timeS().get(i)),
                            frame.y(trace.levelDb().get(i)))));
            from = to + 1;
        }
        return String.join(" ", points);
    }

    /** The lowest and the highest sample of a stretch, in their order. */
    private static List<Integer> ends(Trace trace, int from, int to) {
        int lowest = from;
        int highest = from;
        for (int i = from + 1; i <= to; i++) {
            lowest = trace.levelDb().get(i) < trace.levelDb().get(lowest) ? i : lowest;
            highest = trace.levelDb().get(i) > trace.levelDb().get(highest) ? i : highest;
        }
        return lowest == highest ? List.of(lowest) : List.of(Math.min(lowest, highest), Math.max(lowest, highest));
    }
}
