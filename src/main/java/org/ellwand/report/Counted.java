package org.ellwand.report;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.Reading;
import org.ellwand.measurement.Session;

/**
 * On how many ears and with how many insertions something was measured.
 *
 * @param ears that were named, or that a session shows by their open-ear readings
 * @param insertions of the product in those
 * @param placings of a product where nothing speaks of an ear: before a microphone, on a fixture
 */
record Counted(int ears, int insertions, int placings) {
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
        int placings = 0;
        for (Session session : sessions) {
            List<Conditions> inPlace = readings(session).stream()
                    .filter(reading -> isInPlace(reading) && wanted.test(reading))
                    .toList();
            boolean ofAnEar = showsAnEar(session);
            Set<Conditions> inEars = insertions(session, inPlace, reading -> ofAnEar || isNamed(reading));
            inPlace.forEach(reading -> named.add(reading.only(EAR)));
            // A named ear is the same ear in every session; one without a name is the session's own.
            ears += named.remove(UNNAMED) && ofAnEar ? 1 : 0;
            insertions += inEars.size();
            placings += insertions(session, inPlace, reading -> !ofAnEar && !isNamed(reading))
                    .size();
        }
        return new Counted(ears + named.size(), insertions, placings);
    }

    /** Counts what was read of one product. */
    static Counted ofProduct(String name, List<Session> sessions) {
        return of(
                sessions, reading -> reading.get("device").filter(name::equals).isPresent());
    }

    Map<String, Object> model() {
        return model(ears > 0 ? "ears" : placings > 0 ? "placings" : "ears", this, 0);
    }

    /** Nothing was measured, or it is not ears that were counted but figures or trials of a panel. */
    static Map<String, Object> other(String kind, int count) {
        return model(kind, new Counted(0, 0, 0), count);
    }

    private static Map<String, Object> model(String kind, Counted counted, int count) {
        return Fields.of("kind", kind)
                .and("ears", counted.ears)
                .and("insertions", counted.insertions)
                .and("placings", counted.placings)
                .and("count", count)
                .map();
    }

    private static Set<Conditions> insertions(
            Session session, List<Conditions> readings, Predicate<Conditions> wanted) {
        return readings.stream()
                .filter(wanted)
                .map(reading -> insertion(session, reading))
                .collect(Collectors.toSet());
    }

    private static boolean isNamed(Conditions reading) {
        return !reading.only(EAR).equals(UNNAMED);
    }

    /** Differences are those of an ear with and without the product. */
    private static boolean showsAnEar(Session session) {
        return readings(session).stream().anyMatch(reading -> reading.has("device", Reading.OPEN_EAR))
                || session.readings().stream().anyMatch(reading -> reading.values() != Reading.Values.LEVELS);
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
