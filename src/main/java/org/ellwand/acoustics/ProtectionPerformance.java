package org.ellwand.acoustics;

import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;

/** Factors α of ISO 4869-2 for the share of wearers that are protected at least so much (from memory). */
public final class ProtectionPerformance {
    private static final Map<Integer, Double> FACTORS =
            Map.of(75, 0.67, 80, 0.84, 84, 1.00, 85, 1.04, 90, 1.28, 95, 1.64);

    private ProtectionPerformance() {}

    /** {@return the shares that have a factor, in %, ascending} */
    public static SortedSet<Integer> percents() {
        return new TreeSet<>(FACTORS.keySet());
    }

    /**
     * {@return α, the standard deviations that are taken off the mean}
     *
     * @param percent 75, 80, 84, 85, 90 or 95
     * @throws IllegalArgumentException for any other
     */
    public static double factor(int percent) {
        Double factor = FACTORS.get(percent);
        if (factor == null) {
            throw new IllegalArgumentException("ISO 4869-2 has no factor for " + percent + " %");
        }
        return factor;
    }
}
