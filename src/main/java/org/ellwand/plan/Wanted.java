package org.ellwand.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.ellwand.claim.Choice;
import org.ellwand.claim.Claim;
import org.ellwand.claim.Rule;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Session;

/**
 * A claim whose readings are to be taken.
 *
 * @param insertions how many of each
 * @param under conditions that the claim says nothing of, and under which its readings are taken
 */
record Wanted(Claim claim, int insertions, SortedMap<String, String> under) {
    /** Who wears what, when: a sitting has one of each. */
    static final Set<String> OF_SITTING = Set.of("ear", "side", "head", "unit", "session", "device", "product");

    /** What every session knows besides, without declaring it. */
    static final Set<String> BUILT_IN = Set.of("setting", "fit", "firmware", "stimulus", "insertion", "take");

    private static final Set<String> OF_SOUND = Set.of("level", "stimulus");

    /** Under what the claim says and nothing else. */
    Wanted(Claim claim, int insertions) {
        this(claim, insertions, Collections.emptySortedMap());
    }

    /** The rule and the other fair ones: they are judged side by side. */
    List<Rule> rules() {
        return Stream.concat(claim.rule().stream(), claim.otherwise().stream())
                .map(this::under)
                .toList();
    }

    private Rule under(Rule rule) {
        Map<String, Choice> where = new TreeMap<>();
        under.forEach((name, value) -> {
            if (!says(rule, name)) {
                where.put(name, new Choice.OneOf(List.of(value)));
            }
        });
        where.putAll(rule.where());
        return where.size() == rule.where().size() ? rule : rule.under(where);
    }

    /** Whether a rule names values of a condition, or compares them. */
    static boolean says(Rule rule, String name) {
        return rule.where().containsKey(name)
                || rule.between().filter(b -> b.condition().equals(name)).isPresent();
    }

    /** The values of a condition that a rule names, or compares. */
    static List<String> named(Rule rule, String name) {
        List<String> values = new ArrayList<>();
        if (rule.where().get(name) instanceof Choice.OneOf some) {
            values.addAll(some.names());
        }
        rule.between()
                .filter(between -> between.condition().equals(name))
                .ifPresent(between -> values.addAll(List.of(between.first(), between.second())));
        return values;
    }

    /** Every combination of settings, fits and further conditions that a rule speaks of. */
    static List<SortedMap<String, String>> combinations(Rule rule, String product, List<Session> sessions) {
        List<SortedMap<String, String>> all = new ArrayList<>(List.of(new TreeMap<>()));
        Map<String, List<String>> values = new TreeMap<>();
        rule.where().forEach((name, choice) -> values.put(name, names(name, choice, product, sessions)));
        rule.between()
                .filter(between -> !OF_SOUND.contains(between.condition()))
                .ifPresent(between -> values.put(between.condition(), List.of(between.first(), between.second())));
        boolean devices = rule.between()
                .filter(between -> between.condition().equals("device"))
                .isPresent();
        values.forEach((name, some) -> {
            boolean varied = !OF_SITTING.contains(name) || (devices && name.equals("device"));
            if (varied && !some.isEmpty()) {
                all.replaceAll(TreeMap::new);
                List<SortedMap<String, String>> before = List.copyOf(all);
                all.clear();
                before.forEach(one -> some.forEach(value -> all.add(with(one, name, value))));
            }
        });
        all.forEach(one -> one.remove("device", product));
        return all;
    }

    private static SortedMap<String, String> with(SortedMap<String, String> one, String name, String value) {
        SortedMap<String, String> more = new TreeMap<>(one);
        more.put(name, value);
        return more;
    }

    private static List<String> names(String name, Choice choice, String product, List<Session> sessions) {
        return choice instanceof Choice.OneOf some ? some.names() : List.copyOf(known(name, product, sessions));
    }

    /** What a product was measured under before. */
    static Set<String> known(String name, String product, List<Session> sessions) {
        Set<String> values = new TreeSet<>();
        sessions.stream()
                .flatMap(session -> session.readings().stream())
                .filter(reading -> reading.device().equals(product))
                .map(CurveReading::conditions)
                .forEach(conditions -> conditions.get(name).ifPresent(values::add));
        return values;
    }
}
