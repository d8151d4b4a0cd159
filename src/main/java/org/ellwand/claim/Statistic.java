package org.ellwand.claim;

import java.util.Arrays;
import java.util.Optional;

/** What is made of the bands of a curve before it is held against the limit. */
public enum Statistic {
    EVERY_BAND("every band"),
    MEAN("mean"),
    /** The lower one of an even number. */
    MEDIAN("median"),
    LOWEST("lowest"),
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

    public String text() {
        return text;
    }

    public static Optional<Statistic> named(String text) {
        return Arrays.stream(values()).filter(s -> s.text.equals(text)).findFirst();
    }
}
