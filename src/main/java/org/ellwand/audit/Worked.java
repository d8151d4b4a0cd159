package org.ellwand.audit;

import java.util.List;
import java.util.Set;
import org.ellwand.amount.Interval;
import org.ellwand.claim.Rule;
import org.ellwand.claim.Statistic;
import org.ellwand.quantity.CellQuantity;
import org.ellwand.quantity.Outcome;
import org.ellwand.quantity.SpectralQuantity;
import org.ellwand.words.Remark;

/**
 * A rule with what its readings make of it: the numbers and their errors, before anything is decided.
 *
 * @param written the rule as it was written
 * @param rule the same, completed by its quantity
 * @param evaluation of the numbers that are held against the limit
 * @param curves of the numbers band by band; the same where those are held against the limit, or no curve is kept
 * @param fewCurves whether the curves of those cells alone are evaluated that keep them
 * @param known whether something tells the spread of every number
 * @param trials Monte Carlo trials
 */
record Worked(
        Rule written,
        Rule rule,
        CellQuantity quantity,
        Preparation preparation,
        Evaluation evaluation,
        Evaluation curves,
        boolean fewCurves,
        boolean known,
        int trials) {
    private static final Set<String> UNUSABLE = Set.of("near-background", "no-partner-bands", "one-band");

    static Worked of(Rule written, Rule rule, CellQuantity quantity, Preparation preparation, int trials) {
        Evaluation evaluation =
                Evaluation.of(preparation, rule, outcome(rule.statistic().orElseThrow()), trials);
        boolean asCurves =
                evaluation.outcome() != Outcome.CURVE && !evaluation.isStaged() && quantity instanceof SpectralQuantity;
        boolean fewCurves = asCurves && preparation.ready().size() > Judgement.MANY_CELLS;
        return new Worked(
                written,
                rule,
                quantity,
                preparation,
                evaluation,
                asCurves && !fewCurves ? Evaluation.of(preparation, rule, Outcome.CURVE, trials) : evaluation,
                fewCurves,
                preparation.ready().stream().map(Ready::subject).allMatch(s -> isSpreadKnown(s, quantity)),
                trials);
    }

    /** Nothing tells the spread of a number of which neither a cause is declared nor a second one was measured. */
    private static boolean isSpreadKnown(Subject subject, CellQuantity quantity) {
        return subject.cells().stream()
                .noneMatch(c -> Surroundings.isUnknown(c.session())
                        || (!(quantity instanceof SpectralQuantity)
                                && c.insertions().size() < 2
                                && !subject.isPopulation()
                                && Surroundings.causes(c.session(), c.movedBy()).isEmpty()));
    }

    private static Outcome outcome(Statistic statistic) {
        return switch (statistic) {
            case MEAN -> Outcome.MEAN;
            case SLOPE -> Outcome.SLOPE;
            case OVERALL -> Outcome.OVERALL;
            case SPREAD -> Outcome.PAIRS;
            case EVERY_BAND, LOWEST, HIGHEST, MEDIAN -> Outcome.CURVE;
        };
    }

    Interval limit() {
        return rule.limit();
    }

    Statistic statistic() {
        return rule.statistic().orElseThrow();
    }

    List<Ready> ready() {
        return preparation.ready();
    }

    /** The subject that a decision rests on, with its errors. */
    Estimates subject(Decision decision) {
        return evaluation.subjects().get(decision.point().subject());
    }

    /** The value that a reader is told, unit of the limit. */
    double value(Decision decision) {
        return Extremes.isExtreme(statistic())
                ? Extremes.of(
                        statistic(), curves.subjects().get(decision.point().subject()).value)
                : decision.point().value();
    }

    /** By how much errors move it on average, unit of the limit. */
    double correction(Decision decision) {
        Points.One point = decision.point();
        return Extremes.isExtreme(statistic())
                ? Extremes.correction(statistic(), curves.subjects().get(point.subject()), trials)
                : evaluation.drawn().get(point.subject()).get(point.local());
    }

    /** Of numbers that are compared or averaged, one lies beyond its series, and nothing tells how far. */
    boolean tellsNothing() {
        return evaluation.points().all().stream().anyMatch(point -> Double.isNaN(point.value()));
    }

    /** Whether a number is beyond all numbers: a ratio to nothing, or levels that no sum can hold. */
    boolean isBeyondNumbers() {
        return evaluation.points().all().stream().anyMatch(point -> Double.isInfinite(point.value()));
    }

    /** Why what the rule selects, and what was measured at its bands, has no band that serves: it may or may not keep to the limit. */
    List<Remark> unusable() {
        return preparation.dropped().stream()
                .filter(remark -> UNUSABLE.contains(remark.key()))
                .toList();
    }

    boolean lacksBands() {
        return ready().stream().anyMatch(r -> !r.missing().isEmpty());
    }
}
