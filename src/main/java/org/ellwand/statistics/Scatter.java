package org.ellwand.statistics;

/**
 * An error known from few observations only: a Student t of {@code degreesOfFreedom}, scaled (JCGM 101:2008, 6.4.9).
 *
 * @param degreesOfFreedom at least 1
 * @param scale standard deviation of the mean as observed, s / √n; not negative
 */
public record Scatter(int degreesOfFreedom, double scale) {
    /**
     * Refuses a single observation.
     *
     * @param degreesOfFreedom at least 1
     * @param scale standard deviation of the mean as observed, s / √n
     * @throws IllegalArgumentException where {@code degreesOfFreedom} is less than 1
     */
    public Scatter {
        if (degreesOfFreedom < 1) {
            throw new IllegalArgumentException("one observation has no scatter");
        }
    }
}
