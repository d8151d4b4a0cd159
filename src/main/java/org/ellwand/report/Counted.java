package org.ellwand.report;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.Reading;
import org.ellwand.measurement.Session;

/** On how many ears and with how many insertions something was measured. */
record Counted(int ears, int insertions) {
    private static final Set<String> EAR = Set.of("head", "ear", "side");
    private static final Set<String> INSERTION = Set.of("ear", "side", "unit", "fit", "insertion");
    private static final Set<String> INSERTION_OF_SETTING =
            Set.of("ear", "side", "unit", "fit", "insertion", "setting");

    private static final Conditions UNNAMED = Conditions.of(Map.of());

    /** Counts what was read with a product in place. */
    static Counted of(List<Session> sessions, Predicate<Conditions> wanted) {
        Set<Conditions> named = new HashSet<>();
        int ears = 0;
        int insertions = 0;
        for (Session session : sessions) {
            Set<Conditions> own = new HashSet<>();
            for (Conditions reading : readings(session)) {
                if (isInPlace(reading) && wanted.test(reading)) {
                    named.add(reading.only(EAR));
                    own.add(insertion(session, reading));
                }
            }
            // A named ear is the same ear in every session; one without a name is the session's own.
            ears += named.remove(UNNAMED) ? 1 : 0;
            insertions += own.size();
        }
        return new Counted(ears + named.size(), insertions);
    }

    Map<String, Object> model() {
        return model("ears", ears, insertions, 0);
    }

    /** Nothing was measured, or it is not ears that were counted but figures or trials of a panel. */
    static Map<String, Object> other(String kind, int count) {
        return model(kind, 0, 0, count);
    }

    private static Map<String, Object> model(String kind, int ears, int insertions, int count) {
        return Fields.of("kind", kind)
                .and("ears", ears)
                .and("insertions", insertions)
                .and("count", count)
                .map();
    }

    private static List<Conditions> readings(Session session) {
        List<Conditions> readings = new ArrayList<>();
        session.readings().forEach(reading -> readings.add(reading.conditions()));
        session.traces().forEach(trace -> readings.add(trace.conditions()));
        session.harmonics().forEach(reading -> readings.add(reading.conditions()));
        return readings;
    }

    private static boolean isInPlace(Conditions conditions) {
        return !conditions.has("device", Reading.OPEN_EAR) && !conditions.has("device", Reading.FIELD_MICROPHONE);
    }

    private static Conditions insertion(Session session, Conditions reading) {
        // A reading without an insertion id is an insertion of its own.
        return reading.get("insertion").isEmpty()
                ? reading
                : reading.only(session.settingsSwitchedInPlace() ? INSERTION : INSERTION_OF_SETTING);
    }
}
