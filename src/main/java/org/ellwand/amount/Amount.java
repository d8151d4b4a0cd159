package org.ellwand.amount;

/**
 * A number with its unit, as printed.
 *
 * @param value finite, in {@code unit}
 * @param unit the unit it was written in
 * @param decimals digits that were printed behind the decimal point
 */
public record Amount(double value, Unit unit, int decimals) {
    public Amount {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("an amount is a finite number, not " + value);
        }
    }

    /** The value in another unit of the same dimension. */
    public double in(Unit other) {
        return unit.convert(value, other);
    }

    /** Half of the last printed digit, in {@link #unit}: 18 gives 0.5, 18.0 gives 0.05. */
    public double halfLastDigit() {
        return 0.5 * Math.pow(10, -decimals);
    }
}
