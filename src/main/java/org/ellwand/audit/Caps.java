package org.ellwand.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.ellwand.acoustics.Band;
import org.ellwand.amount.Dimension;
import org.ellwand.claim.Population;
import org.ellwand.claim.Rule;
import org.ellwand.measurement.Reading;
import org.ellwand.measurement.SharedBy;
import org.ellwand.pairing.Cell;
import org.ellwand.words.Remark;

/** Why nothing may be firmer than marginal: no firmer verdict for less honesty. */
final class Caps {
    private final Rule rule;
    private final boolean usesOpenEar;

    Caps(Rule rule, boolean usesOpenEar) {
        this.rule = rule;
        this.usesOpenEar = usesOpenEar;
    }

    /** What is missing for a firm verdict about a subject. */
    List<Remark> of(Subject subject) {
        List<Remark> reasons = new ArrayList<>();
        if (!subject.isPopulation()) {
            insertion(subject, reasons);
        }
        if (!subject.isPopulation() || isHeldAgainstOneOpenEar(subject)) {
            openEar(subject, reasons);
        }
        population(subject, reasons);
        return reasons;
    }

    /** Neither an insertion cause nor a second insertion, unless the insertion cancels. */
    private void insertion(Subject subject, List<Remark> reasons) {
        boolean cancels = rule.between().isPresent() && subject.repeats().size() == 1;
        boolean single = subject.repeats().stream().anyMatch(r -> r.count() < 2 && !declaresInsertion(subject, r));
        if (single && !cancels) {
            boolean time = rule.limit().unit().dimension() == Dimension.TIME;
            reasons.add(Remark.of(time ? "one-insertion-in-time" : "one-insertion")
                    .with("insertions", subject.insertions()));
        }
    }

    private static boolean declaresInsertion(Subject subject, Repeats repeats) {
        return subject.cells().stream()
                .filter(c -> c.insertions().stream()
                        .flatMap(i -> i.takes().stream())
                        .anyMatch(t -> repeats.members().stream()
                                .anyMatch(m -> m.readings().contains(t))))
                .allMatch(c -> Surroundings.declares(c, SharedBy.INSERTION));
    }

    /** A paired quantity with neither a declared reading cause nor a second open-ear take. */
    private void openEar(Subject subject, List<Remark> reasons) {
        if (!usesOpenEar || openEarCancels(subject)) {
            return;
        }
        boolean unknown = subject.cells().stream()
                .anyMatch(c -> !Surroundings.declares(c, SharedBy.READING)
                        && c.openEar().size() < 2);
        if (unknown) {
            boolean differences = subject.cells().stream().allMatch(c -> c.values() != Reading.Values.LEVELS);
            reasons.add(Remark.of(differences ? "no-reading-uncertainty" : "one-open-ear-take"));
        }
    }

    /** Then its error is in every unit alike, and their scatter does not show it; on two sides the same one cancels. */
    private boolean isHeldAgainstOneOpenEar(Subject subject) {
        if (subject.cells().stream().map(Cell::openEar).distinct().count() == 1) {
            return rule.between().isEmpty();
        }
        return rule.between().isPresent()
                && subject.repeats().stream()
                        .filter(r -> r.kind() != Repeats.Kind.INSERTIONS)
                        .anyMatch(r -> sharesAnOpenEar(subject, r));
    }

    private static boolean sharesAnOpenEar(Subject subject, Repeats repeats) {
        return subject.cells().stream()
                .flatMap(cell -> cell.openEar().stream())
                .distinct()
                .anyMatch(open ->
                        repeats.members().stream().allMatch(m -> m.readings().contains(open)));
    }

    private boolean openEarCancels(Subject subject) {
        List<Cell> cells = subject.cells();
        return rule.between().isPresent()
                && cells.size() == 2
                && subject.repeats().size() == 1
                && subject.repeats().get(0).count() >= 2
                && cells.get(0).openEar().equals(cells.get(1).openEar())
                && cells.get(0).values() == Reading.Values.LEVELS;
    }

    private void population(Subject subject, List<Remark> reasons) {
        one(
                subject,
                reasons,
                rule.ears().filter(Population::isBeyondTheMeasured).isPresent(),
                SharedBy.EAR);
        one(
                subject,
                reasons,
                rule.units().filter(Population::isBeyondTheMeasured).isPresent(),
                SharedBy.UNIT);
    }

    private void one(Subject subject, List<Remark> reasons, boolean asked, SharedBy sharedBy) {
        Repeats.Kind kind = sharedBy == SharedBy.EAR ? Repeats.Kind.HEADS : Repeats.Kind.UNITS;
        boolean observed = subject.repeats().stream().anyMatch(r -> r.kind() == kind);
        boolean declared = subject.cells().stream().allMatch(c -> Surroundings.declares(c, sharedBy));
        if (asked && !observed && (!declared || Shared.of(rule).isPresent())) {
            String word = sharedBy == SharedBy.UNIT ? "unit" : ears(subject) > 1 ? "head" : "ear";
            reasons.add(Remark.of("one-" + word + (declared ? "" : "-undeclared")));
        }
    }

    /** How many ears: of two on one head neither tells anything of other people. */
    private static long ears(Subject subject) {
        return subject.cells().stream()
                .map(cell ->
                        cell.conditions().get("ear").or(() -> cell.conditions().get("side")))
                .distinct()
                .count();
    }

    /** The bands that a rule asks for and nobody can judge. */
    static Remark missing(List<Ready> missing) {
        TreeSet<Band> bands =
                missing.stream().flatMap(m -> m.missing().stream()).collect(Collectors.toCollection(TreeSet::new));
        List<Double> hz = bands.stream().map(Band::nominalHz).toList();
        return Remark.of("missing-bands").with("hz", hz);
    }
}
