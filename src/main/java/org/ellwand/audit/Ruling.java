package org.ellwand.audit;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import org.ellwand.acoustics.Bound;
import org.ellwand.amount.Interval;
import org.ellwand.check.Finding;
import org.ellwand.claim.Rule;
import org.ellwand.measurement.Conditions;
import org.ellwand.pairing.Cell;
import org.ellwand.quantity.CurvePart;
import org.ellwand.quantity.Reach;
import org.ellwand.quantity.SpectralQuantity;
import org.ellwand.statistics.Errors;
import org.ellwand.statistics.MixedErrors;
import org.ellwand.statistics.Scatter;
import org.ellwand.statistics.SeriesErrors;
import org.ellwand.words.Measure;
import org.ellwand.words.Remark;

/** Decides a rule of which the numbers are worked out: the verdict, what holds it back, and what would settle it. */
final class Ruling {
    /** So few draws of which nothing can be said change no verdict. */
    private static final double MOST_UNKNOWN = 0.001;

    private static final String MISSING_BANDS = "missing-bands";

    private final Worked worked;
    private final double confidence;
    private final Caps caps;
    private final Doubts.Judged judged;
    private final List<Finding> touching;

    Ruling(Worked worked, double confidence, Doubts doubts) {
        this.worked = worked;
        this.confidence = confidence;
        Rule rule = worked.rule();
        boolean usesOpenEar = worked.quantity().usesOpenEar(rule);
        caps = new Caps(rule, usesOpenEar);
        judged = new Doubts.Judged(
                rule, worked.ready(), sign(CurvePart::inPlace), sign(CurvePart::quiet), usesOpenEar, confidence);
        touching = doubts.touching(judged);
    }

    /** How the quantity moves with the levels of some readings; 0 where it is no sum of curves. */
    private double sign(ToDoubleFunction<CurvePart> of) {
        return worked.quantity() instanceof SpectralQuantity spectral
                ? Preparation.sign(spectral, worked.rule(), of)
                : 0;
    }

    Judgement judgement() {
        Decision decision = conclusion().decide();
        List<Remark> holdingBack = holdingBack(decision);
        boolean capped = holdingBack.stream().anyMatch(r -> !r.key().equals(MISSING_BANDS));
        Verdict undoubted = capped ? Verdict.MARGINAL : decision.verdict();
        List<Finding> causing = Doubts.causing(touching, judged, decision.withVerdict(undoubted));
        Decision ruled = decision.withVerdict(causing.isEmpty() ? undoubted : Verdict.MARGINAL);
        List<Remark> reasons = causing.isEmpty()
                ? reasons(ruled, holdingBack)
                : Doubts.reason(causing, undoubted).stream().toList();
        return new JudgementRecord(worked, confidence).of(ruled, reasons, Doubts.note(touching, causing));
    }

    private Conclusion conclusion() {
        JointTail tail = new JointTail(worked.evaluation().subjects(), worked.trials());
        return new Conclusion(
                worked.statistic(), worked.limit(), confidence, worked.ready(), worked.evaluation(), tail);
    }

    /** What keeps a verdict from being firm, whatever the numbers; bands that are missing only say why a marginal one is. */
    private List<Remark> holdingBack(Decision decision) {
        if (!worked.known()) {
            // Nothing tells the spread: on which side the value lies is all that can be said.
            return List.of(Ends.notStated(worked.value(decision), worked.limit()));
        }
        Set<Remark> reasons = new LinkedHashSet<>();
        if (worked.lacksBands()) {
            reasons.add(Caps.missing(worked.ready()));
        }
        if (decision.verdict() == Verdict.PASS) {
            reasons.addAll(worked.unusable());
            reasons.addAll(Misnamed.notJudged(worked.rule(), judgedConditions()));
        }
        reasons.addAll(lacking());
        beyondSeries(decision).ifPresent(reasons::add);
        worked.ready().forEach(ready -> reasons.addAll(caps.of(ready.subject())));
        return List.copyOf(reasons);
    }

    private List<Conditions> judgedConditions() {
        return worked.ready().stream()
                .flatMap(ready -> ready.subject().cells().stream())
                .map(Cell::conditions)
                .toList();
    }

    /** Why a marginal verdict is no firmer; of a firm one nothing. */
    private List<Remark> reasons(Decision decision, List<Remark> holdingBack) {
        if (decision.verdict() != Verdict.MARGINAL) {
            return List.of();
        }
        return holdingBack.isEmpty() ? List.of(open(decision)) : holdingBack;
    }

