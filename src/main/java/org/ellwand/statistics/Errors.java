package org.ellwand.statistics;

/** How the error of one number is distributed: what is to be added to the measured value. */
public interface Errors {
    /** Half of this central share of the draws is the standard uncertainty: ±1 standard deviation of a normal. */
    double CENTRAL_SHARE = 0.682689492137086;

    /** Probability that the error is {@code x} or less. */
    double atMost(double x);

    /** Probability that the error is {@code x} or more. */
    default double atLeast(double x) {
        return 1 - atMost(x);
    }

    /** The error that is not exceeded with a probability. */
    double quantile(double probability);

    /** Half of the central 68.27 % interval. */
    default double standardUncertainty() {
        return (quantile(0.5 + CENTRAL_SHARE / 2) - quantile(0.5 - CENTRAL_SHARE / 2)) / 2;
    }
}
