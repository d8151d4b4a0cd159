package org.ellwand.claim;

/** How a rule speaks of several ears or several units. */
public sealed interface Population {
    /** {@return whether it speaks of people or products, beyond those that were measured} */
    default boolean isBeyondTheMeasured() {
        return !(this instanceof Each);
    }

    /** Each one that was measured, by itself. */
    record Each() implements Population {}

    /** The mean, as a statement about people or products. */
    record Mean() implements Population {}

    /**
     * At least this share of people or products meets the limit.
     *
     * @param percent above 0 and below 100
     */
    record Share(double percent) implements Population {}
}
