package org.ellwand.plan;

import org.ellwand.statistics.NormalErrors;
import org.ellwand.statistics.ObservedDeviation;
import org.ellwand.statistics.ToleranceFactor;

/**
 * How often a sample tells that a share of all lies inside a limit: where its mean lies k of its own standard deviations or more from
 * either end, k the factor of a normal tolerance interval. Mean and deviation of the sample vary: for one end the chance is P(T ≥ k √n)
 * of the noncentral t with n − 1 degrees of freedom and the true distance times √n.
 *
 * @param toLower from the mean to the lower end in standard deviations of the population; infinite where there is none
 * @param toUpper from the mean to the upper end
 */
record ShareChance(double toLower, double toUpper, double share, double confidence) {
    /** @param count at least two */
    double of(int count) {
        boolean twoEnds = Double.isFinite(toLower) && Double.isFinite(toUpper);
        double k = twoEnds
                ? ToleranceFactor.twoSided(count, share, confidence)
                : ToleranceFactor.oneSided(count, share, confidence);
        double root = Math.sqrt(count);
        return ObservedDeviation.mean(count - 1, ratio -> {
            double lower = NormalErrors.phi((k * ratio - toLower) * root);
            double upper = NormalErrors.phi((toUpper - k * ratio) * root);
            return Math.max(0, upper - lower);
        });
    }
}
