package org.ellwand.statistics;

import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;

/**
 * How surely the interval mean ± k · standard deviation of n values holds at least a share of their normal population.
 *
 * <p>Where the mean lies x standard deviations off, the interval must reach r to either side, with
 * Φ(x + r) − Φ(x − r) = share; so the confidence is the mean of P(χ²(ν) ≥ ν r²/k²) over x ~ N(0, 1/n), ν = n − 1. The
 * trapezoid rule over z = x √n converges exponentially; accuracy better than 1e-9.
 */
final class CentralCoverage {
    private static final double STEP = 0.125;
    private static final int NODES = 57;
    private static final double ACCURACY = 1e-13;
    private static final double SLACK = 1e-9;
    private static final int MOST_STEPS = 1000;

    private final ChiSquaredDistribution chiSquared;
    private final double nu;
    private final double[] radii = new double[NODES];
    private final double[] weights = new double[NODES];

    CentralCoverage(int count, double share) {
        nu = count - 1;
        chiSquared = ChiSquaredDistribution.of(nu);
        fillRadii(STEP / Math.sqrt(count), share);
        fillWeights();
    }

    /** A radius grows with the distance, but never by more than the distance does: that brackets the next one. */
    private void fillRadii(double step, double share) {
        radii[0] = -NormalErrors.z((1 - share) / 2);
        for (int i = 1; i < NODES; i++) {
            double x = i * step;
            double least = radii[i - 1] - SLACK;
            radii[i] = new BrentSolver(ACCURACY, ACCURACY)
                    .solve(MOST_STEPS, r -> 1 - share - outside(x, r), least, least + step + 2 * SLACK);
        }
    }

    private static double outside(double x, double radius) {
        return NormalErrors.phi(-x - radius) + NormalErrors.phi(x - radius);
    }

    /** Both sides of zero at once, so zero itself counts half. */
    private void fillWeights() {
        double sum = 0;
        for (int i = 0; i < NODES; i++) {
            double z = i * STEP;
            weights[i] = (i == 0 ? 0.5 : 1) * Math.exp(-z * z / 2);
            sum += weights[i];
        }
        for (int i = 0; i < NODES; i++) {
            weights[i] /= sum;
        }
    }

    /** The confidence of the factor k; 0 where k is 0 or less. */
    double confidence(double k) {
        if (!(k > 0)) {
            return 0;
        }
        double sum = 0;
        for (int i = 0; i < NODES; i++) {
            double ratio = radii[i] / k;
            sum += weights[i] * chiSquared.survivalProbability(nu * ratio * ratio);
        }
        return Math.min(1, sum);
    }

    /** The factor k of a confidence between 0 and 1. */
    double factor(double confidence) {
        double low = radii[0];
        double high = radii[0];
        while (confidence(high) < confidence) {
            high *= 2;
        }
        while (confidence(low) > confidence) {
            low /= 2;
        }
        return low == high
                ? low
                : new BrentSolver(ACCURACY, ACCURACY).solve(MOST_STEPS, k -> confidence(k) - confidence, low, high);
    }
}
