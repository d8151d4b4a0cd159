package org.ellwand.pairing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.ellwand.amount.Amount;
import org.ellwand.amount.Interval;
import org.ellwand.amount.IntervalPhrase;
import org.ellwand.amount.PhraseException;
import org.ellwand.amount.Phrases;
import org.ellwand.claim.Between;
import org.ellwand.claim.Rule;
import org.ellwand.input.InputException;
import org.ellwand.measurement.Stimulus;

/** Pairs of cells that differ in the compared condition only; within a session where possible, else across sessions. */
public final class PairSelection {
    private static final double SINGLE_LEVEL_HALF_WIDTH_DB = 1;

    private final Selection selection;
    private final String product;

    public PairSelection(String product, Selection selection) {
        this.product = product;
        this.selection = selection;
    }

    /**
     * What a comparison found.
     *
     * @param pairs in order of their conditions
     * @param dropped why readings that met the conditions cannot be used
     */
    public record Found(List<Pair> pairs, List<String> dropped) {}

    public Found select(Rule rule, boolean needsOpenEar) throws InputException {
        Between between = rule.between().orElseThrow();
        Selected first = side(rule, between, between.first(), needsOpenEar);
        Selected second = side(rule, between, between.second(), needsOpenEar);
        SortedSet<String> dropped = new TreeSet<>(first.dropped());
        dropped.addAll(second.dropped());
        List<Pair> pairs = new ArrayList<>();
        for (Cell cell : first.cells()) {
            pairs.addAll(partners(cell, second.cells(), between));
        }
        return new Found(pairs, List.copyOf(dropped));
    }

    private Selected side(Rule rule, Between between, String value, boolean needsOpenEar) throws InputException {
        Filter filter = Filter.of(rule, product).with(between.condition(), value, level(rule, between, value));
        return selection.select(rule, filter, needsOpenEar);
    }

    private static Optional<Interval> level(Rule rule, Between between, String value) throws InputException {
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

    private static List<Pair> partners(Cell cell, List<Cell> others, Between between) {
        List<Cell> within = others.stream()
                .filter(o -> sameSession(cell, o, between) && alike(cell, o, between))
                .toList();
        List<Cell> chosen = within.isEmpty()
                ? others.stream().filter(o -> alike(cell, o, between)).toList()
                : within;
        return chosen.stream()
                .map(other -> new Pair(Pair.common(cell, other), cell, other))
                .toList();
    }

    private static boolean sameSession(Cell one, Cell other, Between between) {
        boolean changesSound = Set.of("level", "stimulus").contains(between.condition());
        return one.session().id().equals(other.session().id())
                && (changesSound || one.part("stimulus").equals(other.part("stimulus")));
    }

    private static boolean alike(Cell one, Cell other, Between between) {
        Set<String> ignored = ignored(between);
        return one.values() == other.values()
                && one.conditions().without(ignored).equals(other.conditions().without(ignored))
                && sound(one, between).equals(sound(other, between));
    }

    /** Ears and sides go together: a comparison of sides is one of ears, and the other way round. */
    private static Set<String> ignored(Between between) {
        return switch (between.condition()) {
            case "side", "ear" -> Set.of("side", "ear", "session", "stimulus");
            default -> Set.of(between.condition(), "session", "stimulus");
        };
    }

    /** Stimuli of two sessions are the same sound where kind and levels are; ids are each session's own. */
    private static String sound(Cell cell, Between between) {
        return switch (between.condition()) {
            case "stimulus" -> cell.stimulus().map(PairSelection::levels).orElse("");
            case "level" -> cell.stimulus().map(Stimulus::kind).orElse("");
            default -> cell.stimulus().map(s -> s.kind() + " " + levels(s)).orElse("");
        };
    }

    private static String levels(Stimulus stimulus) {
        return stimulus.levels().stream()
                .map(a -> a.value() + " " + a.unit().symbol())
                .sorted()
                .collect(Collectors.joining(", "));
    }
}
