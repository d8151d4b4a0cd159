package org.ellwand.acoustics;

import java.util.Locale;

/** Why a level trace gives no number. */
public enum NoNumber {
    /** A fifth of the trace holds fewer than two samples, so that its mean would stand on what lies around it. */
    TOO_FEW_SAMPLES("fewer than two samples lie in a fifth of the trace"),

    /** The level leaves the neighbourhood of its last fifth's mean within that last fifth. */
    NOT_SETTLED("the level does not settle before the last fifth of the trace begins"),

    /** Two traces have no times in common, or samples at different ones. */
    CLOCKS_DIFFER("the two traces are not sampled at the same times"),

    /** Between the first and the last sample lies a frame without any. */
    GAP("a frame of 125 ms holds no sample"),

    /** Fewer than eight frames: a share of them would say little. */
    TOO_FEW_FRAMES("the traces have fewer than eight frames of 125 ms in common");

    private final String text;

    NoNumber(String text) {
        this.text = text;
    }

    /** {@return the reason as records for machines name it} As {@code too-few-samples}. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** {@return the reason in words, to follow a colon} */
    public String text() {
        return text;
    }
}
