package org.ellwand.audit;

import java.util.Set;
import org.ellwand.measurement.SharedBy;
import org.ellwand.quantity.ReadingIndex;

/**
 * What moves the readings of a rule. The factors of a subject are put together from its own readings each time they are
 * asked for: a lot has many of them, a subject few, and equal names are the same draw wherever they were put together.
 */
final class Moves {
    private final ReadingIndex index;
    private final Surroundings surroundings;
    private final Set<SharedBy> included;

    /** @param included kinds of causes that count */
    Moves(ReadingIndex index, Surroundings surroundings, Set<SharedBy> included) {
        this.index = index;
        this.surroundings = surroundings;
        this.included = Set.copyOf(included);
    }

    /** Puts together the factors that move some readings, as far as they do. */
    Factors all() {
        return new Factors(index, surroundings, included);
    }

    /** Those alone that may move several people or products alike: what a session shares, and the errors of open ears. */
    Factors common() {
        return Factors.common(index, surroundings);
    }

    Surroundings surroundings() {
        return surroundings;
    }
}
