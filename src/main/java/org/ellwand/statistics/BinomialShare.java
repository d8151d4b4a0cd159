package org.ellwand.statistics;

import org.apache.commons.statistics.distribution.BetaDistribution;
import org.apache.commons.statistics.distribution.BinomialDistribution;

/**
 * Which share of a population is inside, as said by values of which is known only whether they are (Clopper and Pearson
 * 1934). Holds for every population; conservative, since counts come in whole numbers. Shares and confidences lie between
 * 0 and 1, and both ends are allowed.
 *
 * @param count how many values, at least 1
 * @param inside how many of them are inside
 */
public record BinomialShare(int count, int inside) implements ShareEvidence {
    /** What rounding may take from a power that in decimals hits the confidence exactly. */
    private static final double ROUNDING = 1e-12;

    /**
     * Refuses counts that cannot be.
     *
     * @param count how many values, at least 1
     * @param inside how many of them are inside
     * @throws IllegalArgumentException where there is no value, or more are inside than there are
     */
    public BinomialShare {
        if (count < 1 || inside < 0 || inside > count) {
            throw new IllegalArgumentException(inside + " of " + count + " values cannot be inside");
        }
    }

    /** {@inheritDoc} P(B ≤ k − 1) for k inside, B binomial with this share. */
    @Override
    public double confidence(double share) {
        return BinomialDistribution.of(count, share).cumulativeProbability(inside - 1);
    }

    /** {@inheritDoc} P(B ≤ k) for k inside, B binomial with this share. */
    @Override
    public double chanceThisBad(double share) {
        return BinomialDistribution.of(count, share).cumulativeProbability(inside);
    }

    /** {@inheritDoc} The quantile 1 − confidence of the beta distribution with k and n − k + 1. */
    @Override
    public double shareAtLeast(double confidence) {
        return inside == 0
                ? 0
                : BetaDistribution.of(inside, count - inside + 1.0).inverseCumulativeProbability(1 - confidence);
    }

    /**
     * How many values, if all are inside, say with a confidence that at least a share is: the smallest n with
     * share^n ≤ 1 − confidence. Both lie between 0 and 1, both excluded.
     *
     * @param share of the population, between 0 and 1, both excluded
     * @param confidence between 0 and 1, both excluded
     * @return at least 1
     * @throws IllegalArgumentException outside these ranges
     */
    public static int countWithNoneOutside(double share, double confidence) {
        Shares.requireProper("a share", share);
        Shares.requireProper("a confidence", confidence);
        return (int) Math.max(1, Math.ceil(Math.log1p(-confidence) / Math.log(share) - ROUNDING));
    }
}
