package org.ellwand.statistics;

import java.util.function.DoubleUnaryOperator;

/**
 * The standard deviation s that a sample of normal numbers shows, where σ is the true one: s / σ = χ / √ν, by quadrature over ln χ.
 */
public final class ObservedDeviation {
    private static final double CHI_MASS_LEFT_OUT = 1e-7;
    private static final double CHI_REACH = 5.5;
    private static final double WIDEST_STEP = 0.25;
    private static final double STEP_IN_DEVIATIONS = 0.5;

    private ObservedDeviation() {}

    /**
     * The mean over samples of what depends on s / σ, better than 1e-4 for smooth functions between 0 and 1.
     *
     * @param degreesOfFreedom at least 1
     * @param ofRatio function of s / σ
     * @return the mean, in the unit of the function
     * @throws IllegalArgumentException if there are fewer degrees of freedom than 1
     */
    public static double mean(int degreesOfFreedom, DoubleUnaryOperator ofRatio) {
        if (degreesOfFreedom < 1) {
            throw new IllegalArgumentException("one observation has no deviation");
        }
        double step = Math.min(WIDEST_STEP, STEP_IN_DEVIATIONS / Math.sqrt(2.0 * degreesOfFreedom));
        ChiNodes chi = new ChiNodes(degreesOfFreedom, CHI_MASS_LEFT_OUT, CHI_REACH, step);
        double sum = 0;
        for (int i = 0; i < chi.count(); i++) {
            sum += chi.weight(i) * ofRatio.applyAsDouble(chi.chi(i) / Math.sqrt(degreesOfFreedom));
        }
        return sum;
    }
}
