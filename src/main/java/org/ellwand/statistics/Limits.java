package org.ellwand.statistics;

/**
 * Between which values something is inside; both ends belong to it, and either may be infinite.
 *
 * @param lower not above {@code upper}
 */
public record Limits(double lower, double upper) {
    public Limits {
        if (!(lower <= upper)) {
            throw new IllegalArgumentException("nothing lies between " + lower + " and " + upper);
        }
    }

    public static Limits atLeast(double lower) {
        return new Limits(lower, Double.POSITIVE_INFINITY);
    }

    public static Limits atMost(double upper) {
        return new Limits(Double.NEGATIVE_INFINITY, upper);
    }

    /** How far a value is from the nearer end; negative outside. */
    double margin(double value) {
        return Math.min(value - lower, upper - value);
    }

    boolean isOneSided() {
        return Double.isInfinite(lower) || Double.isInfinite(upper);
    }

    boolean isOpen() {
        return Double.isInfinite(lower) && Double.isInfinite(upper);
    }
}
