package org.ellwand.statistics;

/**
 * Independent values of one normal population, told by their mean and their standard deviation.
 *
 * @param count how many, at least 2
 * @param mean arithmetic mean, finite
 * @param standardDeviation with n − 1 in the denominator; not negative. Equal values should give 0 exactly: what
 *     rounding leaves instead would be taken as scatter
 */
public record NormalSample(int count, double mean, double standardDeviation) {
    /**
     * Refuses what no sample has.
     *
     * @param count how many, at least 2
     * @param mean arithmetic mean, finite
     * @param standardDeviation with n − 1 in the denominator
     * @throws IllegalArgumentException where there are fewer than two values, a number is not finite, or the deviation
     *     is negative
     */
    public NormalSample {
        Shares.requireSample(count);
        if (!(Double.isFinite(mean) && Double.isFinite(standardDeviation) && standardDeviation >= 0)) {
            throw new IllegalArgumentException("no values have mean " + mean + " and deviation " + standardDeviation);
        }
    }
}
