package org.ellwand.examples;

import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Resolution;

/** Curves that a response is held against, and a slope that several products share. */
final class Targets {
    private Targets() {}

    static String octaves(DoubleUnaryOperator curveDb) {
        return sheet(Resolution.OCTAVE, -2, 3, curveDb);
    }

    static String thirds(int first, int last, DoubleUnaryOperator curveDb) {
        return sheet(Resolution.THIRD_OCTAVE, first, last, curveDb);
    }

    private static String sheet(Resolution resolution, int first, int last, DoubleUnaryOperator curveDb) {
        return IntStream.rangeClosed(first, last)
                .mapToObj(i -> new Band(resolution, i))
                .map(band ->
                        String.format(Locale.ROOT, "%s,%.1f\n", Sheet.hz(band), curveDb.applyAsDouble(band.exactHz())))
                .collect(Collectors.joining("", "frequency (Hz),level (dB)\n", ""));
    }

    /** Second order without a peak (Butterworth): −10 lg(1 + (f₀/f)⁴) dB, −3 dB at f₀. Textbook. */
    static double highPassDb(double frequencyHz, double cornerHz) {
        return -10 * Math.log10(1 + Math.pow(cornerHz / frequencyHz, 4));
    }
}
