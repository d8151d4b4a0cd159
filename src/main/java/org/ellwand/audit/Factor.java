package org.ellwand.audit;

import java.util.BitSet;
import org.ellwand.measurement.SharedBy;

/**
 * One independent draw of one cause, and what it moves.
 *
 * @param name identity of the draw; equal names are the same draw everywhere
 * @param entries the numbers it moves
 * @param sharedBy of the cause
 */
record Factor(Name name, SharedBy sharedBy, Entries entries) {
    /**
     * Identity of a draw.
     *
     * @param cause name of the cause
     * @param instance what identifies what the draw is shared by
     * @param hz band of a cause that is independent across bands, else NaN
     */
    record Name(String session, String cause, String instance, double hz) {}

    /** The name as a text, from which the draws are seeded. */
    String key() {
        String whole = name.session() + "|" + name.cause() + "|" + name.instance();
        return Double.isNaN(name.hz()) ? whole : whole + "|" + name.hz();
    }

    /** Positions of the readings it moves. */
    BitSet readings() {
        return entries.readings();
    }

    /** This draw as far as it moves some of the readings. */
    Factor only(BitSet readings) {
        return new Factor(name, sharedBy, entries.of(readings));
    }
}
