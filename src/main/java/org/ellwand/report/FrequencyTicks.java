package org.ellwand.report;

import java.util.List;
import java.util.stream.IntStream;

/** The marks of both axes of a figure over frequency. */
final class FrequencyTicks {
    /** So much an octave must take for each to be labelled. */
    private static final double OCTAVE_PX = 46;

    private FrequencyTicks() {}

    /** Octaves, or every second one where they stand close; 1 kHz is always among them. */
    static List<Object> x(Frame frame) {
        double octavePx = frame.width() / (frame.toX() - frame.fromX()) * Math.log10(2);
        int every = octavePx < OCTAVE_PX ? 2 : 1;
        List<Double> octaves = Ticks.octaves();
        int first = octaves.indexOf(1000.0) % every;
        return IntStream.range(0, octaves.size())
                .filter(i -> i % every == first)
                .mapToObj(octaves::get)
                .filter(hz -> Math.log10(hz) >= frame.fromX() && Math.log10(hz) <= frame.toX())
                .map(hz -> FigureParts.tick(frame.x(Math.log10(hz)), hz))
                .toList();
    }

    static List<Object> y(Frame frame) {
        double range = frame.toY() - frame.fromY();
        return FigureParts.yTicks(frame, 1, range > 45 ? 10 : range > 15 ? 5 : 2);
    }
}
