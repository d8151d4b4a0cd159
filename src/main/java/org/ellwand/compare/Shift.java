package org.ellwand.compare;

import java.util.OptionalDouble;

/**
 * How far a value moved from the first audit to the second.
 *
 * @param value second less first, unit of the limit
 * @param standardUncertainty of the difference, what both share left out; absent where nothing tells it
 * @param lower lower end of the central 95 % interval
 * @param upper upper end of it
 * @param chance how probable so large a shift is by noise alone, both ways; absent where nothing tells the spread
 * @param within confidence that the true shift lies within the margin; absent without a margin or a spread
 * @param nothingShared whether the uncertainties were added as if the audits shared nothing, because they were decided at
 *     different bands
 */
public record Shift(
        double value,
        OptionalDouble standardUncertainty,
        OptionalDouble lower,
        OptionalDouble upper,
        OptionalDouble chance,
        OptionalDouble within,
        boolean nothingShared) {

    /**
     * {@return whether noise alone would seldom move it so far}
     *
     * @param confidence above 0.5 and below 1
     */
    public boolean isMoreThanNoise(double confidence) {
        return chance.isPresent() && chance.getAsDouble() <= 1 - confidence;
    }

    /**
     * {@return whether both are the same within the margin: two one-sided tests at the confidence}
     *
     * @param confidence above 0.5 and below 1
     */
    public boolean isEquivalent(double confidence) {
        return within.isPresent() && within.getAsDouble() >= confidence;
    }
}
