package org.ellwand.plan;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.ellwand.check.Inspection;
import org.ellwand.measurement.Session;

/**
 * The sessions of a folder with other numbers of insertions ({@link Repeated}), each inspected once and not anew for every
 * claim: to look for faults takes far longer than to judge one claim.
 */
final class Repeats {
    private final List<Session> sessions;
    private final Map<Integer, Inspected> byInsertions = new TreeMap<>();

    Repeats(List<Session> sessions) {
        this.sessions = List.copyOf(sessions);
    }

    /** Sessions, and what the checks find in them. */
    record Inspected(List<Session> sessions, Inspection inspection) {
        static Inspected of(List<Session> sessions) {
            return new Inspected(sessions, Inspection.of(sessions));
        }
    }

    /** As they were measured. */
    List<Session> measured() {
        return sessions;
    }

    /** @param insertions an even number */
    Inspected with(int insertions) {
        return byInsertions.computeIfAbsent(
                insertions,
                many -> Inspected.of(sessions.stream()
                        .map(session -> Repeated.of(session, many))
                        .toList()));
    }
}
