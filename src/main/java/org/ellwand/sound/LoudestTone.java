package org.ellwand.sound;

import java.io.IOException;
import java.util.Arrays;
import org.ellwand.input.InputException;

/** Finds the strongest tone of a recording, by the spectrum of the loudest of its seconds. */
final class LoudestTone {
    private static final double LOWEST_HZ = 30;

    /** A line so near a tone may be the tone's own: Hann's window over a second, and a tone that moves a little. */
    private static final double OWN_HZ = 6;

    private LoudestTone() {}

    /**
     * The strongest tone beside the one that is looked for.
     *
     * @param frequencyHz of the strongest line
     * @param aboveDb how far it lies above the strongest line near the tone that is looked for; 0 where it is the same
     */
    record Beside(double frequencyHz, double aboveDb) {}

    /** Frequency in Hz, within a few hundredths for a clean tone. */
    static double of(WavFile file, int channel) throws IOException, InputException {
        double[][] parts = spectrum(RecordedPart.whole(file, channel));
        int best = strongest(parts, line(parts, LOWEST_HZ, file.rateHz()), parts[0].length / 2);
        return (best + vertex(parts, best)) * file.rateHz() / parts[0].length;
    }

    static Beside beside(RecordedPart part, double frequencyHz) throws IOException, InputException {
        int rateHz = part.file().rateHz();
        double[][] parts = spectrum(part);
        int best = strongest(parts, line(parts, LOWEST_HZ, rateHz), parts[0].length / 2);
        double bestHz = (best + vertex(parts, best)) * rateHz / parts[0].length;
        if (Math.abs(bestHz - frequencyHz) <= OWN_HZ) {
            return new Beside(bestHz, 0);
        }
        int own = strongest(
                parts,
                line(parts, Math.max(0, frequencyHz - OWN_HZ), rateHz),
                line(parts, frequencyHz + OWN_HZ, rateHz));
        return new Beside(bestHz, 10 * Math.log10(power(parts, best) / Math.max(power(parts, own), Double.MIN_NORMAL)));
    }

    private static int line(double[][] parts, double frequencyHz, int rateHz) {
        return Math.min((int) Math.ceil(frequencyHz * parts[0].length / rateHz), parts[0].length / 2 - 1);
    }

    private static int strongest(double[][] parts, int from, int to) {
        int best = from;
        for (int k = from; k < to; k++) {
            best = power(parts, k) > power(parts, best) ? k : best;
        }
        return best;
    }

    /** Of the loudest second. */
    private static double[][] spectrum(RecordedPart part) throws IOException, InputException {
        double[] loudest = new double[part.file().rateHz()];
        double[] next = new double[part.file().rateHz()];
        double most = -1;
        int filled = 0;
        try (SampleReader reader = part.open()) {
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
        return spectrum(loudest, filled, part.file().rateHz());
    }

    private static double[][] spectrum(double[] samples, int count, int rateHz) {
        double[] window = Spectra.hann(count);
        double[] windowed = new double[count];
        // An offset leaks into the lines beside it, which would be stronger than the tone.
        double offset = Arrays.stream(samples, 0, count).average().orElse(0);
        for (int i = 0; i < count; i++) {
            windowed[i] = (samples[i] - offset) * window[i];
        }
        return Spectra.forward(windowed, Spectra.lengthFor(2 * rateHz));
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
