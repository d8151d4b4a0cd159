package org.ellwand.statistics;

import org.apache.commons.math3.special.Gamma;

/**
 * Nodes y = ln χ, evenly spaced, and the weights of the trapezoid rule on the density of y,
 * 2^(1−ν/2) χ^ν e^(−χ²/2) / Γ(ν/2), scaled to sum to one. On this scale the integrand is analytic and dies off on both
 * sides, so the rule converges exponentially, also for the far tails of few degrees of freedom.
 */
final class ChiNodes {
    private final double[] values;
    private final double[] weights;

    /**
     * @param nu degrees of freedom, above 0
     * @param massLeftOut bound of the probability below the lowest node
     * @param reach how far the highest χ lies above √ν
     * @param step between nodes, in ln χ
     */
    ChiNodes(double nu, double massLeftOut, double reach, double step) {
        double from = lowest(nu, massLeftOut);
        double to = Math.log(Math.sqrt(nu) + reach);
        int nodes = (int) Math.ceil((to - from) / step) + 1;
        values = new double[nodes];
        weights = new double[nodes];
        double sum = 0;
        for (int i = 0; i < nodes; i++) {
            values[i] = Math.exp(from + i * step);
            weights[i] = density(values[i], nu);
            sum += weights[i];
        }
        for (int i = 0; i < nodes; i++) {
            weights[i] /= sum;
        }
    }

    /** From P(χ² ≤ x) ≤ (x/2)^(ν/2) / Γ(ν/2 + 1). */
    private static double lowest(double nu, double massLeftOut) {
        return (Math.log(massLeftOut) + nu / 2.0 * Math.log(2) + Gamma.logGamma(nu / 2.0 + 1)) / nu;
    }

    /** Up to a factor that the scaling takes away; taken relative to χ = √ν so that nothing overflows. */
    private static double density(double chi, double nu) {
        return Math.exp(nu * Math.log(chi / Math.sqrt(nu)) - (chi * chi - nu) / 2);
    }

    int count() {
        return values.length;
    }

    double chi(int node) {
        return values[node];
    }

    double weight(int node) {
        return weights[node];
    }
}
