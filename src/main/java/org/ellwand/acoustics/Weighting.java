package org.ellwand.acoustics;

import org.ellwand.amount.Unit;

/**
 * Frequency weightings A, C and Z of IEC 61672-1:2013, annex E, with the exact pole frequencies.
 *
 * <p>A(f) = 20 lg[f4² f⁴ / ((f² + f1²) √(f² + f2²) √(f² + f3²) (f² + f4²))] − A(1 kHz) and
 * C(f) = 20 lg[f4² f² / ((f² + f1²)(f² + f4²))] − C(1 kHz), in dB. The table of the standard is this formula at the
 * exact mid-band frequencies 1000 · 10^(n/10), rounded to 0.1 dB; at nominal frequencies it differs by up to 0.2 dB.
 */
public enum Weighting {
    /** Weighting A. */
    A(Unit.DB_A) {
        @Override
        double relative(double f) {
            double s = f * f;
            return 20
                    * Math.log10(F4_HZ
                            * F4_HZ
                            * s
                            * s
                            / ((s + F1_HZ * F1_HZ)
                                    * Math.sqrt(s + F2_HZ * F2_HZ)
                                    * Math.sqrt(s + F3_HZ * F3_HZ)
                                    * (s + F4_HZ * F4_HZ)));
        }
    },
    /** Weighting C. */
    C(Unit.DB_C) {
        @Override
        double relative(double f) {
            double s = f * f;
            return 20 * Math.log10(F4_HZ * F4_HZ * s / ((s + F1_HZ * F1_HZ) * (s + F4_HZ * F4_HZ)));
        }
    },
    /** No weighting: 0 dB at every frequency. */
    Z(Unit.DB_SPL) {
        @Override
        double relative(double f) {
            return 0;
        }
    };

    /** Frequency of the two lowest poles of A and C, in Hz. */
    public static final double F1_HZ = 20.598997057618316;
    /** Frequency of the second pole of A, in Hz. */
    public static final double F2_HZ = 107.65264864304629;
    /** Frequency of the third pole of A, in Hz. */
    public static final double F3_HZ = 737.8622307362901;
    /** Frequency of the two highest poles of A and C, in Hz. */
    public static final double F4_HZ = 12194.217147998012;

    private final Unit levelUnit;

    Weighting(Unit levelUnit) {
        this.levelUnit = levelUnit;
    }

    /** {@return the unit of levels in this weighting} */
    public Unit levelUnit() {
        return levelUnit;
    }

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
