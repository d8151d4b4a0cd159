package org.ellwand.statistics;

import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * The noncentral t: T = (Z + δ) / √(χ²/ν) with Z a standard normal and χ² independent of it.
 *
 * <p>Given χ, T ≤ t is a statement on Z alone, so P(T ≤ t) = E Φ(t χ/√ν − δ): one quadrature over ln χ, whose step
 * follows the narrower of the two factors, 1/√(2ν) and 1/δ. Nothing cancels; a small P(T &gt; t) is best asked for as
 * P(T ≤ −t) of ν and −δ. Accuracy better than 1e-10 for ν from 1 to 1000 and |δ| up to 40 (held in the tests against
 * software of others); beyond, more nodes are taken.
 */
public final class NoncentralT {
    private static final double CHI_MASS_LEFT_OUT = 1e-18;
    private static final double CHI_REACH = 8.5;
    private static final double STEP_IN_WIDTHS = 0.5;
    /** Keeps the step well inside the strip ±π/4 in which the integrand is analytic and dies off. */
    private static final double LEAST_SHARPNESS = 3;

    private static final double QUANTILE_ACCURACY = 1e-13;
    private static final int MOST_STEPS = 1000;

    private final ChiNodes chi;
    private final double rootOfNu;
    private final double delta;

    private NoncentralT(ChiNodes chi, double rootOfNu, double delta) {
        this.chi = chi;
        this.rootOfNu = rootOfNu;
        this.delta = delta;
    }

    /**
     * The noncentral t of given parameters.
     *
     * @param nu degrees of freedom, at least 1
     * @param delta noncentrality, finite
     * @return the distribution, ready to be asked
     * @throws IllegalArgumentException outside these ranges
     */
    public static NoncentralT of(double nu, double delta) {
        if (!(nu >= 1 && Double.isFinite(nu) && Double.isFinite(delta))) {
            throw new IllegalArgumentException("no noncentral t has ν = " + nu + " and δ = " + delta);
        }
        double step = STEP_IN_WIDTHS / (Math.sqrt(2 * nu) + Math.abs(delta) + LEAST_SHARPNESS);
        return new NoncentralT(new ChiNodes(nu, CHI_MASS_LEFT_OUT, CHI_REACH, step), Math.sqrt(nu), delta);
    }

    /**
     * {@return P(T ≤ t); 0 and 1 at the infinities}
     *
     * @param t not NaN
     */
    public double atMost(double t) {
        return atMost(t, 0);
    }

    /**
     * P(T ≤ t + qE) with E a standard normal independent of T, that is, P(T ≤ t) averaged over a normal error of t.
     * Given χ the two normals add up: E Φ((t χ/√ν − δ) / √(1 + q² χ²/ν)).
     *
     * @param t not NaN
     * @param q standard deviation of the error of t, finite and not negative
     * @return a probability
     */
    public double atMost(double t, double q) {
        if (Double.isInfinite(t)) {
            return t > 0 ? 1 : 0;
        }
        double sum = 0;
        for (int i = 0; i < chi.count(); i++) {
            double scale = chi.chi(i) / rootOfNu;
            sum += chi.weight(i) * NormalErrors.phi((t * scale - delta) / Math.hypot(1, q * scale));
        }
        return Math.min(1, sum);
    }

    /**
     * The t with P(T ≤ t) = p; the infinities for 0 and 1.
     *
     * @param p a probability
     * @return −∞ for 0, +∞ for 1
     * @throws IllegalArgumentException if p is no probability
     */
    public double quantile(double p) {
        if (!(p >= 0 && p <= 1)) {
            throw new IllegalArgumentException(p + " is no probability");
        }
        if (p == 0) {
            return Double.NEGATIVE_INFINITY;
        }
        return p > 0.5 ? -new NoncentralT(chi, rootOfNu, -delta).quantile(1 - p) : within(p);
    }

    /** Brackets t in ever longer steps from δ, then closes in. */
    private double within(double p) {
        double step = 1 + Math.abs(delta);
        double low = delta;
        double high = delta;
        while (atMost(high) < p) {
            high += step;
            step *= 2;
        }
        while (atMost(low) > p) {
            low -= step;
            step *= 2;
        }
        return low == high
                ? low
                : new BrentSolver(QUANTILE_ACCURACY, QUANTILE_ACCURACY)
                        .solve(MOST_STEPS, t -> atMost(t) - p, low, high);
    }
}
