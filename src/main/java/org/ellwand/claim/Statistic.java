package org.ellwand.claim;

import java.util.Arrays;
import java.util.Optional;

/** What is made of the bands of a curve before it is held against the limit. */
public enum Statistic {
    /** No statistic: each band by itself must meet the limit. */
    EVERY_BAND("every band"),
    /** Arithmetic mean of the bands' numbers, in dB. */
    MEAN("mean"),
    /** The lower one of an even number. */
    MEDIAN("median"),
    /** The smallest number of all bands. */
    LOWEST("lowest"),
    /** The largest number of all bands. */
    HIGHEST("highest"),
    /** Highest less lowest. */
    SPREAD("spread"),
    /** dB per octave, least squares on log2 f. */
    SLOPE("slope"),
    /** Difference of energy-summed levels. */
    OVERALL("overall");

    private final String text;

    Statistic(String text) {
        this.text = text;
    }

    /** {@return the name, as claims write it} */
    public String text() {
        return text;
    }

    /** {@return whether it holds bands against each other: two are needed, and what moves all of them one way may move it either way} */
    public boolean comparesBands() {
        return switch (this) {
            case SPREAD, SLOPE -> true;
            case EVERY_BAND, MEAN, MEDIAN, LOWEST, HIGHEST, OVERALL -> false;
        };
    }

    /**
     * {@return the statistic of this name; empty where there is none}
     *
     * @param text as claims write it
     */
    public static Optional<Statistic> named(String text) {
        return Arrays.stream(values()).filter(s -> s.text.equals(text)).findFirst();
    }
}
