package org.ellwand.sound;

import org.ellwand.statistics.NormalStream;

/**
 * Pink noise that repeats: one period of lines with random phases and amplitudes that fall by 3 dB per octave from 20 Hz to
 * 20 kHz, so that every band has its level in every period. The crest factor is brought down by clipping what stands out
 * and giving the lines their amplitudes back, over and over: phases remain that let the peaks lie lower.
 */
final class PinkNoise {
    private static final double LOWEST_HZ = 20;
    private static final double HIGHEST_HZ = 20_000;
    private static final double HIGHEST_SHARE = 0.46;
    private static final int ROUNDS = 60;
    /** A little below what is asked, because giving the amplitudes back lets peaks rise again. */
    private static final double HARDER = 0.97;

    private PinkNoise() {}

    /** Samples of a period: a power of two, 5 s or more. */
    static int period(double rateHz) {
        return Spectra.lengthFor((int) (5 * rateHz));
    }

    /**
     * One period with a root mean square of 1.
     *
     * @param crest peak over root mean square, from 2 on
     */
    static double[] of(double rateHz, double crest, long seed) {
        int length = period(rateHz);
        double[] target = amplitudes(length, rateHz);
        double[] samples = random(target, seed);
        for (int round = 0; round < ROUNDS && peak(samples) > crest; round++) {
            double most = HARDER * crest;
            for (int i = 0; i < length; i++) {
                samples[i] = Math.max(-most, Math.min(most, samples[i]));
            }
            samples = reshaped(samples, target);
        }
        return samples;
    }

    /** Amplitude of each line of the transform for a mean square of 1. */
    private static double[] amplitudes(int length, double rateHz) {
        double[] amplitudes = new double[length / 2];
        double power = 0;
        double highest = Math.min(HIGHEST_HZ, HIGHEST_SHARE * rateHz);
        for (int k = 1; k < amplitudes.length; k++) {
            double hz = k * rateHz / length;
            if (hz >= LOWEST_HZ / 1.3 && hz <= highest * 1.05) {
                amplitudes[k] = 1 / Math.sqrt(hz);
                power += 1 / hz;
            }
        }
        // A line and its mirror with amplitude a each make the mean square 2 a² / length².
        double scale = length / Math.sqrt(2 * power);
        for (int k = 0; k < amplitudes.length; k++) {
            amplitudes[k] *= scale;
        }
        return amplitudes;
    }

    private static double[] random(double[] target, long seed) {
        int length = 2 * target.length;
        double[] normal = new double[length];
        new NormalStream(seed).fill(normal, length);
        return reshaped(normal, target);
    }

    /** The same phases with other amplitudes. */
    private static double[] reshaped(double[] samples, double[] target) {
        int length = samples.length;
        double[][] parts = Spectra.forward(samples, length);
        for (int k = 0; k <= length / 2; k++) {
            double wanted = k < target.length ? target[k] : 0;
            double is = Math.hypot(parts[0][k], parts[1][k]);
            double factor = wanted == 0 || is == 0 ? 0 : wanted / is;
            set(parts, k, factor * parts[0][k], factor * parts[1][k]);
        }
        return Spectra.inverse(parts);
    }

    private static void set(double[][] parts, int k, double real, double imaginary) {
        int mirror = (parts[0].length - k) % parts[0].length;
        parts[0][k] = real;
        parts[1][k] = imaginary;
        parts[0][mirror] = real;
        parts[1][mirror] = mirror == k ? imaginary : -imaginary;
    }

    static double peak(double[] samples) {
        double peak = 0;
        for (double x : samples) {
            peak = Math.max(peak, Math.abs(x));
        }
        return peak;
    }
}
