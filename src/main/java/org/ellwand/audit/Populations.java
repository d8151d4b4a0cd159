package org.ellwand.audit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ellwand.claim.Rule;
import org.ellwand.input.InputException;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.Reading;
import org.ellwand.measurement.Stimulus;
import org.ellwand.pairing.Averaged;
import org.ellwand.pairing.Cell;
import org.ellwand.quantity.Formula;

/** Averages subjects over ears (first within a head, then over heads) and over units, as statements about all of them. */
final class Populations {
    private static final Averaged ONE_BY_ONE = new Averaged(false, false);

    private Populations() {}

    static List<Subject> combine(Rule rule, List<Subject> single) throws InputException {
        Averaged averaged = Averaged.by(rule);
        if (averaged.isNothing()) {
            return single;
        }
        if (averaged.ears()) {
            refuseHeadless(rule, single);
        }
        Map<String, List<Subject>> groups = new TreeMap<>();
        for (Subject subject : single) {
            String key = subject.conditions().without(averaged.conditions()) + "|" + sound(subject);
            groups.computeIfAbsent(key, k -> new ArrayList<>()).add(subject);
        }
        List<Subject> combined = new ArrayList<>();
        groups.forEach((key, members) -> combined.add(average(key, members, averaged)));
        return combined;
    }

    /**
     * The mean over one side of a comparison held against the mean over the other. The scatter of either side adds its own;
     * where one side is a single person or unit, there is none, and declared sizes must serve for both.
     */
    static Subject compared(Rule rule, List<Subject> first, List<Subject> second) throws InputException {
        Averaged averaged = Averaged.by(rule);
        if (averaged.ears()) {
            refuseHeadless(rule, Stream.concat(first.stream(), second.stream()).toList());
        }
        String key = Stream.concat(first.stream(), second.stream())
                .map(s -> s.conditions().toString())
                .min(Comparator.naturalOrder())
                .orElseThrow();
        Subject one = average("1 of 2|" + key, first, averaged);
        Subject other = average("2 of 2|" + key, second, averaged);
        if (one.isPopulation() != other.isPopulation()) {
            one = average("1 of 2|" + key, first, ONE_BY_ONE);
            other = average("2 of 2|" + key, second, ONE_BY_ONE);
        }
        boolean ratio = rule.ratio();
        List<Repeats> repeats = new ArrayList<>();
        for (Repeats r : one.repeats()) {
            repeats.add(r.against(new Repeats.Other(other.formula(), false, ratio)));
        }
        for (Repeats r : other.repeats()) {
            repeats.add(r.against(new Repeats.Other(one.formula(), true, ratio)));
        }
        List<Subject> both = List.of(one, other);
        return new Subject(
                common(both),
                both.stream().flatMap(s -> s.cells().stream()).toList(),
                one.insertions() + other.insertions(),
                new Formula.Comparison(one.formula(), other.formula(), ratio),
                repeats);
    }

    private static void refuseHeadless(Rule rule, List<Subject> single) throws InputException {
        List<Cell> cells = single.stream().flatMap(s -> s.cells().stream()).toList();
        boolean several = cells.stream().map(Cell::wearer).distinct().count() > 1;
        if (several && cells.stream().anyMatch(c -> c.part("head").isEmpty())) {
            throw new InputException(
                    rule.place(),
                    "'ears: mean' over several ears needs 'head' in the session files: two ears of one head are not two"
                            + " independent ears");
        }
    }

    private static String sound(Subject subject) {
        return subject.cells().stream()
                .map(c -> c.stimulus().map(Populations::sound).orElse(""))
                .collect(Collectors.joining(" / "));
    }

    private static String sound(Stimulus stimulus) {
        return stimulus.kind()
                + stimulus.levels().stream()
                        .map(a -> " " + a.value() + " " + a.unit().symbol())
                        .sorted()
                        .collect(Collectors.joining());
    }

    private static Subject average(String key, List<Subject> members, Averaged averaged) {
        Map<String, List<Subject>> byHead =
                averaged.ears() ? by(members, s -> s.cells().get(0).part("head")) : Map.of();
        Map<String, List<Subject>> byUnit =
                averaged.units() ? by(members, s -> s.cells().get(0).part("unit")) : Map.of();
        List<Repeats> repeats = new ArrayList<>();
        if (byHead.size() > 1) {
            repeats.add(repeats(key, Repeats.Kind.HEADS, byHead));
        }
        if (byUnit.size() > 1) {
            repeats.add(repeats(key, Repeats.Kind.UNITS, byUnit));
        }
        if (repeats.isEmpty()) {
            members.forEach(m -> m.repeats().forEach(r -> repeats.add(lighter(r, members.size()))));
        }
        return new Subject(
                common(members),
                members.stream().flatMap(m -> m.cells().stream()).toList(),
                members.stream().mapToInt(Subject::insertions).sum(),
                mean(members, averaged.units()),
                repeats);
    }

    private static Map<String, List<Subject>> by(List<Subject> members, Function<Subject, String> part) {
        return members.stream().collect(Collectors.groupingBy(part, TreeMap::new, Collectors.toList()));
    }

    private static Repeats repeats(String key, Repeats.Kind kind, Map<String, List<Subject>> groups) {
        List<Repeats.Member> members = groups.values().stream()
                .map(g -> new Repeats.Member(mean(g, false), readings(g)))
                .toList();
        return Repeats.of(kind + "|" + key, kind, members);
    }

    private static Repeats lighter(Repeats repeats, int of) {
        return new Repeats(repeats.key(), repeats.kind(), repeats.weight() / of, repeats.members(), repeats.other());
    }

    /** Over units, then over heads, then over the ears of a head. */
    private static Formula mean(List<Subject> members, boolean overUnits) {
        if (overUnits) {
            return nested(by(members, s -> s.cells().get(0).part("unit")), g -> mean(g, false));
        }
        return nested(
                by(members, s -> s.cells().get(0).part("head")),
                head -> nested(
                        by(head, s -> s.cells().get(0).wearer()),
                        ear -> new Formula.Mean(
                                ear.stream().map(Subject::formula).toList())));
    }

    private static Formula nested(Map<String, List<Subject>> groups, Function<List<Subject>, Formula> each) {
        return new Formula.Mean(groups.values().stream().map(each).toList());
    }

    private static Set<Reading> readings(List<Subject> subjects) {
        Set<Reading> readings = Collections.newSetFromMap(new IdentityHashMap<>());
        subjects.stream().flatMap(s -> s.cells().stream()).forEach(cell -> {
            cell.insertions().forEach(i -> readings.addAll(i.takes()));
            readings.addAll(cell.openEar());
            readings.addAll(cell.field());
        });
        return readings;
    }

    private static Conditions common(List<Subject> members) {
        Map<String, String> common =
                new LinkedHashMap<>(members.get(0).conditions().values());
        members.forEach(m -> common.entrySet().retainAll(m.conditions().values().entrySet()));
        return Conditions.of(common);
    }
}
