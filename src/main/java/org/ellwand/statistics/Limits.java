package org.ellwand.statistics;

/**
 * Between which values something is inside; both ends belong to it, and either may be infinite.
 *
 * @param lower not above {@code upper}
 * @param upper not below {@code lower}
 */
public record Limits(double lower, double upper) {
    /**
     * Refuses ends the wrong way round.
     *
     * @param lower not above {@code upper}
     * @param upper not below {@code lower}
     * @throws IllegalArgumentException where {@code lower} lies above {@code upper}, or an end is NaN
     */
    public Limits {
        if (!(lower <= upper)) {
            throw new IllegalArgumentException("nothing lies between " + lower + " and " + upper);
        }
    }

    /**
     * {@return the values from one upwards}
     *
     * @param lower lowest value that is inside
     */
    public static Limits atLeast(double lower) {
        return new Limits(lower, Double.POSITIVE_INFINITY);
    }

    /**
     * {@return the values up to one}
     *
     * @param upper highest value that is inside
     */
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
