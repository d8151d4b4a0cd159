package org.ellwand.plan;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Session;

/**
 * Whose ear wears which sample.
 *
 * @param conditions ear, side, head and unit, as far as they are named
 * @param suffix tells the wearers of one session apart; empty where there is one
 */
record Wearer(SortedMap<String, String> conditions, String suffix) {
    private static final List<String> NAMES = List.of("ear", "side", "head", "unit");

    /** Somebody, where nothing was measured yet. */
    static Wearer unknown() {
        return new Wearer(new TreeMap<>(Map.of("ear", "ear-01")), "");
    }

    /** Somebody else, or somebody with another sample: the names are to be replaced. */
    static Wearer another() {
        return new Wearer(
                new TreeMap<>(Map.of("ear", "another-ear", "head", "another-head", "unit", "another-sample")),
                "another");
    }

    /** Everybody who wore a product in a session. */
    static List<Wearer> of(Session session, String product) {
        Set<SortedMap<String, String>> all = new LinkedHashSet<>();
        session.readings().stream()
                .filter(reading -> reading.device().equals(product))
                .forEach(reading -> all.add(conditions(reading)));
        List<Wearer> wearers = new ArrayList<>();
        all.forEach(one -> wearers.add(new Wearer(one, all.size() == 1 ? "" : String.join(" ", one.values()))));
        return wearers;
    }

    private static SortedMap<String, String> conditions(CurveReading reading) {
        SortedMap<String, String> conditions = new TreeMap<>();
        NAMES.forEach(name -> reading.get(name).ifPresent(value -> conditions.put(name, value)));
        return conditions;
    }
}
