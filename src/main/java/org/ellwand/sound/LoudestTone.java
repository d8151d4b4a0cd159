package org.ellwand.sound;

import java.io.IOException;
import java.util.Arrays;
import org.ellwand.input.InputException;

/** Finds the strongest tone of a recording, by the spectrum of the loudest of its seconds. */
final class LoudestTone {
    private static final double LOWEST_HZ = 30;

    private LoudestTone() {}

    /** Frequency in Hz, within a few hundredths for a clean tone. */
    static double of(WavFile file, int channel) throws IOException, InputException {
        double[] loudest = new double[file.rateHz()];
        double[] next = new double[file.rateHz()];
        double most = -1;
        int filled = 0;
        try (SampleReader reader = file.open(channel)) {
            for (int count = reader.read(next); count > 0; count = reader.read(next)) {
                double energy = 0;
                for (int i = 0; i < count; i++) {
                    energy += next[i] * next[i];
                }
                if (energy > most) {
                    most = energy;
                    filled = count;
                    double[] spare = loudest;
                    loudest = next;
                    next = spare;
                }
            }
        }
        return of(loudest, filled, file.rateHz());
    }

    private static double of(double[] samples, int count, int rateHz) {
        double[] window = Spectra.hann(count);
        double[] windowed = new double[count];
        // An offset leaks into the lines beside it, which would be stronger than the tone.
        double offset = Arrays.stream(samples, 0, count).average().orElse(0);
        for (int i = 0; i < count; i++) {
            windowed[i] = (samples[i] - offset) * window[i];
        }
        int length = Spectra.lengthFor(2 * rateHz);
        double[][] parts = Spectra.forward(windowed, length);
        int best = 1;
        for (int k = (int) Math.ceil(LOWEST_HZ * length / rateHz); k < length / 2; k++) {
            best = power(parts, k) > power(parts, best) ? k : best;
        }
        return (best + vertex(parts, best)) * rateHz / length;
    }

    private static double power(double[][] parts, int k) {
        return parts[0][k] * parts[0][k] + parts[1][k] * parts[1][k];
    }

    /** Where the parabola through the logarithms of a line and its neighbours is highest, in lines from it. */
    private static double vertex(double[][] parts, int k) {
        double before = Math.log(power(parts, k - 1));
        double at = Math.log(power(parts, k));
        double after = Math.log(power(parts, k + 1));
        double shift = (before - after) / (2 * (before - 2 * at + after));
        return Double.isFinite(shift) && Math.abs(shift) <= 1 ? shift : 0;
    }
}
