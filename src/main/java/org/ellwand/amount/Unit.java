package org.ellwand.amount;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The units that claims and measurements may be written in. */
public enum Unit {
    /** Hertz. */
    HZ(Dimension.FREQUENCY, 1, "Hz"),
    /** Kilohertz. */
    KHZ(Dimension.FREQUENCY, 1000, "kHz"),
    /** Decibel, a difference of levels. */
    DB(Dimension.LEVEL_DIFFERENCE, 1, "dB"),
    /** Sound pressure level in dB re 20 µPa, without frequency weighting. */
    DB_SPL(Dimension.LEVEL, 1, "dB SPL"),
    /** A-weighted sound level in dB re 20 µPa. */
    DB_A(Dimension.LEVEL_A, 1, "dB(A)", "dBA"),
    /** C-weighted sound level in dB re 20 µPa. */
    DB_C(Dimension.LEVEL_C, 1, "dB(C)", "dBC"),
    /** Decibel per octave. */
    DB_PER_OCTAVE(Dimension.SLOPE, 1, "dB/octave"),
    /** Percent. */
    PERCENT(Dimension.SHARE, 1, "%"),
    /** Microsecond, spelled with the micro sign or the Greek letter. */
    MICROSECOND(Dimension.TIME, 1e-6, "µs", "μs"),
    /** Millisecond. */
    MILLISECOND(Dimension.TIME, 1e-3, "ms"),
    /** Second. */
    SECOND(Dimension.TIME, 1, "s"),
    /** Minute. */
    MINUTE(Dimension.TIME, 60, "min"),
    /** Hour. */
    HOUR(Dimension.TIME, 3600, "h"),
    /** Millimetre. */
    MILLIMETRE(Dimension.LENGTH, 1e-3, "mm"),
    /** Metre. */
    METRE(Dimension.LENGTH, 1, "m"),
    /** Millivolt. */
    MILLIVOLT(Dimension.VOLTAGE, 1e-3, "mV"),
    /** Volt. */
    VOLT(Dimension.VOLTAGE, 1, "V"),
    /** Milliampere. */
    MILLIAMPERE(Dimension.CURRENT, 1e-3, "mA"),
    /** Milliampere-hour. */
    MILLIAMPERE_HOUR(Dimension.CHARGE, 1e-3, "mAh"),
    /** Watt. */
    WATT(Dimension.POWER, 1, "W"),
    /** Gram. */
    GRAM(Dimension.MASS, 1e-3, "g"),
    /** Kilogram. */
    KILOGRAM(Dimension.MASS, 1, "kg"),
    /** No unit: a plain number. */
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

    /** {@return what kind of thing it measures; only units of one dimension convert into each other} */
    public Dimension dimension() {
        return dimension;
    }

    /** {@return how many of the dimension's base unit (Hz, dB, s, m, V, A, Ah, W, kg) one of this unit is} */
    public double factor() {
        return factor;
    }

    /** {@return the spelling that reports print} */
    public String symbol() {
        return symbol;
    }

    /** {@return all spellings that are read, the printed one first} */
    public List<String> spellings() {
        return symbol.equals(otherSpelling) ? List.of(symbol) : List.of(symbol, otherSpelling);
    }

    /** {@return whether this is one of the three absolute levels} */
    public boolean isLevel() {
        return dimension == Dimension.LEVEL || dimension == Dimension.LEVEL_A || dimension == Dimension.LEVEL_C;
    }

    /** {@return the unit of differences of this one} Levels differ by decibels without a reference. */
    public Unit ofDifferences() {
        return isLevel() ? DB : this;
    }

    /**
     * {@return a number of this unit, converted into another unit of the same dimension}
     *
     * @param value in this unit
     * @param to the unit wanted
     * @throws IllegalArgumentException where the dimensions differ
     */
    public double convert(double value, Unit to) {
        if (to.dimension != dimension) {
            throw new IllegalArgumentException(symbol() + " cannot be turned into " + to.symbol());
        }
        return to == this ? value : value * factor / to.factor;
    }

    /**
     * {@return the unit of an exact spelling, case included ("mA" and "MA" differ)}
     *
     * @param text as written, without the number
     */
    public static Optional<Unit> spelled(String text) {
        return Arrays.stream(values())
                .filter(unit -> unit != NONE && unit.spellings().contains(text))
                .findFirst();
    }

    /**
     * {@return the unit that a spelling probably means, for a message} Case, spaces and brackets aside: {@code khz},
     * {@code dB (A)}, {@code dBSPL}.
     *
     * @param text as written, without the number
     */
    public static Optional<Unit> resembling(String text) {
        return Arrays.stream(values())
                .filter(unit -> unit != NONE)
                .filter(unit ->
                        unit.spellings().stream().anyMatch(s -> letters(s).equalsIgnoreCase(letters(text))))
                .findFirst();
    }

    private static String letters(String spelling) {
        return spelling.replaceAll("[\\s()\\[\\]]", "");
    }
}
