package org.ellwand.acoustics;

import java.util.Arrays;
import java.util.Optional;

/** Width of the bands of a spectrum: bands per octave of frequency ratio 10^(3/10) (IEC 61260-1, base ten). */
public enum Resolution {
    OCTAVE("octave", 1),
    THIRD_OCTAVE("third-octave", 3),
    SIXTH_OCTAVE("sixth-octave", 6),
    TWELFTH_OCTAVE("twelfth-octave", 12);

    private final String text;
    private final int bandsPerOctave;

    Resolution(String text, int bandsPerOctave) {
        this.text = text;
        this.bandsPerOctave = bandsPerOctave;
    }

    public String text() {
        return text;
    }

    public int bandsPerOctave() {
        return bandsPerOctave;
    }

    public boolean isCoarserThan(Resolution other) {
        return bandsPerOctave < other.bandsPerOctave;
    }

    public static Optional<Resolution> named(String text) {
        return Arrays.stream(values()).filter(r -> r.text.equals(text)).findFirst();
    }
}