    /** What is only bounded is so however often the product is put in; what did not scatter may scatter the next time. */
    private Remark open(Decision decision) {
        List<Double> bounded = conclusion().onlyBounded();
        if (!bounded.isEmpty()) {
            return Remark.of("only-bounds").with("hz", bounded);
        }
        List<Double> byChance = conclusion().certainByChance();
        return byChance.isEmpty() ? settling(decision) : Remark.of("no-scatter").with("hz", byChance);
    }

    /** How many insertions would settle it, by what of its error they divide; where their scatter is seen, by the t of so many. */
    private Remark settling(Decision decision) {
        Points.One point = decision.point();
        Estimates subject = worked.subject(decision);
        double declared = insertionSquare(subject, point.local());
        Settling settling = new Settling(
                worked.limit(), confidence, worked.evaluation().points().size());
        int insertions = worked.ready().get(point.subject()).subject().insertions();
        boolean seen = subject.groups.stream()
                .anyMatch(group ->
                        isOfInsertions(group) && group.scatter(point.local()).scale() > 0);
        return seen
                ? settling.of(point, insertions, true, n -> ofMore(subject, point.local(), declared, insertions, n))
                : settling.of(point, Math.sqrt(declared), insertions);
    }

    private static double insertionSquare(Estimates subject, int at) {
        List<Factor> factors = subject.factors();
        double square = 0;
        for (int f : subject.effect.moving(at)) {
            boolean divides = switch (factors.get(f).sharedBy()) {
                case INSERTION -> true;
                case SESSION, READING, EAR, UNIT -> false;
            };
            double effect = subject.effect.at(at, f);
            square += divides ? effect * effect : 0;
        }
        return square;
    }

    private static boolean isOfInsertions(Group group) {
        return group.key().startsWith("insertions");
    }

    /** The errors that a number would have of so many insertions, were those to scatter as the ones that are there. */
    private static Errors ofMore(Estimates subject, int at, double declaredSquare, int insertions, int more) {
        double known = subject.normalDeviation(at);
        double fewer = declaredSquare * (1 - (double) insertions / more);
        List<Scatter> scatters = subject.groups.stream()
                .map(group -> isOfInsertions(group) ? ofMore(group.scatter(at), more) : group.scatter(at))
                .filter(scatter -> scatter.scale() > 0)
                .toList();
        return new MixedErrors(Math.sqrt(Math.max(0, known * known - fewer)), scatters);
    }

    private static Scatter ofMore(Scatter seen, int more) {
        return new Scatter(more - 1, seen.scale() * Math.sqrt((seen.degreesOfFreedom() + 1.0) / more));
    }

    /** What a sum lacks of its members. */
    private Set<Remark> lacking() {
        TreeSet<Remark> lacking = new TreeSet<>();
        worked.ready()
                .forEach(r -> r.subject()
                        .cells()
                        .forEach(
                                c -> worked.quantity().lacking(c, worked.rule()).ifPresent(lacking::add)));
        return lacking;
    }

    /** What lies beyond a series lies beyond its end, and nothing tells how far. */
    private Optional<Remark> beyondSeries(Decision decision) {
        Points.One point = decision.point();
        Interval limit = worked.limit();
        Reach reach = worked.evaluation().reaches().get(point.subject());
        boolean open = switch (point.bound()) {
            case MEASURED -> false;
            case AT_LEAST -> limit.lower() > reach.highest() || (limit.hasUpper() && limit.upper() > reach.highest());
            case AT_MOST -> limit.upper() < reach.lowest() || (limit.hasLower() && limit.lower() < reach.lowest());
        };
        if (point.bound() == Bound.MEASURED && isOpen(decision)) {
            return Optional.of(Remark.of("series-open"));
        }
        Measure end = new Measure(point.value(), limit.unit().symbol());
        return open ? Optional.of(Remark.of("beyond-series").with("value", end)) : Optional.empty();
    }

    /** Draws of which nothing can be said count for no side: a pass bears them, a fail only where it is one even if they held. */
    private boolean isOpen(Decision decision) {
        double unknown = decision.point().errors() instanceof SeriesErrors errors ? errors.unknown() : 0;
        return unknown > MOST_UNKNOWN
                && decision.verdict() != Verdict.PASS
                && decision.probability() + unknown > 1 - confidence;
    }
}
