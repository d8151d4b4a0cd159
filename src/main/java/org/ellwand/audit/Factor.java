package org.ellwand.audit;

import java.util.List;
import java.util.Set;
import org.ellwand.measurement.SharedBy;

/**
 * One independent draw of one cause, and what it moves.
 *
 * @param key identity of the draw: session, cause, instance and band; equal keys are the same draw everywhere
 * @param cause name of the cause
 * @param instance what the draw is shared by, as reports print it
 * @param entries the numbers it moves
 * @param sharedBy of the cause
 */
record Factor(String key, String cause, String instance, SharedBy sharedBy, List<Entry> entries) {
    /**
     * A number of a reading.
     *
     * @param reading position in the index
     * @param band position in the reading's spectrum
     * @param sizeDb standard uncertainty, in dB
     */
    record Entry(int reading, int band, double sizeDb) {}

    /** This draw as far as it moves some of the readings. */
    Factor only(Set<Integer> readings) {
        return new Factor(
                key,
                cause,
                instance,
                sharedBy,
                entries.stream().filter(e -> readings.contains(e.reading())).toList());
    }
}
