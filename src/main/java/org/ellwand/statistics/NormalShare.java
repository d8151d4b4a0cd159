package org.ellwand.statistics;

import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Which share of a normal population is inside limits, as said by a sample. Where a common error shifts all values
 * together, everything is averaged over that error, N(0, {@code commonDeviation}²).
 *
 * <p>With one limit the confidence is exact: P(T ≤ √n (mean − limit)/s) of the noncentral t with ν = n − 1 and
 * δ = z √n. With two it is that of the exact two-sided tolerance interval about the mean that just fits between them:
 * for a mean off the middle, or limits of which one hardly matters, it is less than could be said. Values without scatter
 * say 1 inside (the limits belong to it) and 0 outside.
 *
 * @param sample what was observed
 * @param limits in the unit of the values
 * @param commonDeviation standard deviation of the common error, in the unit of the values; 0 for none
 */
public record NormalShare(NormalSample sample, Limits limits, double commonDeviation) implements ShareEvidence {
    private static final double FARTHEST_Z = 6;
    private static final double Z_ACCURACY = 1e-10;
    private static final int MOST_STEPS = 1000;

    /**
     * Refuses a deviation that is none.
     *
     * @param sample what was observed
     * @param limits in the unit of the values
     * @param commonDeviation standard deviation of the common error, in the unit of the values
     * @throws IllegalArgumentException where {@code commonDeviation} is negative or not finite
     */
    public NormalShare {
        if (!(Double.isFinite(commonDeviation) && commonDeviation >= 0)) {
            throw new IllegalArgumentException("no common error has a deviation of " + commonDeviation);
        }
    }

    /**
     * Values without a common error.
     *
     * @param sample what was observed
     * @param limits in the unit of the values
     */
    public NormalShare(NormalSample sample, Limits limits) {
        this(sample, limits, 0);
    }

    /**
     * {@inheritDoc} The share lies between 0 and 1, both excluded.
     *
     * @throws IllegalArgumentException where it does not
     */
    @Override
    public double confidence(double share) {
        Shares.requireProper("a share", share);
        if (limits.isOpen()) {
            return 1;
        }
        if (sample.standardDeviation() == 0) {
            return meanInside();
        }
        return limits.isOneSided() ? oneSided(limits.margin(sample.mean()), share) : twoSided(share);
    }

    /**
     * {@inheritDoc} With two limits it is twice the smaller of the probabilities at either limit, at most 1. That is
     * conservative: each is taken as if its side alone let out all that may be out. The share lies between 0 and 1, both
     * excluded.
     *
     * @throws IllegalArgumentException where it does not
     */
    @Override
    public double chanceThisBad(double share) {
        Shares.requireProper("a share", share);
        double below = oneSided(sample.mean() - limits.lower(), share);
        double above = oneSided(limits.upper() - sample.mean(), share);
        double worse = Math.min(below, above);
        return limits.isOneSided() ? worse : Math.min(1, 2 * worse);
    }

    /**
     * {@inheritDoc} 0 where nothing can be said; within 1e-9 of the ends it stays there.
     *
     * @throws IllegalArgumentException where the confidence does not lie between 0 and 1, both excluded
     */
    @Override
    public double shareAtLeast(double confidence) {
        Shares.requireProper("a confidence", confidence);
        if (confidenceAt(-FARTHEST_Z) < confidence) {
            return 0;
        }
        if (confidenceAt(FARTHEST_Z) >= confidence) {
            return 1;
        }
        return NormalErrors.phi(new BrentSolver(Z_ACCURACY)
                .solve(MOST_STEPS, z -> confidenceAt(z) - confidence, -FARTHEST_Z, FARTHEST_Z));
    }

    private double confidenceAt(double z) {
        return confidence(NormalErrors.phi(z));
    }

    private double meanInside() {
        NormalErrors common = new NormalErrors(commonDeviation);
        return common.atLeast(limits.lower() - sample.mean()) - (1 - common.atMost(limits.upper() - sample.mean()));
    }

    /** P(T ≤ t) for the distance by which the mean keeps off the limit, averaged over the common error. */
    private double oneSided(double margin, double share) {
        double deviation = sample.standardDeviation();
        if (deviation == 0) {
            return new NormalErrors(commonDeviation).atLeast(-margin);
        }
        double root = Math.sqrt(sample.count());
        return NoncentralT.of(sample.count() - 1, NormalErrors.z(share) * root)
                .atMost(root * margin / deviation, root * commonDeviation / deviation);
    }

    private double twoSided(double share) {
        CentralCoverage coverage = new CentralCoverage(sample.count(), share);
        return commonDeviation == 0
                ? coverage.confidence(limits.margin(sample.mean()) / sample.standardDeviation())
                : new ShiftedCoverage(coverage, sample, limits).mean(commonDeviation);
    }
}
