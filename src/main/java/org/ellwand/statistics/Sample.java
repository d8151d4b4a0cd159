package org.ellwand.statistics;

import java.util.Collection;

/**
 * Mean and sample standard deviation, the latter √(Σ(x − mean)²/(n − 1)) (JCGM 100:2008, 4.2.1 and 4.2.2), in two passes so that
 * numbers far from zero lose nothing.
 *
 * @param mean unit of the values
 * @param deviation unit of the values; NaN of a single value, which has none
 */
public record Sample(double mean, double deviation) {
    /**
     * {@return the mean and the deviation of at least one value}
     *
     * @param values not empty, all in one unit
     */
    public static Sample of(Collection<Double> values) {
        int n = values.size();
        double mean = values.stream().mapToDouble(v -> v).sum() / n;
        double squares =
                values.stream().mapToDouble(v -> (v - mean) * (v - mean)).sum();
        return new Sample(mean, Math.sqrt(squares / (n - 1.0)));
    }
}
