package org.ellwand.audit;

import java.util.Set;
import org.ellwand.measurement.Reading;
import org.ellwand.measurement.SharedBy;
import org.ellwand.pairing.Insertion;

/**
 * Where a draw comes from: a cause, and the first reading that it was put together for.
 *
 * @param cause name of the cause
 * @param sharedBy of the cause
 */
record Origin(String cause, SharedBy sharedBy, Reading reading) {
    private static final Set<String> UNSAID = Set.of("session", "ear", "head", "side");

    /** The same of another reading. */
    Origin of(Reading other) {
        return new Origin(cause, sharedBy, other);
    }

    /** What the draw is shared by, as reports print it. */
    String label(Surroundings surroundings) {
        String session = reading.get("session").orElse("");
        return switch (sharedBy) {
            case SESSION -> session;
            case INSERTION ->
                session + "/"
                        + surroundings.insertion(reading).flatMap(Insertion::id).orElse("(unnumbered)");
            case READING ->
                session + "/"
                        + String.join(" ", reading.conditions().without(UNSAID).texts());
            case EAR -> reading.get("ear").orElse("(ear)");
            case UNIT -> reading.get("unit").orElse("(unit)");
        };
    }
}
