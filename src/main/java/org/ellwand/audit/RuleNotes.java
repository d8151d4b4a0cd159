package org.ellwand.audit;

import java.util.List;
import java.util.TreeSet;
import org.ellwand.claim.Population;
import org.ellwand.claim.Rule;
import org.ellwand.measurement.Cause;
import org.ellwand.pairing.Cell;
import org.ellwand.quantity.CellQuantity;
import org.ellwand.words.Remark;

/** What a reader must know of a rule that was judged, each once and in order. */
final class RuleNotes {
    /** More names than these nobody reads in a sentence. */
    private static final int MOST_NAMED = 30;

    private final Rule rule;
    private final double confidence;
    private final List<Ready> ready;
    private final Preparation preparation;
    private final Evaluation evaluation;
    private final TreeSet<Remark> notes;

    RuleNotes(Rule rule, double confidence, Preparation preparation, Evaluation evaluation) {
        this.rule = rule;
        this.confidence = confidence;
        this.ready = preparation.ready();
        this.preparation = preparation;
        this.evaluation = evaluation;
        notes = new TreeSet<>(preparation.notes());
    }

    void add(Remark note) {
        notes.add(note);
    }

    List<Remark> all() {
        return List.copyOf(notes);
    }

    /** About the readings and how they were taken. */
    void about(Decision decision, CellQuantity quantity) {
        if (decision.point().errors() instanceof ShareErrors share) {
            notes.add(new Settling(rule.limit(), confidence).said(share));
        }
        for (Ready each : ready) {
            each.subject().cells().forEach(c -> notes.addAll(c.notes()));
            notes.addAll(quantity.notes(each.subject().cells(), rule));
            each.subject().cells().forEach(c -> notes.addAll(zeros(c)));
        }
        evaluation.subjects().forEach(e -> notes.addAll(e.notes));
        notes.addAll(Judgements.notUsed(preparation.dropped()));
    }

    /**
     * About the ears and units that were measured each.
     *
     * @param known whether anything tells the spread
     */
    void aboutMembers(boolean known) {
        if (rule.ears().filter(Population.Each.class::isInstance).isPresent()) {
            notes.add(Remark.of("ears-not-people").with("names", distinct("ear")));
        }
        if (rule.units().filter(Population.Each.class::isInstance).isPresent()) {
            notes.add(Remark.of("units-not-product").with("names", distinct("unit")));
            notes.addAll(lot(known));
        }
    }

    /** Of units that were measured each. */
    private List<Remark> lot(boolean known) {
        Lot lot = new Lot(rule.limit(), confidence);
        for (int s = 0; known && s < ready.size(); s++) {
            String unit = ready.get(s).subject().conditions().get("unit").orElse("");
            evaluation.points().of(s).forEach(p -> lot.add(unit, p, Ends.margin(p, rule.limit())));
        }
        return lot.remarks();
    }

    private static String named(String value, String condition) {
        return value.isEmpty() ? "(" + condition + ")" : value;
    }

    private Object distinct(String condition) {
        TreeSet<String> values = new TreeSet<>();
        ready.forEach(r -> r.subject().cells().forEach(c -> values.add(named(c.part(condition), condition))));
        return values.size() > MOST_NAMED
                ? Remark.of("many-names")
                        .with("count", values.size())
                        .with("first", values.first())
                        .with("last", values.last())
                : List.copyOf(values);
    }

    private static List<Remark> zeros(Cell cell) {
        return Surroundings.causes(cell.session(), cell.movedBy()).stream()
                .filter(Cause::isZero)
                .map(c -> Remark.of("declared-zero")
                        .with("session", cell.session().id())
                        .with("cause", c.name()))
                .toList();
    }
}
