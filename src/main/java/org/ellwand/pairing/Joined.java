package org.ellwand.pairing;

import java.util.List;
import java.util.Optional;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.Reading;

/**
 * Cells that one number is computed from together.
 *
 * @param conditions what they have in common
 * @param cells at least one
 * @param isSeries whether they are the levels of one kind of stimulus, of which two that are compared may hold others
 */
public record Joined(Conditions conditions, List<Cell> cells, boolean isSeries) {
    /**
     * Keeps a copy of the cells.
     *
     * @param conditions what they have in common
     * @param cells at least one
     * @param isSeries whether they are the levels of one kind of stimulus
     */
    public Joined {
        cells = List.copyOf(cells);
    }

    /**
     * Cells that are no series of levels, or of which it does not matter.
     *
     * @param conditions what they have in common
     * @param cells at least one
     */
    public Joined(Conditions conditions, List<Cell> cells) {
        this(conditions, cells, false);
    }

    static Joined alone(Cell cell) {
        return new Joined(cell.conditions(), List.of(cell));
    }

    /** {@return the first of the cells; the only one where nothing was joined} */
    public Cell first() {
        return cells.get(0);
    }

    Reading.Values values() {
        return first().values();
    }

    Optional<String> get(String condition) {
        return conditions.get(condition);
    }
}
