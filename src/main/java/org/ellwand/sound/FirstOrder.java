package org.ellwand.sound;

/** A filter of first order: y = b0 x(i) + b1 x(i−1) + p y(i−1). */
final class FirstOrder {
    private static final double SILENCE = 1e-100;

    private final double b0;
    private final double b1;
    private final double pole;
    private double state;

    FirstOrder(double b0, double b1, double pole) {
        this.b0 = b0;
        this.b1 = b1;
        this.pole = pole;
    }

    /** High-pass with −3.01 dB at a frequency far below half the rate, by the bilinear transform. */
    static FirstOrder highPass(double frequencyHz, double rateHz) {
        double w = Math.tan(Math.PI * frequencyHz / rateHz);
        double gain = 1 / (1 + w);
        return new FirstOrder(gain, -gain, (1 - w) / (1 + w));
    }

    /**
     * Low-pass |H|² = 1 / (1 + (f/fc)²), exact at 0 Hz and at two more frequencies. With u = sin²(π f / rate) the response of
     * every filter of first order is |H|² = (1 + n u) / (1 + d u); two values of |H|² give n and d, and these the zero and
     * the pole. The bilinear transform would bend the curve to nothing at half the rate.
     */
    static FirstOrder lowPass(double cutoffHz, double exactHz, double alsoExactHz, double rateHz) {
        double u1 = squaredSine(exactHz, rateHz);
        double u2 = squaredSine(alsoExactHz, rateHz);
        double m1 = 1 / (1 + Math.pow(exactHz / cutoffHz, 2));
        double m2 = 1 / (1 + Math.pow(alsoExactHz / cutoffHz, 2));
        double d = ((m2 - 1) / u2 - (m1 - 1) / u1) / (m1 - m2);
        double n = (m1 - 1) / u1 + m1 * d;
        double pole = root(d);
        double zero = root(n);
        double gain = (1 - pole) / (1 - zero);
        return new FirstOrder(gain, -gain * zero, pole);
    }

    private static double squaredSine(double frequencyHz, double rateHz) {
        double sine = Math.sin(Math.PI * frequencyHz / rateHz);
        return sine * sine;
    }

    /** The r inside the unit circle with |1 − r/z|² / (1 − r)² = 1 + c u. */
    private static double root(double c) {
        return c == 0 ? 0 : (c + 2 - 2 * Math.sqrt(c + 1)) / c;
    }

    /** Squared response at a frequency. */
    double power(double frequencyHz, double rateHz) {
        double cosine = Math.cos(2 * Math.PI * frequencyHz / rateHz);
        return (b0 * b0 + b1 * b1 + 2 * b0 * b1 * cosine) / (1 + pole * pole - 2 * pole * cosine);
    }

    /** Filters the first {@code count} samples in place. */
    void filter(double[] samples, int count) {
        double s = state;
        for (int i = 0; i < count; i++) {
            double x = samples[i];
            double y = b0 * x + s;
            s = b1 * x + pole * y;
            samples[i] = y;
        }
        state = Math.abs(s) < SILENCE ? 0 : s;
    }
}
