package org.ellwand.pairing;

import java.util.List;
import org.ellwand.words.Remark;

/**
 * What a rule's selection came to.
 *
 * @param joined in order of their conditions
 * @param dropped why readings that met the conditions cannot be used, sorted, each once
 */
public record Selected(List<Joined> joined, List<Remark> dropped) {
    /**
     * Keeps copies of the lists.
     *
     * @param joined in order of their conditions
     * @param dropped why readings that met the conditions cannot be used, sorted, each once
     */
    public Selected {
        joined = List.copyOf(joined);
        dropped = List.copyOf(dropped);
    }
}
