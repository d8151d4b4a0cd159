package org.ellwand.audit;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.ellwand.measurement.SharedBy;
import org.ellwand.pairing.Cell;
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

    /**
     * Those alone that may move several people or products alike: what a session shares, the errors of open ears, and of one
     * ear worn by all units, or one unit worn by all people, what that shares.
     */
    Factors common(List<Cell> cells) {
        Set<SharedBy> alike = new TreeSet<>();
        if (included.contains(SharedBy.EAR) && isOne(cells, Cell::wearer)) {
            alike.add(SharedBy.EAR);
        }
        if (included.contains(SharedBy.UNIT) && isOne(cells, cell -> cell.part("unit"))) {
            alike.add(SharedBy.UNIT);
        }
        return Factors.common(index, surroundings, alike);
    }

    private static boolean isOne(List<Cell> cells, Function<Cell, String> of) {
        String first = of.apply(cells.get(0));
        return cells.stream().allMatch(cell -> of.apply(cell).equals(first));
    }

    Surroundings surroundings() {
        return surroundings;
    }
}
