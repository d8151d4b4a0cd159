package org.ellwand.quantity;

/**
 * One way from the levels of readings to judged numbers. Numbers of the readings come in as arrays, so that the same
 * formula serves the unperturbed readings and every draw; instances hold scratch space and belong to one thread.
 */
public interface Computation {
    /** How many numbers come out. */
    int size();

    /**
     * Computes the numbers.
     *
     * @param levelsDb for each reading of the {@link ReadingIndex}, its numbers in dB by band, in the order of its
     *     spectrum
     * @param out receives {@link #size()} numbers, unit of the quantity
     */
    void compute(double[][] levelsDb, double[] out);

    /** Whether every number is a linear function of the levels. */
    boolean isLinear();
}
