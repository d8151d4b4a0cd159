package org.ellwand.quantity;

/** From the inner numbers of a staged computation to the judged ones. */
interface Outer {
    /**
     * Finds the judged numbers.
     *
     * @param out receives them; infinite where one lies beyond what the inner numbers can tell
     */
    void apply(double[] inner, double[] out);
}
