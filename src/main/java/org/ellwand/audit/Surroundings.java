package org.ellwand.audit;

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
        return session.uncertainty() instanceof Uncertainty.Declared declared
                ? declared.causes().stream()
                        .filter(c -> unit.filter(u -> u == c.unit()).isPresent())
                        .toList()
                : List.of();
    }

    /** Whether a cause that moves the readings of a cell is declared for each instance of something. */
    static boolean declares(Cell cell, SharedBy sharedBy) {
        Optional<Unit> unit = cell.movedBy();
        return cell.session().uncertainty() instanceof Uncertainty.Declared declared
                && unit.isPresent()
                && declared.causes().stream().anyMatch(c -> c.sharedBy() == sharedBy && c.unit() == unit.get());
    }

    static boolean isUnknown(Session session) {
        return session.uncertainty() instanceof Uncertainty.Unknown;
    }
}
