package org.ellwand.amount;

/**
 * A range of one unit. An absent end is infinite; an open end does not belong to the range.
 *
 * @param lower lowest value, {@code -∞} where there is none
 * @param upper highest value, {@code +∞} where there is none
 * @param lowerOpen whether {@code lower} itself is outside ("above 90")
 * @param upperOpen whether {@code upper} itself is outside ("below 90")
 * @param unit unit of both ends
 */
public record Interval(double lower, double upper, boolean lowerOpen, boolean upperOpen, Unit unit) {
    public Interval {
        // Written so that NaN falls into the error branch.
        if (!(lower <= upper)) {
            throw new IllegalArgumentException("the lower end " + lower + " lies above the upper end " + upper);
        }
    }

    public static Interval of(double lower, double upper, Unit unit) {
        return new Interval(lower, upper, false, false, unit);
    }

    public static Interval atLeast(double lower, Unit unit) {
        return of(lower, Double.POSITIVE_INFINITY, unit);
    }

    public static Interval atMost(double upper, Unit unit) {
        return of(Double.NEGATIVE_INFINITY, upper, unit);
    }

    public boolean hasLower() {
        return lower != Double.NEGATIVE_INFINITY;
    }

    public boolean hasUpper() {
        return upper != Double.POSITIVE_INFINITY;
    }

    /** Whether a value of this interval's unit lies inside. */
    public boolean contains(double value) {
        return (lowerOpen ? value > lower : value >= lower) && (upperOpen ? value < upper : value <= upper);
    }

    public Interval in(Unit other) {
        return new Interval(unit.convert(lower, other), unit.convert(upper, other), lowerOpen, upperOpen, other);
    }
}
