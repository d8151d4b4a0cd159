package org.ellwand.report;

import java.util.ArrayList;
import java.util.List;

/** Round numbers along an axis. */
final class Ticks {
    /** No axis has more lines. */
    private static final int MOST = 100;

    private static final int LEAST_OF_MANY = 10;
    private static final double[] STEPS = {1, 2, 5, 10};

    private Ticks() {}

    /** The widest of 1, 2, 5 times a power of ten that gives at least {@code least} steps over a range. */
    static double step(double range, int least) {
        double decade = Math.pow(10, Math.floor(Math.log10(range / least)));
        double step = decade;
        for (double times : STEPS) {
            if (range / (times * decade) >= least) {
                step = times * decade;
            }
        }
        return step;
    }

    /** A usual step, or a wider one where it would come too often: no slip of the pen is to fill a figure with lines. */
    static double fewer(double usual, double range) {
        return range / usual > MOST ? step(range, LEAST_OF_MANY) : usual;
    }

    /** Multiples of the step from one number to another, ends included. */
    static List<Double> between(double from, double to, double step) {
        List<Double> ticks = new ArrayList<>();
        for (long i = (long) Math.ceil(from / step - 1e-9); i * step <= to + step * 1e-9; i++) {
            // Rounded, so that 3 · 0.1 is printed as 0.3.
            ticks.add(Math.round(i * step * 1e9) / 1e9);
        }
        return ticks;
    }

    /** Octaves that are labelled on a frequency axis, Hz. */
    static List<Double> octaves() {
        return List.of(31.5, 63.0, 125.0, 250.0, 500.0, 1000.0, 2000.0, 4000.0, 8000.0, 16000.0);
    }
}
