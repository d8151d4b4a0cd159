package org.ellwand.pairing;

import java.util.List;
import java.util.Optional;
import org.ellwand.measurement.Reading;

/**
 * One placing of the product in the ear, as far as a cell has readings of it.
 *
 * @param key what identifies it in its session: equal keys are one insertion
 * @param id the auditor's id; absent where a reading had none and so is an insertion by itself
 * @param takes at least one
 */
public record Insertion(String key, Optional<String> id, List<Reading> takes) {
    /**
     * Keeps a copy of the takes.
     *
     * @param key what identifies it in its session: equal keys are one insertion
     * @param id the auditor's id
     * @param takes at least one
     */
    public Insertion {
        takes = List.copyOf(takes);
    }
}
