package org.ellwand.pairing;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ellwand.amount.Amount;
import org.ellwand.amount.Interval;
import org.ellwand.amount.IntervalPhrase;
import org.ellwand.amount.PhraseException;
import org.ellwand.amount.Phrases;
import org.ellwand.claim.Between;
import org.ellwand.claim.Rule;
import org.ellwand.input.InputException;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.Reading;
import org.ellwand.measurement.Stimulus;
import org.ellwand.words.Remark;

/** Pairs of cells that differ in the compared condition only; within a session where possible, else across sessions. */
public final class PairSelection {
    private static final double SINGLE_LEVEL_HALF_WIDTH_DB = 1;

    private final Selection selection;
    private final String product;

    /**
     * The comparisons of one product.
     *
     * @param product its name, as readings name their device
     * @param selection finds the cells of each side
     */
    public PairSelection(String product, Selection selection) {
        this.product = product;
        this.selection = selection;
    }

    /**
     * What a comparison found.
     *
     * @param pairs in order of their conditions
     * @param sides of which too little pairs up for a mean over people or products, in order of their conditions
     * @param dropped why readings that met the conditions cannot be used
     */
    public record Found(List<Pair> pairs, List<Sides> sides, List<Remark> dropped) {}

    /**
     * The pairs of a rule with {@code between}; where it speaks of a mean over people or products, and fewer than two of
     * them were measured on both sides, all of both sides instead.
     *
     * @param rule with {@code between}
     * @return pairs, or both sides, and what could not be used
     * @throws InputException where readings of several settings, fits, firmwares, ears or units match and the rule says
     *     nothing of it
     */
    public Found select(Rule rule) throws InputException {
        Between between = rule.between().orElseThrow();
        Selected first = side(rule, between, between.first());
        Selected second = side(rule, between, between.second());
        NavigableSet<Remark> dropped = new TreeSet<>(first.dropped());
        dropped.addAll(second.dropped());
        List<Pair> pairs = new ArrayList<>();
        List<Sides> sides = new ArrayList<>();
        Averaged averaged = Averaged.byMean(rule);
        for (Group group : groups(first.joined(), second.joined(), between, averaged)) {
            List<Pair> paired = group.pairs();
            List<Conditions> both = conditions(paired.stream().map(Pair::first).toList());
            if (averaged.isServedBy(both, conditions(group.first()), conditions(group.second()))) {
                pairs.addAll(paired);
                Unpaired.some(averaged, conditions(group.first()), conditions(group.second()), both)
                        .ifPresent(dropped::add);
            } else {
                sides.add(new Sides(group.first(), group.second()));
            }
        }
        if (pairs.isEmpty() && sides.isEmpty()) {
            Unpaired.all(between, conditions(first.joined()), conditions(second.joined()))
                    .ifPresent(dropped::add);
        }
        return new Found(pairs, sides, List.copyOf(dropped));
    }

    /** Both sides by what their cells have in common besides what is averaged over, in order of the first. */
    private static Collection<Group> groups(
            List<Joined> first, List<Joined> second, Between between, Averaged averaged) {
        Map<Alike, Group> groups = new LinkedHashMap<>();
        first.forEach(one -> group(groups, one, between, averaged).first().add(one));
        second.forEach(other -> group(groups, other, between, averaged).second().add(other));
        return groups.values();
    }

    private static Group group(Map<Alike, Group> groups, Joined joined, Between between, Averaged averaged) {
        return groups.computeIfAbsent(
                Alike.of(joined, between).without(averaged.conditions()),
                k -> new Group(between, new ArrayList<>(), new ArrayList<>()));
    }

    /** What may be held against each other. */
    private record Group(Between between, List<Joined> first, List<Joined> second) {
        List<Pair> pairs() {
            Map<Alike, List<Joined>> ones = alike(first);
            Map<Alike, List<Joined>> others = alike(second);
            return first.stream().flatMap(one -> partners(one, ones, others)).toList();
        }

