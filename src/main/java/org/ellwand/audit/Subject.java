package org.ellwand.audit;

import java.util.List;
import org.ellwand.measurement.Conditions;
import org.ellwand.pairing.Cell;
import org.ellwand.quantity.Formula;

/**
 * What one number (or one curve) is about: a cell, a pair of cells, or a mean over ears or units.
 *
 * @param conditions what its readings have in common
 * @param cells every cell it is computed from
 * @param insertions how many insertions were averaged; of a pair that shares them, counted once
 * @param formula how it is computed
 * @param repeats whose scatter can be observed
 */
record Subject(Conditions conditions, List<Cell> cells, int insertions, Formula formula, List<Repeats> repeats) {
    Subject {
        cells = List.copyOf(cells);
        repeats = List.copyOf(repeats);
    }

    /** Whether repeats of people or products replace what insertions and readings add. */
    boolean isPopulation() {
        return repeats.stream().anyMatch(r -> r.kind() != Repeats.Kind.INSERTIONS);
    }
}
