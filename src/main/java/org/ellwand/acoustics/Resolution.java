package org.ellwand.acoustics;

import java.util.Arrays;
import java.util.Optional;

/** Width of the bands of a spectrum: bands per octave of frequency ratio 10^(3/10) (IEC 61260-1, base ten). */
public enum Resolution {
    /** Octaves. */
    OCTAVE("octave", 1),
    /** Third octaves. */
    THIRD_OCTAVE("third-octave", 3),
    /** Sixths of an octave. */
    SIXTH_OCTAVE("sixth-octave", 6),
    /** Twelfths of an octave. */
    TWELFTH_OCTAVE("twelfth-octave", 12);

    private final String text;
    private final int bandsPerOctave;

    Resolution(String text, int bandsPerOctave) {
        this.text = text;
        this.bandsPerOctave = bandsPerOctave;
    }

    /** {@return the name, as claims and sessions write it} */
    public String text() {
        return text;
    }

    /** {@return how many bands an octave has: 1, 3, 6 or 12} */
    public int bandsPerOctave() {
        return bandsPerOctave;
    }

    /**
     * {@return whether bands of this width are wider than those of another}
     *
     * @param other the other width
     */
    public boolean isCoarserThan(Resolution other) {
        return bandsPerOctave < other.bandsPerOctave;
    }

    /**
     * {@return the resolution of this name; empty where there is none}
     *
     * @param text as claims and sessions write it
     */
    public static Optional<Resolution> named(String text) {
        return Arrays.stream(values()).filter(r -> r.text.equals(text)).findFirst();
    }
}
