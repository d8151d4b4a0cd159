package org.ellwand.quantity;

/**
 * How far a number that is looked for in a series can be told: what lies beyond the ends of the series is known to lie
 * beyond, and no more.
 *
 * @param lowest unit of the quantity; −∞ where nothing bounds it
 * @param highest unit of the quantity; +∞ where nothing bounds it
 */
public record Reach(double lowest, double highest) {
    /** Every value can be told. */
    public static final Reach UNLIMITED = new Reach(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

    /**
     * {@return the nearest value that can be told}
     *
     * @param value unit of the quantity
     */
    public double nearest(double value) {
        return Math.max(lowest, Math.min(highest, value));
    }
}
