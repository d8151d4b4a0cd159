package org.ellwand.amount;

/**
 * A number with its unit, as printed.
 *
 * @param value finite, in {@code unit}
 * @param unit the unit it was written in
 * @param decimals digits that were printed behind the decimal point
 */
public record Amount(double value, Unit unit, int decimals) {
    /**
     * Refuses what is not finite.
     *
     * @param value finite, in {@code unit}
     * @param unit the unit it was written in
     * @param decimals digits that were printed behind the decimal point
     * @throws IllegalArgumentException where the value is infinite or NaN
     */
    public Amount {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("an amount is a finite number, not " + value);
        }
    }

    /**
     * {@return the value in another unit of the same dimension}
     *
     * @param other a unit of the same dimension
     * @throws IllegalArgumentException where the dimensions differ
     */
    public double in(Unit other) {
        return unit.convert(value, other);
    }

    /** {@return half of the last printed digit, in {@link #unit}: 18 gives 0.5, 18.0 gives 0.05} */
    public double halfLastDigit() {
        return 0.5 * Math.pow(10, -decimals);
    }
}
