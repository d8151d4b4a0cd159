package org.ellwand.statistics;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * The sum of a normal error and of independent scaled Student t errors.
 *
 * <p>Given the chi of each t the sum is normal, so P(E ≤ x) is the mean of Φ(x / √(σ² + Σ ν s² / χ²)) over the chis:
 * one quadrature over each chi density. Accuracy better than 1e-6 (held in the tests against the exact t, and with
 * several scatters against draws).
 */
public final class MixedErrors implements Errors {
    private static final double QUANTILE_ACCURACY = 1e-8;
    private static final int MOST_STEPS = 1000;

    private static final double CHI_MASS_LEFT_OUT = 1e-9;
    private static final double CHI_REACH = 5.5;
    private static final double WIDEST_STEP = 0.25;
    private static final double STEP_IN_DEVIATIONS = 0.7;

    private final double[] deviations;
    private final double[] weights;
    /** A length of the size of the errors, for brackets; 0 where there are none. */
    private final double scale;

    private double uncertainty = Double.NaN;

    /**
     * Errors that add up; their mean is 0.
     *
     * @param normalDeviation standard deviation of the normal error, not negative
     * @param scatters the t errors; none leaves the normal one alone
     */
    public MixedErrors(double normalDeviation, List<Scatter> scatters) {
        double[] variance = {normalDeviation * normalDeviation};
        double[] weight = {1};
        for (Scatter scatter : scatters) {
            ChiNodes chi = nodes(scatter.degreesOfFreedom());
            int nodes = chi.count();
            double[] nextVariance = new double[variance.length * nodes];
            double[] nextWeight = new double[variance.length * nodes];
            for (int i = 0; i < variance.length; i++) {
                for (int j = 0; j < nodes; j++) {
                    double t = scatter.scale() / chi.chi(j);
                    nextVariance[i * nodes + j] = variance[i] + scatter.degreesOfFreedom() * t * t;
                    nextWeight[i * nodes + j] = weight[i] * chi.weight(j);
                }
            }
            variance = nextVariance;
            weight = nextWeight;
        }
        this.scale = Math.sqrt(normalDeviation * normalDeviation
                + scatters.stream().mapToDouble(t -> t.scale() * t.scale()).sum());
        this.deviations = Arrays.stream(variance).map(Math::sqrt).toArray();
        this.weights = weight;
    }

    private static ChiNodes nodes(int nu) {
        double step = Math.min(WIDEST_STEP, STEP_IN_DEVIATIONS / Math.sqrt(2.0 * nu));
        return new ChiNodes(nu, CHI_MASS_LEFT_OUT, CHI_REACH, step);
    }

    @Override
    public double atMost(double x) {
        double sum = 0;
        for (int i = 0; i < deviations.length; i++) {
            sum += weights[i] * new NormalErrors(deviations[i]).atMost(x);
        }
        return sum;
    }

    @Override
    public double atLeast(double x) {
        return atMost(-x);
    }

    @Override
    public double quantile(double probability) {
        if (probability == 0.5 || scale == 0) {
            return 0;
        }
        return probability < 0.5 ? -beyond(probability) : beyond(1 - probability);
    }

    /** The x that errors exceed with a small probability: brackets it, then closes in by steps that stay inside. */
    private double beyond(double tail) {
        if (!(tail > 0)) {
            return Double.POSITIVE_INFINITY;
        }
        double low = 0;
        if (atMost(-low) <= tail) { // half, up to rounding
            return low;
        }
        double high = scale;
        while (atMost(-high) > tail) {
            low = high;
            high *= 2;
        }
        return new BrentSolver(QUANTILE_ACCURACY, QUANTILE_ACCURACY * scale)
                .solve(MOST_STEPS, x -> atMost(-x) - tail, low, high);
    }

    @Override
    public double standardUncertainty() {
        if (Double.isNaN(uncertainty)) {
            uncertainty = scale == 0 ? 0 : beyond(0.5 - CENTRAL_SHARE / 2);
        }
        return uncertainty;
    }
}
