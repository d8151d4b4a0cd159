package org.ellwand.statistics;

/** How the error of one number is distributed: what is to be added to the measured value. */
public interface Errors {
    /** Half of this central share of the draws is the standard uncertainty: ±1 standard deviation of a normal. */
    double CENTRAL_SHARE = 0.682689492137086;

    /**
     * {@return the probability that the error is {@code x} or less}
     *
     * @param x in the unit of the number
     */
    double atMost(double x);

    /**
     * {@return the probability that the error is {@code x} or more}
     *
     * @param x in the unit of the number
     */
    default double atLeast(double x) {
        return 1 - atMost(x);
    }

    /**
     * {@return the error that is not exceeded with a probability}
     *
     * @param probability between 0 and 1
     */
    double quantile(double probability);

    /** {@return half of the central 68.27 % interval, in the unit of the number} */
    default double standardUncertainty() {
        return (quantile(0.5 + CENTRAL_SHARE / 2) - quantile(0.5 - CENTRAL_SHARE / 2)) / 2;
    }
}
