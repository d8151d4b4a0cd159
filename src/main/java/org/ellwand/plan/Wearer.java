package org.ellwand.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ellwand.claim.Rule;
import org.ellwand.measurement.Conditions;
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

    /** This one where nobody else is to be told apart. */
    Wearer alone() {
        return new Wearer(conditions, "");
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

    /**
     * Those whom claims name and who are not among the others: left and right, two samples, a certain head. Each with the
     * claims that name them.
     */
    static Map<Wearer, List<Wanted>> named(List<Wanted> wanted, List<Wearer> others) {
        Map<Wearer, List<Wanted>> named = new LinkedHashMap<>();
        for (Wanted one : wanted) {
            one.rules().stream()
                    .flatMap(rule -> named(rule).stream())
                    .distinct()
                    .filter(who -> others.stream().noneMatch(other -> other.is(who)))
                    .forEach(who -> named.computeIfAbsent(of(who), k -> new ArrayList<>())
                            .add(one));
        }
        return named;
    }

    /** Whoever conditions name; maybe nobody. */
    static Wearer named(Conditions conditions) {
        return new Wearer(conditions.only(Set.copyOf(NAMES)).values(), "");
    }

    private boolean is(SortedMap<String, String> who) {
        return conditions.entrySet().containsAll(who.entrySet());
    }

    /** The names that a rule gives, in every combination; none where it gives none. */
    private static List<SortedMap<String, String>> named(Rule rule) {
        List<SortedMap<String, String>> all = new ArrayList<>();
        all.add(new TreeMap<>());
        for (String name : NAMES) {
            List<String> values = Wanted.named(rule, name);
            List<SortedMap<String, String>> more = all.stream()
                    .flatMap(one -> values.stream().map(value -> {
                        SortedMap<String, String> with = new TreeMap<>(one);
                        with.put(name, value);
                        return with;
                    }))
                    .toList();
            if (!more.isEmpty()) {
                all = new ArrayList<>(more);
            }
        }
        all.removeIf(Map::isEmpty);
        return all;
    }

    /** Both sides of one head where sides are named and no ear is; an ear of its own else. */
    private static Wearer of(SortedMap<String, String> who) {
        SortedMap<String, String> conditions = new TreeMap<>(who);
        if (!who.containsKey("ear") && !who.containsKey("head")) {
            conditions.put(who.containsKey("side") ? "head" : "ear", who.containsKey("side") ? "head-01" : "ear-01");
        }
        return new Wearer(conditions, String.join(" ", who.values()));
    }

    private static SortedMap<String, String> conditions(CurveReading reading) {
        SortedMap<String, String> conditions = new TreeMap<>();
        NAMES.forEach(name -> reading.get(name).ifPresent(value -> conditions.put(name, value)));
        return conditions;
    }
}
