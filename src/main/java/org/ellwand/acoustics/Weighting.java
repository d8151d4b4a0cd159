package org.ellwand.acoustics;

/**
 * Frequency weightings A, C and Z of IEC 61672-1:2013, annex E, with the exact pole frequencies.
 *
 * <p>A(f) = 20 lg[f4² f⁴ / ((f² + f1²) √(f² + f2²) √(f² + f3²) (f² + f4²))] − A(1 kHz) and
 * C(f) = 20 lg[f4² f² / ((f² + f1²)(f² + f4²))] − C(1 kHz), in dB. The table of the standard is this formula at the
 * exact mid-band frequencies 1000 · 10^(n/10), rounded to 0.1 dB; at nominal frequencies it differs by up to 0.2 dB.
 */
public enum Weighting {
    /** Weighting A. */
    A {
        @Override
        double relative(double f) {
            double s = f * f;
            return 20
                    * Math.log10(F4
                            * F4
                            * s
                            * s
                            / ((s + F1 * F1) * Math.sqrt(s + F2 * F2) * Math.sqrt(s + F3 * F3) * (s + F4 * F4)));
        }
    },
    /** Weighting C. */
    C {
        @Override
        double relative(double f) {
            double s = f * f;
            return 20 * Math.log10(F4 * F4 * s / ((s + F1 * F1) * (s + F4 * F4)));
        }
    },
    /** No weighting: 0 dB at every frequency. */
    Z {
        @Override
        double relative(double f) {
            return 0;
        }
    };

    private static final double F1 = 20.598997057618316;
    private static final double F2 = 107.65264864304629;
    private static final double F3 = 737.8622307362901;
    private static final double F4 = 12194.217147998012;

    abstract double relative(double frequencyHz);

    /**
     * {@return the weighting in dB at a frequency in Hz; 0 dB at 1 kHz}
     *
     * @param frequencyHz above 0, in Hz
     */
    public double atDb(double frequencyHz) {
        return relative(frequencyHz) - relative(1000);
    }
}
