package org.ellwand.sound;

import org.apache.commons.math3.util.FastMath;

/**
 * Symmetric low-pass filters with a cut-off at a quarter of the sampling rate, of which every other coefficient is zero:
 * a sinc under a Kaiser window (beta and length after Kaiser's formulas, as restated in Oppenheim and Schafer,
 * "Discrete-Time Signal Processing", from memory). The response at f and at half the rate less f adds up to one.
 */
final class HalfBand {
    private HalfBand() {}

    /**
     * Coefficients at the distances 1, 3, 5 ... from the middle one, which is 0.5.
     *
     * @param transition width of the slope as a share of the sampling rate
     * @param attenuationDb above 50, reached beyond the slope
     */
    static double[] side(double transition, double attenuationDb) {
        double beta = 0.1102 * (attenuationDb - 8.7);
        int taps = (int) Math.ceil((attenuationDb - 8) / (2.285 * 2 * Math.PI * transition)) + 1;
        int count = Math.max(1, (taps + 1) / 4 + 1);
        double[] side = new double[count];
        double sum = 0;
        for (int k = 0; k < count; k++) {
            int distance = 2 * k + 1;
            double place = (double) distance / (2 * count);
            side[k] = FastMath.sin(Math.PI * distance / 2)
                    / (Math.PI * distance)
                    * bessel(beta * Math.sqrt(1 - place * place))
                    / bessel(beta);
            sum += side[k];
        }
        for (int k = 0; k < count; k++) {
            // A constant passes unchanged.
            side[k] *= 0.25 / sum;
        }
        return side;
    }

    /** Modified Bessel function of the first kind and order zero, by its power series. */
    private static double bessel(double x) {
        double term = 1;
        double sum = 1;
        for (int k = 1; term > 1e-17 * sum; k++) {
            term *= (x / (2 * k)) * (x / (2 * k));
            sum += term;
        }
        return sum;
    }
}
