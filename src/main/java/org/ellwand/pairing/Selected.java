package org.ellwand.pairing;

import java.util.List;

/**
 * What a rule's selection came to.
 *
 * @param cells in order of their conditions
 * @param dropped why readings that met the conditions cannot be used, sorted, each once
 */
public record Selected(List<Cell> cells, List<String> dropped) {
    public Selected {
        cells = List.copyOf(cells);
        dropped = List.copyOf(dropped);
    }
}
