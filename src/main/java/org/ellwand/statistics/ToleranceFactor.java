package org.ellwand.statistics;

/**
 * Factors k of normal tolerance intervals: how many standard deviations of the n values an interval must reach from
 * their mean to hold at least a share of the population with a confidence. One-sided and two-sided factors differ and
 * are often taken for each other: for n = 10 and 95 % with 95 % confidence they are 2.911 and 3.393.
 *
 * <p>All take at least two values, and a share and a confidence between 0 and 1, both excluded
 * ({@link IllegalArgumentException} otherwise).
 */
public final class ToleranceFactor {
    private ToleranceFactor() {}

    /**
     * The share lies above mean − k s (or: below mean + k s). Exact, k = t'(confidence; n − 1, z √n) / √n with the
     * quantile t' of the noncentral t and z that of the share (NIST/SEMATECH e-Handbook, 7.2.6.3).
     *
     * @param count of the values, at least 2
     * @param share of the population, between 0 and 1
     * @param confidence between 0 and 1
     * @return k
     * @throws IllegalArgumentException outside these ranges
     */
    public static double oneSided(int count, double share, double confidence) {
        requireProper(count, share, confidence);
        double root = Math.sqrt(count);
        return NoncentralT.of(count - 1, NormalErrors.z(share) * root).quantile(confidence) / root;
    }

    /**
     * The share lies between mean − k s and mean + k s. Exact by quadrature, not Howe's approximation.
     *
     * @param count of the values, at least 2
     * @param share of the population, between 0 and 1
     * @param confidence between 0 and 1
     * @return k
     * @throws IllegalArgumentException outside these ranges
     */
    public static double twoSided(int count, double share, double confidence) {
        requireProper(count, share, confidence);
        return new CentralCoverage(count, share).factor(confidence);
    }

    private static void requireProper(int count, double share, double confidence) {
        Shares.requireSample(count);
        Shares.requireProper("a share", share);
        Shares.requireProper("a confidence", confidence);
    }
}
