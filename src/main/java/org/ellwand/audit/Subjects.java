package org.ellwand.audit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.ellwand.claim.Rule;
import org.ellwand.input.InputException;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.Reading;
import org.ellwand.measurement.Session;
import org.ellwand.pairing.Averaged;
import org.ellwand.pairing.Cell;
import org.ellwand.pairing.Insertion;
import org.ellwand.pairing.Joined;
import org.ellwand.pairing.Pair;
import org.ellwand.pairing.PairSelection;
import org.ellwand.pairing.Selected;
import org.ellwand.pairing.Selection;
import org.ellwand.pairing.Sides;
import org.ellwand.pairing.Unpaired;
import org.ellwand.quantity.CellQuantity;
import org.ellwand.quantity.Formula;
import org.ellwand.words.Remark;

/** Builds the subjects of a rule: cells or pairs of them, averaged over ears and units where the rule says so. */
final class Subjects {
    private final Rule rule;
    private final CellQuantity quantity;
    private final NavigableSet<Remark> dropped = new TreeSet<>();
    private final NavigableSet<Remark> notes = new TreeSet<>();
    private final List<Subject> unpaired = new ArrayList<>();

    private Subjects(Rule rule, CellQuantity quantity) {
        this.rule = rule;
        this.quantity = quantity;
    }

    /**
     * What was built.
     *
     * @param subjects in order of their conditions
     * @param dropped why readings that met the conditions cannot be used
     * @param notes what a reader must know of how they were put together
     */
    record Built(List<Subject> subjects, List<Remark> dropped, List<Remark> notes) {}

    static Built of(Rule rule, CellQuantity quantity, String product, List<Session> sessions) throws InputException {
        Subjects subjects = new Subjects(rule, quantity);
        List<Subject> single = subjects.single(product, sessions);
        List<Subject> combined = new ArrayList<>(Populations.combine(rule, single));
        combined.addAll(subjects.unpaired);
        return new Built(combined, List.copyOf(subjects.dropped), List.copyOf(subjects.notes));
    }

    private List<Subject> single(String product, List<Session> sessions) throws InputException {
        Selection.Need need = new Selection.Need(quantity.source(rule), quantity.usesOpenEar(rule), quantity.joining());
        Selection selection = new Selection(product, sessions, need);
        if (rule.between().isEmpty()) {
            Selected selected = selection.select(rule);
            dropped.addAll(selected.dropped());
            return selected.joined().stream()
                    .filter(this::isUsable)
                    .map(this::ofJoined)
                    .toList();
        }
        PairSelection.Found found = new PairSelection(product, selection).select(rule);
        dropped.addAll(found.dropped());
        for (Sides sides : found.sides()) {
            compare(usable(sides.first()), usable(sides.second()));
        }
        return found.pairs().stream()
                .filter(pair -> isUsable(pair.first()) && isUsable(pair.second()))
                .map(this::ofPair)
                .toList();
    }

    private List<Joined> usable(List<Joined> side) {
        return side.stream().filter(this::isUsable).toList();
    }

    /** Of two sides that do not pair up, what is left of them being usable. */
    private void compare(List<Joined> first, List<Joined> second) throws InputException {
        if (first.isEmpty() || second.isEmpty()) {
            return;
        }
        unpaired.add(Populations.compared(
                rule,
                first.stream().map(this::ofJoined).toList(),
                second.stream().map(this::ofJoined).toList()));
        Averaged averaged = Averaged.by(rule);
        notes.add(Unpaired.compared(
                averaged,
                first.stream().map(Joined::conditions).toList(),
                second.stream().map(Joined::conditions).toList()));
    }

    private boolean isUsable(Joined joined) {
        Optional<Remark> reason = quantity.unusable(joined, rule);
        reason.ifPresent(dropped::add);
        return reason.isEmpty();
    }

    private Subject ofJoined(Joined joined) {
        return subject(
                joined.conditions(),
                joined.cells(),
                joined.conditions().toString(),
                cells -> quantity.formula(new Joined(joined.conditions(), cells), rule));
    }

    private Subject ofPair(Pair pair) {
        int size = pair.first().cells().size();
        return subject(
                pair.conditions(),
                pair.cells(),
                pair.first().conditions() + "|" + pair.second().conditions(),
                cells -> new Formula.Comparison(
                        quantity.formula(new Joined(pair.first().conditions(), cells.subList(0, size)), rule),
                        quantity.formula(
                                new Joined(pair.second().conditions(), cells.subList(size, cells.size())), rule),
                        rule.ratio()));
    }

    /**
     * A subject. Cells that hold the same set of insertion ids share their insertions, so that what an insertion shares
     * cancels; otherwise they are independent.
     *
     * @param formula from the cells, each perhaps with one of its insertions only
     */
    private static Subject subject(
            Conditions conditions, List<Cell> cells, String identity, Function<List<Cell>, Formula> formula) {
        Map<Set<String>, List<Integer>> sharing = new LinkedHashMap<>();
        for (int c = 0; c < cells.size(); c++) {
            sharing.computeIfAbsent(insertions(cells.get(c)), k -> new ArrayList<>())
                    .add(c);
        }
        List<Repeats> repeats = new ArrayList<>();
        for (List<Integer> group : sharing.values()) {
            String key = key(repeats.size(), sharing.size(), cells.size()) + identity;
            repeats.add(Repeats.of(key, Repeats.Kind.INSERTIONS, members(cells, group, formula)));
        }
        int least = repeats.stream().mapToInt(Repeats::count).min().orElse(0);
        return new Subject(conditions, cells, least, formula.apply(cells), repeats);
    }

    private static Set<String> insertions(Cell cell) {
        return cell.insertions().stream().map(Insertion::key).collect(Collectors.toCollection(HashSet::new));
    }

    private static String key(int group, int groups, int cells) {
        String which = groups > 1 ? (group + 1) + " of " + groups + "|" : cells > 1 ? "all|" : "";
        return "insertions|" + which;
    }

    private static List<Repeats.Member> members(
            List<Cell> cells, List<Integer> group, Function<List<Cell>, Formula> formula) {
        List<Repeats.Member> members = new ArrayList<>();
        for (Insertion insertion : cells.get(group.get(0)).insertions()) {
            List<Cell> narrowed = new ArrayList<>(cells);
            Set<Reading> own = Collections.newSetFromMap(new IdentityHashMap<>());
            for (int c : group) {
                Cell only = cells.get(c).only(insertion.key());
                narrowed.set(c, only);
                own.addAll(only.insertions().get(0).takes());
            }
            members.add(new Repeats.Member(formula.apply(narrowed), own));
        }
        return members;
    }
}
