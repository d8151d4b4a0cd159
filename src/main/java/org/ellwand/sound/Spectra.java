package org.ellwand.sound;

import org.apache.commons.math3.transform.DftNormalization;
import org.apache.commons.math3.transform.FastFourierTransformer;
import org.apache.commons.math3.transform.TransformType;

/** Fourier transforms of real sounds by commons-math's {@code FastFourierTransformer}, on arrays. */
final class Spectra {
    private Spectra() {}

    /** The smallest power of two that is not below a count. */
    static int lengthFor(int count) {
        return count <= 1 ? 1 : Integer.highestOneBit(count - 1) << 1;
    }

    /**
     * The transform Σ x(i) e^(−2πj i k / n).
     *
     * @param length n, a power of two; the samples are cut or filled with zeros to it
     * @return real and imaginary parts
     */
    static double[][] forward(double[] samples, int length) {
        double[][] parts = new double[2][length];
        System.arraycopy(samples, 0, parts[0], 0, Math.min(length, samples.length));
        FastFourierTransformer.transformInPlace(parts, DftNormalization.STANDARD, TransformType.FORWARD);
        return parts;
    }

    /** The real part of the inverse transform; overwrites what it is given. */
    static double[] inverse(double[][] parts) {
        FastFourierTransformer.transformInPlace(parts, DftNormalization.STANDARD, TransformType.INVERSE);
        return parts[0];
    }

    /** Half of a sine squared: Hann's window over a length, periodic. */
    static double[] hann(int length) {
        double[] window = new double[length];
        for (int i = 0; i < length; i++) {
            double sine = Math.sin(Math.PI * i / length);
            window[i] = sine * sine;
        }
        return window;
    }
}
