package org.ellwand.sound;

import java.io.IOException;
import java.util.Arrays;
import java.util.Optional;
import org.ellwand.input.InputException;

/**
 * A mark at the beginning of every stimulus, by which recordings of it are put on one clock: a quarter of a second of a tone that rises
 * evenly from 1 to 6 kHz.
 *
 * <p>It is found by correlation: within the band of the mark, the part of the recording's energy that is the mark, for every
 * sample of the first two minutes. Noise reaches about 0.1 by chance, a mark through a plug stays above 0.3.
 */
public final class SyncMark {
    /** How long it lasts. */
    public static final double LENGTH_S = 0.25;

    /** Correlation from which on it is the mark. */
    public static final double LEAST = 0.3;

    /** It is looked for in so much of a recording. */
    public static final double SEARCHED_S = 120;

    private static final double FROM_HZ = 1000;
    private static final double TO_HZ = 6000;
    private static final double RAMP_S = 0.01;
    private static final int BLOCK = 1 << 17;

    private SyncMark() {}

    /** Its samples, of amplitude 1. */
    static double[] samples(double rateHz) {
        double[] samples = new double[(int) Math.round(LENGTH_S * rateHz)];
        int ramp = (int) (RAMP_S * rateHz);
        for (int i = 0; i < samples.length; i++) {
            double t = i / rateHz;
            double phase = 2 * Math.PI * (FROM_HZ * t + (TO_HZ - FROM_HZ) * t * t / (2 * LENGTH_S));
            double edge = Math.min(1, Math.min(i, samples.length - 1 - i) / (double) ramp);
            samples[i] = Math.sin(phase) * Math.pow(Math.sin(Math.PI / 2 * edge), 2);
        }
        return samples;
    }

    /**
     * {@return the frame at which the mark begins; empty where there is none}
     *
     * @param file the recording
     * @param channel from 1 on
     * @throws IOException where the file cannot be read
     * @throws InputException where the samples cannot be used
     */
    public static Optional<Long> find(WavFile file, int channel) throws IOException, InputException {
        double[] mark = samples(file.rateHz());
        double[][] spectrum = Spectra.forward(mark, BLOCK);
        int fresh = BLOCK - mark.length;
        double[] block = new double[BLOCK];
        double[] next = new double[fresh];
        long frames = Math.min(file.frames(), (long) (SEARCHED_S * file.rateHz()));
        double best = LEAST;
        long found = -1;
        long at = -mark.length;
        try (SampleReader reader = file.open(channel, 0, frames)) {
            for (int count = reader.read(next); count > 0; count = reader.read(next)) {
                System.arraycopy(block, fresh, block, 0, mark.length);
                System.arraycopy(next, 0, block, mark.length, count);
                Arrays.fill(block, mark.length + count, BLOCK, 0);
                double[] match = match(block, mark, spectrum, file.rateHz());
                for (int i = 0; i <= count; i++) {
                    if (match[i] > best && at + i >= 0) {
                        best = match[i];
                        found = at + i;
                    }
                }
                at += count;
            }
        }
        return found < 0 ? Optional.empty() : Optional.of(found);
    }

    /** Correlation of the mark with the block from each sample on, as a share of both energies within the mark's band. */
    private static double[] match(double[] block, double[] mark, double[][] spectrum, double rateHz) {
        double[][] parts = Spectra.forward(block, BLOCK);
        double[][] product = new double[2][BLOCK];
        for (int k = 0; k < BLOCK; k++) {
            double hz = Math.min(k, BLOCK - k) * rateHz / BLOCK;
            if (hz < FROM_HZ || hz > TO_HZ) {
                parts[0][k] = 0;
                parts[1][k] = 0;
            }
            product[0][k] = parts[0][k] * spectrum[0][k] + parts[1][k] * spectrum[1][k];
            product[1][k] = parts[1][k] * spectrum[0][k] - parts[0][k] * spectrum[1][k];
        }
        double[] correlation = Spectra.inverse(product);
        double[] within = Spectra.inverse(parts);
        double own = Arrays.stream(mark).map(x -> x * x).sum();
        double energy = 0;
        double all = Arrays.stream(within).map(x -> x * x).sum() / BLOCK;
        double[] match = new double[BLOCK];
        for (int i = 0; i < mark.length; i++) {
            energy += within[i] * within[i];
        }
        for (int i = 0; i + mark.length < BLOCK; i++) {
            // Rounding must not make a mark of silence.
            double floor = 1e-9 * all * mark.length;
            match[i] = energy > 0 ? Math.abs(correlation[i]) / Math.sqrt(own * (energy + floor)) : 0;
            energy = Math.max(0, energy + within[i + mark.length] * within[i + mark.length] - within[i] * within[i]);
        }
        return match;
    }
}
