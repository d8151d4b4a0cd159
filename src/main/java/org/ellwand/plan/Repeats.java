package org.ellwand.plan;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.ellwand.check.Finding;
import org.ellwand.check.Inspection;
import org.ellwand.measurement.Session;

/**
 * The sessions of a folder with other numbers of insertions ({@link Repeated}), each inspected once and not anew for every
 * claim: to look for faults takes far longer than to judge one claim.
 */
final class Repeats {
    private static final String COPIED = "copied";

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

        /** The same of sessions whose insertions are repeats of a few measured ones: nobody copied what is equal there. */
        private static Inspected ofRepeated(List<Session> sessions) {
            Inspection all = Inspection.of(sessions);
            List<Finding> found = all.findings().stream()
                    .filter(f ->
                            !f.remark().key().equals(COPIED) || !f.reading().contains(Repeated.INSERTION))
                    .toList();
            return new Inspected(sessions, new Inspection(all.sessions(), found, all.notChecked()));
        }
    }

    /** As they were measured. */
    List<Session> measured() {
        return sessions;
    }

    /** The ids of these. */
    Set<String> ids() {
        return sessions.stream().map(Session::id).collect(Collectors.toSet());
    }

    /** @param insertions at least two */
    Inspected with(int insertions) {
        return byInsertions.computeIfAbsent(
                insertions,
                many -> Inspected.ofRepeated(sessions.stream()
                        .map(session -> Repeated.of(session, many))
                        .toList()));
    }
}
