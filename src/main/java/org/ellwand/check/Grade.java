package org.ellwand.check;

import java.util.Optional;
import org.ellwand.check.Finding.Consequence;

/**
 * Two thresholds of one figure: from the first a fault is noted, from the second the readings are of no use.
 *
 * @param noted above it
 * @param unusable above it
 */
record Grade(double noted, double unusable) {
    /** What follows from a figure; empty where nothing does. */
    Optional<Consequence> of(double figure) {
        if (figure > unusable) {
            return Optional.of(Consequence.UNUSABLE);
        }
        return figure > noted ? Optional.of(Consequence.NOTED) : Optional.empty();
    }

    /** The threshold that was passed. */
    double passed(Consequence consequence) {
        return consequence == Consequence.UNUSABLE ? unusable : noted;
    }

    /** These thresholds, but neither below what scatter alone may do. */
    Grade orAtLeast(double scatter) {
        return new Grade(Math.max(noted, scatter), Math.max(unusable, scatter));
    }
}
