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
    private static final List<String> EAR = List.of("head", "ear", "side");
    private static final List<String> INSERTION = List.of("ear", "side", "unit", "fit", "insertion");

    /** Counts what was read with a product in place. */
    static Counted of(List<Session> sessions, Predicate<Conditions> wanted) {
        Set<String> ears = new HashSet<>();
        Set<String> insertions = new HashSet<>();
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
    private static String ear(Session session, Conditions reading) {
        String named = named(EAR, reading);
        return named.isEmpty() ? "session=" + session.id() : named;
    }

    private static String insertion(Session session, Conditions reading) {
        if (reading.get("insertion").isEmpty()) {
            // A reading without an insertion id is an insertion of its own.
            return session.id() + ": " + reading;
        }
        String setting =
                session.settingsSwitchedInPlace() ? "" : reading.get("setting").orElse("");
        return session.id() + ": " + named(INSERTION, reading) + setting;
    }

    private static String named(List<String> names, Conditions reading) {
        StringBuilder text = new StringBuilder();
        names.forEach(name -> reading.get(name)
                .ifPresent(value -> text.append(name).append('=').append(value).append(';')));
        return text.toString();
    }
}