        private Map<Alike, List<Joined>> alike(List<Joined> side) {
            Map<Alike, List<Joined>> alike = new HashMap<>();
            side.forEach(one -> alike.computeIfAbsent(Alike.of(one, between), k -> new ArrayList<>())
                    .add(one));
            return alike;
        }

        /** Those of its own session; across sessions where either has none there, whichever is the first of the comparison. */
        private Stream<Pair> partners(Joined one, Map<Alike, List<Joined>> ones, Map<Alike, List<Joined>> others) {
            Alike key = Alike.of(one, between);
            List<Joined> there = others.getOrDefault(key, List.of());
            boolean alone = there.stream().noneMatch(other -> sameSession(one, other, between));
            return there.stream()
                    .filter(other -> alone
                            || sameSession(one, other, between)
                            || ones.getOrDefault(key, List.of()).stream()
                                    .noneMatch(same -> sameSession(same, other, between)))
                    .map(other -> Pair.of(one, other));
        }
    }

    private static List<Conditions> conditions(List<Joined> joined) {
        return joined.stream().map(Joined::conditions).toList();
    }

    private Selected side(Rule rule, Between between, String value) throws InputException {
        Filter filter = Filter.of(rule, product).with(between.condition(), value, level(rule, between, value));
        return selection.select(rule, filter);
    }

    static Optional<Interval> level(Rule rule, Between between, String value) throws InputException {
        if (!between.condition().equals("level")) {
            return Optional.empty();
        }
        try {
            IntervalPhrase phrase = Phrases.interval(value);
            return Optional.of(phrase.bare().map(PairSelection::around).orElse(phrase.interval()));
        } catch (PhraseException e) {
            throw new InputException(rule.place(), "between level: " + e.getMessage());
        }
    }

    private static Interval around(Amount level) {
        return Interval.of(
                level.value() - SINGLE_LEVEL_HALF_WIDTH_DB, level.value() + SINGLE_LEVEL_HALF_WIDTH_DB, level.unit());
    }

    private static boolean sameSession(Joined one, Joined other, Between between) {
        boolean changesSound = between.isOfSounds();
        return one.first().session().id().equals(other.first().session().id())
                && (changesSound || one.get("stimulus").equals(other.get("stimulus")));
    }

    /** What both of a pair have in common; of series the kind of sound, as one may hold a level that the other lacks. */
    private record Alike(Reading.Values values, Conditions conditions, List<String> sounds) {
        Alike without(Set<String> names) {
            return new Alike(values, conditions.without(names), sounds);
        }

        static Alike of(Joined joined, Between between) {
            return new Alike(
                    joined.values(),
                    joined.conditions().without(ignored(between)),
                    PairSelection.sounds(joined, between));
        }
    }

    /** Ears and sides go together: a comparison of sides is one of ears, and the other way round. */
    private static Set<String> ignored(Between between) {
        return switch (between.condition()) {
            case "side", "ear" -> Set.of("side", "ear", "session", "stimulus");
            case "session", "stimulus" -> Set.of("session", "stimulus");
            default -> Set.of(between.condition(), "session", "stimulus");
        };
    }

    private static List<String> sounds(Joined joined, Between between) {
        return joined.isSeries()
                ? List.of(between.condition().equals("stimulus") ? "" : kind(joined.first()))
                : joined.cells().stream().map(cell -> sound(cell, between)).toList();
    }

    /** Stimuli of two sessions are the same sound where kind and levels are; ids are each session's own. */
    private static String sound(Cell cell, Between between) {
        return switch (between.condition()) {
            case "stimulus" -> cell.stimulus().map(PairSelection::levels).orElse("");
            case "level" -> kind(cell);
            default -> cell.stimulus().map(s -> s.kind() + " " + levels(s)).orElse("");
        };
    }

    private static String kind(Cell cell) {
        return cell.stimulus().map(Stimulus::kind).orElse("");
    }

    private static String levels(Stimulus stimulus) {
        return stimulus.levels().stream()
                .map(a -> a.value() + " " + a.unit().symbol())
                .sorted()
                .collect(Collectors.joining(", "));
    }
}
