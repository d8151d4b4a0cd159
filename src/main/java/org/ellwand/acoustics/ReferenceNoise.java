package org.ellwand.acoustics;

import java.util.List;
import java.util.SortedMap;

/**
 * A noise that ratings of hearing protectors are computed against: A-weighted octave-band levels.
 *
 * <p>Eight noises of 100 dB(A) each (ISO 4869-2:1994, table 2, from memory; the columns from 125 Hz on, L_C − L_A and d also read
 * in a public restatement) and pink noise of 100 dB(C) (from memory). They are confirmed by arithmetic: the eight sum to
 * 100 ± 0.05 dB(A) and give the printed L_C − L_A, pink noise sums to 100.00 dB(C) and 98.49 dB(A).
 *
 * @param aWeightedDb in the octave bands from 63 Hz to 8 kHz, dB(A)
 * @param weight d of the formulas for H, M and L: L_C − L_A of the noises 1 to 4, L_C − L_A − 5.28 dB of the noises 5 to 8, in dB
 */
public record ReferenceNoise(List<Double> aWeightedDb, double weight) {
    /** Nominal mid-band frequencies in Hz. */
    public static final List<Integer> OCTAVES_HZ = List.of(63, 125, 250, 500, 1000, 2000, 4000, 8000);

    /** Noises 1 to 4: little below 500 Hz. */
    public static final List<ReferenceNoise> HIGH = List.of(
            of(-1.20, 51.4, 62.6, 70.8, 81.0, 90.4, 96.2, 94.7, 92.3),
            of(-0.49, 59.5, 68.9, 78.3, 84.3, 92.8, 96.3, 94.0, 90.0),
            of(0.14, 59.8, 71.1, 80.8, 88.0, 95.0, 94.4, 94.1, 89.0),
            of(1.56, 65.4, 77.2, 84.5, 89.8, 95.5, 94.3, 92.5, 88.8));

    /** Noises 5 to 8: more and more below 500 Hz. */
    public static final List<ReferenceNoise> LOW = List.of(
            of(-2.98, 65.3, 77.4, 86.5, 92.5, 96.4, 93.0, 90.4, 83.7),
            of(-1.01, 70.7, 82.0, 89.3, 93.3, 95.6, 93.0, 90.1, 83.0),
            of(0.85, 75.6, 84.2, 90.1, 93.6, 96.2, 91.3, 87.9, 81.9),
            of(3.14, 77.6, 88.0, 93.4, 93.8, 94.2, 91.4, 87.9, 79.9));

    /** Pink noise of 100 dB(C), which SNR is computed against; it has no weight. */
    public static final ReferenceNoise PINK = of(0, 65.3, 75.4, 82.9, 88.3, 91.5, 92.7, 92.5, 90.4);

    private static final double NOMINAL_DB = 100;

    private static ReferenceNoise of(double weight, Double... aWeightedDb) {
        return new ReferenceNoise(List.of(aWeightedDb), weight);
    }

    /**
     * Predicted noise reduction: 100 dB − 10 lg Σ 10^(0.1 (L_A − APV)), in dB, over the octave bands that have an APV
     * (assumed protection value); others are left out of the sum.
     *
     * @param protectionDb assumed protection values in dB, by nominal octave frequency in Hz
     * @return in dB
     */
    public double reductionDb(SortedMap<Integer, Double> protectionDb) {
        double[] protectedDb = protectionDb.entrySet().stream()
                .filter(apv -> OCTAVES_HZ.contains(apv.getKey()))
                .mapToDouble(apv -> aWeightedDb.get(OCTAVES_HZ.indexOf(apv.getKey())) - apv.getValue())
                .toArray();
        return NOMINAL_DB - Energy.sumDb(protectedDb);
    }
}
