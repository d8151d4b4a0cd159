package org.ellwand.report;

import java.util.List;
import org.ellwand.measurement.Session;

/**
 * What every report says about its own reach: which things, in this order. Printed always, since a reader may take any
 * worn product for protection; {@code words.ftl} has the words.
 */
final class Cautions {
    private Cautions() {}

    static List<Object> of(Counted counted, List<Session> sessions) {
        return List.of(
                caution("measured on", counted),
                caution("not a rating", counted),
                caution(someImpulses(sessions) ? "some impulses" : "no impulses", counted),
                caution("law decides", counted),
                caution("ringing", counted));
    }

    private static Object caution(String key, Counted counted) {
        return Fields.of("key", key)
                .and("ears", counted.ears())
                .and("insertions", counted.insertions())
                .and("placings", counted.placings())
                .map();
    }

    private static boolean someImpulses(List<Session> sessions) {
        return sessions.stream()
                .flatMap(session -> session.stimuli().values().stream())
                .anyMatch(stimulus -> stimulus.kind().contains("impulse"));
    }
}
