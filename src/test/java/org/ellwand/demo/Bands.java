package org.ellwand.demo;

import java.util.List;
import java.util.stream.IntStream;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Resolution;

/** The 21 third-octave bands of the demo, 100 Hz to 10 kHz: seven whole octaves, 125 Hz to 8 kHz. */
public final class Bands {
    static final List<Band> ALL = IntStream.rangeClosed(-10, 10)
            .mapToObj(index -> new Band(Resolution.THIRD_OCTAVE, index))
            .toList();

    private Bands() {}

    /** Distance in octaves of a frequency from a centre. */
    public static double octaves(double frequencyHz, double centreHz) {
        return Math.log(frequencyHz / centreHz) / Math.log(2);
    }

    /** A bell of height 1 at the centre, 1/2 at {@code halfWidth} octaves from it: 1 / (1 + x²). */
    public static double bell(double frequencyHz, double centreHz, double halfWidth) {
        double x = octaves(frequencyHz, centreHz) / halfWidth;
        return 1 / (1 + x * x);
    }

    /** Level of several paths that add up as energies: 10 lg Σ 10^(L/10) dB. */
    public static double energySumDb(double... levelsDb) {
        double sum = 0;
        for (double levelDb : levelsDb) {
            sum += Math.pow(10, levelDb / 10);
        }
        return 10 * Math.log10(sum);
    }
}
