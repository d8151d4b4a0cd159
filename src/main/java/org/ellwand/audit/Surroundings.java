package org.ellwand.audit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ellwand.amount.Unit;
import org.ellwand.measurement.Cause;
import org.ellwand.measurement.Reading;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.SharedBy;
import org.ellwand.measurement.Uncertainty;
import org.ellwand.pairing.Cell;
import org.ellwand.pairing.Insertion;

/** What the error model must know of a reading beyond its numbers: its session, its insertion, its wearer. */
final class Surroundings {
    private final Map<String, Session> sessions = new HashMap<>();
    private final IdentityHashMap<Reading, Insertion> insertions = new IdentityHashMap<>();
    private final IdentityHashMap<Reading, Cell> cells = new IdentityHashMap<>();

    void add(Cell cell) {
        sessions.put(cell.session().id(), cell.session());
        for (Insertion insertion : cell.insertions()) {
            for (Reading take : insertion.takes()) {
                insertions.put(take, insertion);
                cells.put(take, cell);
            }
        }
    }

    Session session(Reading reading) {
        return Optional.ofNullable(sessions.get(reading.get("session").orElse("")))
                .orElseThrow(() -> new IllegalStateException("a reading without its session: " + reading.conditions()));
    }

    Optional<Insertion> insertion(Reading reading) {
        return Optional.ofNullable(insertions.get(reading));
    }

    String wearer(Reading reading) {
        return Optional.ofNullable(cells.get(reading)).map(Cell::wearer).orElse("");
    }

    /** The declared causes of one unit. */
    static List<Cause> causes(Session session, Optional<Unit> unit) {
        List<Cause> causes = new ArrayList<>();
        if (unit.isPresent() && session.uncertainty() instanceof Uncertainty.Declared declared) {
            for (Cause cause : declared.causes()) {
                if (cause.unit() == unit.get()) {
                    causes.add(cause);
                }
            }
        }
        return causes;
    }

    /** Whether a cause that moves the readings of a cell is declared for each instance of something. */
    static boolean declares(Cell cell, SharedBy sharedBy) {
        for (Cause cause : causes(cell.session(), cell.movedBy())) {
            if (cause.sharedBy() == sharedBy) {
                return true;
            }
        }
        return false;
    }

    static boolean isUnknown(Session session) {
        return session.uncertainty() instanceof Uncertainty.Unknown;
    }
}
