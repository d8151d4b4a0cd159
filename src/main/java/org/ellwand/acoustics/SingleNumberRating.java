package org.ellwand.acoustics;

import java.util.List;
import java.util.SortedMap;

/**
 * Ratings of a hearing protector by ISO 4869-2 (formulas from memory, checked in the tests against invariants that need no
 * table), from the reductions PNR of the {@link ReferenceNoise}s:
 *
 * <ul>
 *   <li>H = ¼ Σ PNR − 0.48 Σ d PNR over the noises 1 to 4,
 *   <li>M = ¼ Σ PNR − 0.16 Σ d PNR and L = ¼ Σ PNR + 0.23 Σ d PNR over the noises 5 to 8,
 *   <li>SNR = PNR of pink noise of 100 dB(C).
 * </ul>
 */
public enum SingleNumberRating {
    /** Single number rating, against pink noise. */
    SNR(0),
    /** High-frequency attenuation value. */
    H(-0.48),
    /** Medium-frequency attenuation value. */
    M(-0.16),
    /** Low-frequency attenuation value. */
    L(0.23);

    private final double slope;

    SingleNumberRating(double slope) {
        this.slope = slope;
    }

    private List<ReferenceNoise> noises() {
        return switch (this) {
            case SNR -> List.of(ReferenceNoise.PINK);
            case H -> ReferenceNoise.HIGH;
            case M, L -> ReferenceNoise.LOW;
        };
    }

    /**
     * {@return the rating in dB, not rounded, of assumed protection values in dB by nominal octave frequency in Hz}
     *
     * @param protectionDb assumed protection values in dB, by nominal octave frequency in Hz
     */
    public double ofDb(SortedMap<Integer, Double> protectionDb) {
        double rating = 0;
        for (ReferenceNoise noise : noises()) {
            rating += noise.reductionDb(protectionDb) * (1.0 / noises().size() + slope * noise.weight());
        }
        return rating;
    }
}
