package org.ellwand.audit;

import org.ellwand.amount.Interval;
import org.ellwand.statistics.NormalErrors;
import org.ellwand.words.Remark;

/**
 * The two ends of a limit as seen from one point: probabilities that the true number lies on the right side.
 *
 * @param atLower probability of lying at or above the lower end; 1 where there is none
 * @param atUpper probability of lying at or below the upper end; 1 where there is none
 * @param holds probability of both (JCGM 106:2012: conformance probability)
 */
record Ends(double atLower, double atUpper, double holds) {
    private static final double TINY = 1e-12;
    private static final double ROUNDING = 1e-9;

    static Ends of(Points.One point, Interval limit) {
        if (point.errors() instanceof ShareErrors share) {
            return share.ends(limit);
        }
        double value = onEnd(point.value(), limit);
        double lower = limit.hasLower() ? point.errors().atLeast(limit.lower() - value) : 1;
        double upper = limit.hasUpper() ? point.errors().atMost(limit.upper() - value) : 1;
        if (isExact(point)) {
            // An exact value on an open end is outside ("below 3 %").
            boolean inside = limit.contains(value);
            lower = !inside && value <= limit.lower() ? 0 : lower;
            upper = !inside && value >= limit.upper() ? 0 : upper;
        }
        // Where one end is safe, the other says it all, down to the smallest probability.
        double holds = lower == 1 ? upper : upper == 1 ? lower : Math.max(0, lower + upper - 1);
        return new Ends(lower, upper, holds);
    }

    /** The end itself where only the rounding of decimal fractions keeps a value off it (80.3 − 79.07 is not 1.23). */
    static double onEnd(double value, Interval limit) {
        if (Math.abs(value - limit.lower()) < ROUNDING) {
            return limit.lower();
        }
        return Math.abs(value - limit.upper()) < ROUNDING ? limit.upper() : value;
    }

    /** Nothing tells the spread: on which side the value lies is all that can be said. */
    static Remark notStated(double value, Interval limit) {
        boolean below = value < limit.lower() || !limit.hasUpper();
        String side = limit.contains(onEnd(value, limit)) ? "inside" : below ? "below" : "above";
        return Remark.of("uncertainty-not-stated-" + side).with("value", value);
    }

    private static boolean isExact(Points.One point) {
        return point.errors() instanceof NormalErrors normal && normal.standardDeviation() == 0;
    }

    /** Distance to the nearest end in units of the standard uncertainty, negative outside. */
    static double margin(Points.One point, Interval limit) {
        double u = Math.max(point.errors().standardUncertainty(), TINY);
        return Math.min(point.value() - limit.lower(), limit.upper() - point.value()) / u;
    }

    /** Probability of lying on the right side of the worse end. */
    double worse() {
        return Math.min(atLower, atUpper);
    }
}
