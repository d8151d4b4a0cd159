package org.ellwand.report;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.HarmonicReading;
import org.ellwand.measurement.Reading;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.Trace;

/** On how many ears and with how many insertions something was measured. */
record Counted(int ears, int insertions) {
    private static final Set<String> EAR = Set.of("head", "ear", "side");
    private static final Set<String> INSERTION = Set.of("ear", "side", "unit", "fit", "insertion");
    private static final Set<String> INSERTION_OF_SETTING =
            Set.of("ear", "side", "unit", "fit", "insertion", "setting");

    /** One of what is counted: equal ones are the same. */
    private record Counting(String session, Conditions of) {}

    /** Counts what was read with a product in place. */
    static Counted of(List<Session> sessions, Predicate<Conditions> wanted) {
        Set<Counting> ears = new HashSet<>();
        Set<Counting> insertions = new HashSet<>();
        for (Session session : sessions) {
            inPlace(session).filter(wanted).forEach(reading -> {
                ears.add(ear(session, reading));
                insertions.add(insertion(session, reading));
            });
        }
        return new Counted(ears.size(), insertions.size());
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

    private static Stream<Conditions> inPlace(Session session) {
        return Stream.of(
                        session.readings().stream().map(Reading::conditions),
                        session.traces().stream().map(Trace::conditions),
                        session.harmonics().stream().map(HarmonicReading::conditions))
                .flatMap(conditions -> conditions)
                .filter(Counted::isInPlace);
    }

    private static boolean isInPlace(Conditions conditions) {
        String device = conditions.get("device").orElse("");
        return !device.equals(Reading.OPEN_EAR) && !device.equals(Reading.FIELD_MICROPHONE);
    }

    /** A named ear is the same ear in every session; one without a name is the session's own. */
    private static Counting ear(Session session, Conditions reading) {
        Conditions named = reading.only(EAR);
        return new Counting(named.names().isEmpty() ? session.id() : "", named);
    }

    private static Counting insertion(Session session, Conditions reading) {
        // A reading without an insertion id is an insertion of its own.
        Conditions own = reading.get("insertion").isEmpty()
                ? reading
                : reading.only(session.settingsSwitchedInPlace() ? INSERTION : INSERTION_OF_SETTING);
        return new Counting(session.id(), own);
    }
}
