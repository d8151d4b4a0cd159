package org.ellwand.quantity;

/**
 * How far a number that is looked for in a series can be told: what lies beyond the ends of the series is known to lie
 * beyond, and no more.
 *
 * @param lowest unit of the quantity; −∞ where nothing bounds it
 * @param highest unit of the quantity; +∞ where nothing bounds it
 */
public record Reach(double lowest, double highest) {
    public static final Reach UNLIMITED = new Reach(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

    public boolean isUnlimited() {
        return equals(UNLIMITED);
    }

    /** The nearest value that can be told. */
    public double nearest(double value) {
        return Math.max(lowest, Math.min(highest, value));
    }
}
