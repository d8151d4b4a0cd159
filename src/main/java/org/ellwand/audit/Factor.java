package org.ellwand.audit;

import java.util.BitSet;
import java.util.List;
import java.util.Set;
import org.ellwand.measurement.SharedBy;

/**
 * One independent draw of one cause, and what it moves.
 *
 * @param name identity of the draw; equal names are the same draw everywhere
 * @param instance what the draw is shared by, as reports print it
 * @param entries the numbers it moves
 * @param sharedBy of the cause
 */
record Factor(Name name, String instance, SharedBy sharedBy, List<Entry> entries) {
    /**
     * Identity of a draw.
     *
     * @param cause name of the cause
     * @param instance what identifies what the draw is shared by
     * @param hz band of a cause that is independent across bands, else NaN
     */
    record Name(String session, String cause, String instance, double hz) {}

    /**
     * A number of a reading.
     *
     * @param reading position in the index
     * @param band position in the reading's spectrum
     * @param sizeDb standard uncertainty, in dB
     */
    record Entry(int reading, int band, double sizeDb) {}

    /** The name as a text, from which the draws are seeded. */
    String key() {
        String whole = name.session() + "|" + name.cause() + "|" + name.instance();
        return Double.isNaN(name.hz()) ? whole : whole + "|" + name.hz();
    }

    String cause() {
        return name.cause();
    }

    /** Positions of the readings it moves. */
    BitSet readings() {
        BitSet readings = new BitSet();
        entries.forEach(e -> readings.set(e.reading()));
        return readings;
    }

    /** This draw as far as it moves some numbers; itself where these are all. */
    Factor with(List<Entry> some) {
        return some.size() == entries.size() ? this : new Factor(name, instance, sharedBy, some);
    }

    /** This draw as far as it moves some of the readings. */
    Factor only(Set<Integer> readings) {
        return entries.size() == 1 && readings.contains(entries.get(0).reading())
                ? this
                : with(entries.stream()
                        .filter(e -> readings.contains(e.reading()))
                        .toList());
    }
}
