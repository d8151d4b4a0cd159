package org.ellwand.amount;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The units that claims and measurements may be written in. */
public enum Unit {
    HZ(Dimension.FREQUENCY, 1, "Hz"),
    KHZ(Dimension.FREQUENCY, 1000, "kHz"),
    DB(Dimension.LEVEL_DIFFERENCE, 1, "dB"),
    DB_SPL(Dimension.LEVEL, 1, "dB SPL"),
    DB_A(Dimension.LEVEL_A, 1, "dB(A)", "dBA"),
    DB_C(Dimension.LEVEL_C, 1, "dB(C)", "dBC"),
    DB_PER_OCTAVE(Dimension.SLOPE, 1, "dB/octave"),
    PERCENT(Dimension.SHARE, 1, "%"),
    MICROSECOND(Dimension.TIME, 1e-6, "µs", "μs"),
    MILLISECOND(Dimension.TIME, 1e-3, "ms"),
    SECOND(Dimension.TIME, 1, "s"),
    MINUTE(Dimension.TIME, 60, "min"),
    HOUR(Dimension.TIME, 3600, "h"),
    MILLIMETRE(Dimension.LENGTH, 1e-3, "mm"),
    METRE(Dimension.LENGTH, 1, "m"),
    MILLIVOLT(Dimension.VOLTAGE, 1e-3, "mV"),
    VOLT(Dimension.VOLTAGE, 1, "V"),
    MILLIAMPERE(Dimension.CURRENT, 1e-3, "mA"),
    MILLIAMPERE_HOUR(Dimension.CHARGE, 1e-3, "mAh"),
    WATT(Dimension.POWER, 1, "W"),
    GRAM(Dimension.MASS, 1e-3, "g"),
    KILOGRAM(Dimension.MASS, 1, "kg"),
    NONE(Dimension.NONE, 1, "");

    private final Dimension dimension;
    private final double factor;
    private final String symbol;
    private final String otherSpelling;

    Unit(Dimension dimension, double factor, String symbol) {
        this(dimension, factor, symbol, symbol);
    }

    Unit(Dimension dimension, double factor, String symbol, String otherSpelling) {
        this.dimension = dimension;
        this.factor = factor;
        this.symbol = symbol;
        this.otherSpelling = otherSpelling;
    }

    public Dimension dimension() {
        return dimension;
    }

    /** How many of the dimension's base unit (Hz, dB, s, m, V, A, Ah, W, kg) one of this unit is. */
    public double factor() {
        return factor;
    }

    /** The spelling that reports print. */
    public String symbol() {
        return symbol;
    }

    public List<String> spellings() {
        return symbol.equals(otherSpelling) ? List.of(symbol) : List.of(symbol, otherSpelling);
    }

    /** Whether this is one of the three absolute levels. */
    public boolean isLevel() {
        return dimension == Dimension.LEVEL || dimension == Dimension.LEVEL_A || dimension == Dimension.LEVEL_C;
    }

    /** Levels differ by decibels without a reference. */
    public Unit ofDifferences() {
        return isLevel() ? DB : this;
    }

    /** Converts a number of this unit into another unit of the same dimension. */
    public double convert(double value, Unit to) {
        if (to.dimension != dimension) {
            throw new IllegalArgumentException(symbol() + " cannot be turned into " + to.symbol());
        }
        return to == this ? value : value * factor / to.factor;
    }

    /** The unit of an exact spelling, case included ("mA" and "MA" differ). */
    public static Optional<Unit> spelled(String text) {
        return Arrays.stream(values())
                .filter(unit -> unit != NONE && unit.spellings().contains(text))
                .findFirst();
    }
}
