package org.ellwand.words;

/**
 * A number with the unit it is printed in.
 *
 * @param value in {@code unit}
 * @param unit its symbol; empty for plain numbers
 */
public record Measure(double value, String unit) {
    @Override
    public String toString() {
        return unit.isEmpty() ? Figures.rounded(value) : Figures.rounded(value) + " " + unit;
    }
}
