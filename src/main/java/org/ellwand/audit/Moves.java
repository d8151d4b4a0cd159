package org.ellwand.audit;

import java.util.ArrayList;
import java.util.List;
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

    /**
     * The factors that move some readings, as far as they do.
     *
     * @param readings positions, ascending
     */
    List<Factor> of(List<Integer> readings) {
        return new Factors(index, surroundings, included).of(readings);
    }

    /** Those alone that may move several people or products alike: what a session shares, and the errors of open ears. */
    List<Factor> common(List<Integer> readings) {
        List<Factor> common = new ArrayList<>(new Factors(index, surroundings, Set.of(SharedBy.SESSION)).of(readings));
        List<Integer> openEars =
                readings.stream().filter(r -> !index.at(r).isInPlace()).toList();
        common.addAll(new Factors(index, surroundings, Set.of(SharedBy.READING)).of(openEars));
        return common;
    }
}
