package org.ellwand.check;

import java.util.List;
import org.ellwand.measurement.Session;

/** Runs one check over the first of some sessions. */
final class Inspecting {
    private Inspecting() {}

    static List<Finding> by(DataCheck check, List<Session> sessions) {
        return checked(check, sessions).findings();
    }

    static DataCheck.Checked checked(DataCheck check, List<Session> sessions) {
        List<Session> corrected =
                sessions.stream().map(s -> BackgroundFloor.correct(s).session()).toList();
        return check.check(new Material(corrected.get(0), sessions.get(0), new AllSessions(corrected, sessions)));
    }
}
