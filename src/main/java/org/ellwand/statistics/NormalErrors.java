package org.ellwand.statistics;

import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * Normal errors about zero. A standard deviation of zero is allowed: the value is then taken as exact, and an end of a
 * range belongs to the range.
 *
 * @param standardDeviation not negative
 */
public record NormalErrors(double standardDeviation) implements Errors {
    private static final NormalDistribution STANDARD = NormalDistribution.of(0, 1);

    /**
     * {@return Φ(z), the standard normal distribution function}
     *
     * @param z in standard deviations
     */
    public static double phi(double z) {
        return STANDARD.cumulativeProbability(z);
    }

    /**
     * {@return the z with Φ(z) = p}
     *
     * @param p a probability
     */
    public static double z(double p) {
        return STANDARD.inverseCumulativeProbability(p);
    }

    @Override
    public double atMost(double x) {
        return standardDeviation == 0 ? (x >= 0 ? 1 : 0) : phi(x / standardDeviation);
    }

    @Override
    public double atLeast(double x) {
        return standardDeviation == 0 ? (x <= 0 ? 1 : 0) : phi(-x / standardDeviation);
    }

    @Override
    public double quantile(double probability) {
        return standardDeviation == 0 ? 0 : standardDeviation * z(probability);
    }

    @Override
    public double standardUncertainty() {
        return standardDeviation;
    }
}
