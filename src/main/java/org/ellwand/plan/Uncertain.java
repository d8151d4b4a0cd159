package org.ellwand.plan;

/**
 * The variance of a number as insertions are repeated: one part stays, the other is divided by their number.
 *
 * @param staying u² that no repeat makes smaller
 * @param repeated u² of a single insertion besides
 */
record Uncertain(double staying, double repeated) {
    /** From the standard uncertainties at two numbers of insertions. */
    static Uncertain of(int few, double uOfFew, int many, double uOfMany) {
        double repeated = Math.max(0, (uOfFew * uOfFew - uOfMany * uOfMany) / (1.0 / few - 1.0 / many));
        return new Uncertain(Math.max(0, uOfFew * uOfFew - repeated / few), repeated);
    }

    /** The standard uncertainty of the mean of so many insertions. */
    double of(int insertions) {
        return Math.sqrt(staying + repeated / insertions);
    }
}
