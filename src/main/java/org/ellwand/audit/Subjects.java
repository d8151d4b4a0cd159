package org.ellwand.audit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import org.ellwand.acoustics.Resolution;
import org.ellwand.claim.Rule;
import org.ellwand.claim.Statistic;
import org.ellwand.input.InputException;
import org.ellwand.measurement.Reading;
import org.ellwand.measurement.Session;
import org.ellwand.pairing.Cell;
import org.ellwand.pairing.Insertion;
import org.ellwand.pairing.Pair;
import org.ellwand.pairing.PairSelection;
import org.ellwand.pairing.Selected;
import org.ellwand.pairing.Selection;
import org.ellwand.quantity.CellFormula;
import org.ellwand.quantity.CurvePart;
import org.ellwand.quantity.Formula;
import org.ellwand.quantity.SpectralQuantity;

/** Builds the subjects of a rule: cells or pairs of cells, averaged over ears and units where the rule says so. */
final class Subjects {
    private final Rule rule;
    private final SpectralQuantity quantity;
    private final SortedSet<String> dropped = new TreeSet<>();

    private Subjects(Rule rule, SpectralQuantity quantity) {
        this.rule = rule;
        this.quantity = quantity;
    }

    /**
     * What was built.
     *
     * @param subjects in order of their conditions
     * @param dropped why readings that met the conditions cannot be used
     */
    record Built(List<Subject> subjects, List<String> dropped) {}

    static Built of(Rule rule, SpectralQuantity quantity, String product, List<Session> sessions)
            throws InputException {
        Subjects subjects = new Subjects(rule, quantity);
        List<Subject> single = subjects.single(product, sessions);
        List<Subject> combined = Populations.combine(rule, single);
        return new Built(combined, List.copyOf(subjects.dropped));
    }

    private List<Subject> single(String product, List<Session> sessions) throws InputException {
        boolean needsOpenEar = quantity.parts(rule).stream().anyMatch(p -> p.openEar() != 0);
        Selection selection = new Selection(product, sessions);
        if (rule.between().isEmpty()) {
            Selected selected = selection.select(rule, needsOpenEar);
            dropped.addAll(selected.dropped());
            return selected.cells().stream()
                    .filter(this::isUsable)
                    .map(this::ofCell)
                    .toList();
        }
        PairSelection.Found found = new PairSelection(product, selection).select(rule, needsOpenEar);
        dropped.addAll(found.dropped());
        List<Subject> pairs = new ArrayList<>();
        for (Pair pair : found.pairs()) {
            if (isUsable(pair.first()) && isUsable(pair.second())) {
                pairs.add(ofPair(pair));
            }
        }
        return pairs;
    }

    /** Differences cannot be summed as energies, nor be turned back into levels. */
    private boolean isUsable(Cell cell) {
        String session = "session " + cell.session().id();
        if (quantity.parts(rule).stream().anyMatch(p -> p.field() != 0)
                && cell.field().isEmpty()) {
            return drop("no field-microphone reading of the same stimulus in " + session);
        }
        if (cell.values() == Reading.Values.LEVELS) {
            return true;
        }
        if (parts(cell).isEmpty()
                || rule.statistic().equals(Optional.of(Statistic.OVERALL))
                || rule.resolution()
                        .filter(r -> r.isCoarserThan(resolutionOf(cell)))
                        .isPresent()) {
            return drop("the readings of " + session + " are differences already, and this needs levels");
        }
        return true;
    }

    private static Resolution resolutionOf(Cell cell) {
        return cell.insertions().get(0).takes().get(0).spectrum().resolution();
    }

    private boolean drop(String reason) {
        dropped.add(reason);
        return false;
    }

    private List<CurvePart> parts(Cell cell) {
        return switch (cell.values()) {
            case LEVELS -> quantity.parts(rule);
            case ATTENUATION, SUBJECT_ATTENUATION -> quantity.partsOfDifferences(true);
            case INSERTION_GAIN -> quantity.partsOfDifferences(false);
        };
    }

    private Formula formula(Cell cell) {
        return new CellFormula(cell, parts(cell));
    }

    private Subject ofCell(Cell cell) {
        List<Repeats.Member> members = cell.insertions().stream()
                .map(i -> new Repeats.Member(formula(cell.only(i)), identities(i)))
                .toList();
        Repeats repeats = new Repeats("insertions|" + cell.conditions(), Repeats.Kind.INSERTIONS, 1, members);
        return new Subject(cell.conditions(), List.of(cell), cell.insertions().size(), formula(cell), List.of(repeats));
    }

    private Subject ofPair(Pair pair) {
        List<Cell> cells = List.of(pair.first(), pair.second());
        Formula formula = compare(pair.first(), pair.second());
        if (pair.sharesInsertions()) {
            List<Repeats.Member> members = pair.first().insertions().stream()
                    .map(i -> shared(pair.only(i)))
                    .toList();
            Repeats repeats = new Repeats(key(pair, "both"), Repeats.Kind.INSERTIONS, 1, members);
            return new Subject(pair.conditions(), cells, members.size(), formula, List.of(repeats));
        }
        List<Repeats> repeats = List.of(
                new Repeats(
                        key(pair, "first"),
                        Repeats.Kind.INSERTIONS,
                        1,
                        pair.first().insertions().stream()
                                .map(i ->
                                        new Repeats.Member(compare(pair.first().only(i), pair.second()), identities(i)))
                                .toList()),
                new Repeats(
                        key(pair, "second"),
                        Repeats.Kind.INSERTIONS,
                        1,
                        pair.second().insertions().stream()
                                .map(i -> new Repeats.Member(
                                        compare(pair.first(), pair.second().only(i)), identities(i)))
                                .toList()));
        int insertions = Math.min(
                pair.first().insertions().size(), pair.second().insertions().size());
        return new Subject(pair.conditions(), cells, insertions, formula, repeats);
    }

    private Repeats.Member shared(Pair one) {
        Set<Reading> readings = identities(one.first().insertions().get(0));
        readings.addAll(identities(one.second().insertions().get(0)));
        return new Repeats.Member(compare(one.first(), one.second()), readings);
    }

    private Formula compare(Cell first, Cell second) {
        return new Formula.Comparison(formula(first), formula(second), rule.ratio());
    }

    private static String key(Pair pair, String side) {
        return "insertions|" + side + "|" + pair.first().conditions() + "|"
                + pair.second().conditions();
    }

    private static Set<Reading> identities(Insertion insertion) {
        Set<Reading> takes = Collections.newSetFromMap(new IdentityHashMap<>());
        takes.addAll(insertion.takes());
        return takes;
    }
}
