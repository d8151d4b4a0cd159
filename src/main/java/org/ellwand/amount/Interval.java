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
    /**
     * Refuses ends the wrong way round.
     *
     * @param lower lowest value, {@code -∞} where there is none
     * @param upper highest value, {@code +∞} where there is none
     * @param lowerOpen whether {@code lower} itself is outside ("above 90")
     * @param upperOpen whether {@code upper} itself is outside ("below 90")
     * @param unit unit of both ends
     * @throws IllegalArgumentException where {@code lower} lies above {@code upper}, or an end is NaN
     */
    public Interval {
        // Written so that NaN falls into the error branch.
        if (!(lower <= upper)) {
            throw new IllegalArgumentException("the lower end " + lower + " lies above the upper end " + upper);
        }
    }

    /**
     * {@return the range from one end to another, both of them inside}
     *
     * @param lower lowest value, in {@code unit}
     * @param upper highest value, in {@code unit}, not below {@code lower}
     * @param unit unit of both ends
     * @throws IllegalArgumentException where {@code lower} lies above {@code upper}, or an end is NaN
     */
    public static Interval of(double lower, double upper, Unit unit) {
        return new Interval(lower, upper, false, false, unit);
    }

    /**
     * {@return the range from a value upwards, the value inside}
     *
     * @param lower lowest value, in {@code unit}
     * @param unit unit of the end
     */
    public static Interval atLeast(double lower, Unit unit) {
        return of(lower, Double.POSITIVE_INFINITY, unit);
    }

    /**
     * {@return the range up to a value, the value inside}
     *
     * @param upper highest value, in {@code unit}
     * @param unit unit of the end
     */
    public static Interval atMost(double upper, Unit unit) {
        return of(Double.NEGATIVE_INFINITY, upper, unit);
    }

    /** {@return whether there is a lowest value: "at most 3 %" has none} */
    public boolean hasLower() {
        return lower != Double.NEGATIVE_INFINITY;
    }

    /** {@return whether there is a highest value: "at least 15 dB" has none} */
    public boolean hasUpper() {
        return upper != Double.POSITIVE_INFINITY;
    }

    /**
     * {@return whether a value of this interval's unit lies inside}
     *
     * @param value in {@link #unit}
     */
    public boolean contains(double value) {
        return (lowerOpen ? value > lower : value >= lower) && (upperOpen ? value < upper : value <= upper);
    }

    /**
     * {@return the same range written in another unit of its dimension}
     *
     * @param other a unit of the same dimension
     * @throws IllegalArgumentException where the dimensions differ
     */
    public Interval in(Unit other) {
        return new Interval(unit.convert(lower, other), unit.convert(upper, other), lowerOpen, upperOpen, other);
    }
}
