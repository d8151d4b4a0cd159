package org.ellwand.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.ellwand.amount.Interval;
import org.ellwand.check.Finding;
import org.ellwand.claim.Rule;
import org.ellwand.claim.Statistic;
import org.ellwand.input.InputException;
import org.ellwand.measurement.Session;
import org.ellwand.quantity.CellQuantity;
import org.ellwand.quantity.Outcome;
import org.ellwand.quantity.Reach;
import org.ellwand.quantity.SpectralQuantity;
import org.ellwand.statistics.SeriesErrors;
import org.ellwand.words.Measure;
import org.ellwand.words.Remark;

/** Judges one rule about a quantity of cells: readings, points, decision, record. */
final class RuleJudge {
    /** So few draws of which nothing can be said change no verdict. */
    private static final double MOST_UNKNOWN = 0.001;

    private final AuditOptions options;
    private final String product;
    private final List<Session> sessions;
    private final double confidence;
    private final Doubts doubts;

    RuleJudge(AuditOptions options, String product, List<Session> sessions, double confidence, Doubts doubts) {
        this.doubts = doubts;
        this.options = options;
        this.product = product;
        this.sessions = sessions;
        this.confidence = confidence;
    }

    Judgement judge(Rule written, CellQuantity quantity) throws InputException {
        quantity.check(written);
        Rule rule = quantity.completed(written);
        Preparation preparation = new Preparation(rule, quantity, Subjects.of(rule, quantity, product, sessions));
        if (preparation.ready().isEmpty()) {
            Remark reason = tooSoft(rule, preparation.bare()).orElseGet(() -> nothing(preparation));
            return Judgements.untested(written, reason, Misnamed.notes(rule, product, sessions));
        }
        Work work = new Work(written, rule, quantity, preparation);
        if (work.tellsNothing()) {
            return Judgements.untested(written, Remark.of("part-beyond"), List.of());
        }
        Judgement judgement = work.judgement();
        return judgement.verdict() == Verdict.MARGINAL
                ? tooSoft(rule, preparation.ready())
                        .map(reason -> Judgements.untested(written, reason, judgement.remarks()))
                        .orElse(judgement)
                : judgement;
    }

    /** What no reading under these sounds can tell is untested, not marginal. */
    private static Optional<Remark> tooSoft(Rule rule, List<Ready> subjects) {
        return Revealing.concerns(rule.quantity()) ? Revealing.of(rule).reason(subjects) : Optional.empty();
    }

    private static Remark nothing(Preparation preparation) {
        return preparation.dropped().isEmpty()
                ? Remark.of("no-reading")
                : Remark.of("no-usable-reading").with("why", new TreeSet<>(preparation.dropped()));
    }

    private final class Work {
        private final Rule written;
        private final Rule rule;
        private final CellQuantity quantity;
        private final Interval limit;
        private final Statistic statistic;
        private final Preparation preparation;
        private final List<Ready> ready;
        private final Evaluation evaluation;
        private final Evaluation curves;
        /** Whether the curves of those cells alone are evaluated that keep them. */
        private final boolean fewCurves;

        private final Caps caps;
        private final boolean known;
        private final Doubts.Judged judged;
        private final List<Finding> touching;
        private List<Finding> causing = List.of();

        Work(Rule written, Rule rule, CellQuantity quantity, Preparation preparation) {
            this.written = written;
            this.rule = rule;
            this.quantity = quantity;
            this.preparation = preparation;
            limit = rule.limit();
            statistic = rule.statistic().orElseThrow();
            ready = preparation.ready();
            evaluation = Evaluation.of(preparation, rule, outcome(), options.trials());
            boolean asCurves = evaluation.outcome() != Outcome.CURVE
                    && !evaluation.isStaged()
                    && quantity instanceof SpectralQuantity;
            fewCurves = asCurves && ready.size() > Judgement.MANY_CELLS;
            curves = asCurves && !fewCurves
                    ? Evaluation.of(preparation, rule, Outcome.CURVE, options.trials())
                    : evaluation;
            caps = new Caps(rule, quantity.usesOpenEar(rule));
            known = ready.stream().map(Ready::subject).allMatch(this::isSpreadKnown);
            judged = new Doubts.Judged(rule, ready, signInPlace(), quantity.usesOpenEar(rule), confidence);
            touching = doubts.touching(judged);
        }

        /** How the quantity moves with the levels in place; 0 where it is no sum of curves. */
        private double signInPlace() {
            return quantity instanceof SpectralQuantity spectral ? Preparation.sign(spectral, rule) : 0;
        }

        /** Nothing tells the spread of a number of which neither a cause is declared nor a second one was measured. */
        private boolean isSpreadKnown(Subject subject) {
            return subject.cells().stream()
                    .noneMatch(c -> Surroundings.isUnknown(c.session())
                            || (!(quantity instanceof SpectralQuantity)
                                    && c.insertions().size() < 2
                                    && !subject.isPopulation()
                                    && Surroundings.causes(c.session(), c.movedBy())
                                            .isEmpty()));
        }

        /** Of numbers that are compared or averaged, one lies beyond its series, and nothing tells how far. */
        boolean tellsNothing() {
            return evaluation.points().all().stream().anyMatch(point -> Double.isNaN(point.value()));
        }

        private Outcome outcome() {
            return switch (statistic) {
                case MEAN -> Outcome.MEAN;
                case SLOPE -> Outcome.SLOPE;
                case OVERALL -> Outcome.OVERALL;
                case SPREAD -> Outcome.PAIRS;
                case EVERY_BAND, LOWEST, HIGHEST, MEDIAN -> Outcome.CURVE;
            };
        }

        Judgement judgement() {
            JointTail tail = new JointTail(evaluation.subjects(), options.trials());
            Decision decision = new Conclusion(statistic, limit, confidence, ready, evaluation, tail).decide();
            List<Remark> reasons = new ArrayList<>();
            Verdict verdict = decision.verdict();
            if (lacksBands()) {
                reasons.add(Caps.missing(ready));
            }
            reasons.addAll(lacking());
            beyondSeries(decision).ifPresent(reasons::add);
            ready.forEach(r -> caps.of(r.subject()).stream()
                    .filter(c -> !reasons.contains(c))
                    .forEach(reasons::add));
            if (!known) {
                reasons.clear();
                reasons.add(notStated(decision));
            }
            boolean capped = reasons.stream().anyMatch(r -> !r.key().equals("missing-bands"));
            if (capped) {
                verdict = Verdict.MARGINAL;
            }
            causing = Doubts.causing(touching, judged, decision.withVerdict(verdict));
            if (!causing.isEmpty()) {
                reasons.clear();
                Doubts.reason(causing, verdict).ifPresent(reasons::add);
                verdict = Verdict.MARGINAL;
            }
            if (verdict == Verdict.MARGINAL && reasons.isEmpty()) {
                reasons.add(settling(decision));
            }
            if (verdict != Verdict.MARGINAL) {
                reasons.clear();
            }
            return record(decision.withVerdict(verdict), reasons);
        }

        /** Nothing tells the spread: on which side the value lies is all that can be said. */
        private Remark notStated(Decision decision) {
            return Ends.notStated(value(decision), limit);
        }

        private Remark settling(Decision decision) {
            Estimates subject = evaluation.subjects().get(decision.point().subject());
            double square = 0;
            int at = decision.point().local();
            List<Factor> factors = subject.factors();
            for (int f : subject.effect.moving(at)) {
                boolean divides = switch (factors.get(f).sharedBy()) {
                    case INSERTION -> true;
                    case SESSION, READING, EAR, UNIT -> false;
                };
                double effect = subject.effect.at(at, f);
                square += divides ? effect * effect : 0;
            }
            for (Group group : subject.groups) {
                double scale = group.scatter(decision.point().local()).scale();
                square += group.key().startsWith("insertions") ? scale * scale : 0;
            }
            Subject of = ready.get(decision.point().subject()).subject();
            return new Settling(limit, confidence, evaluation.points().size())
                    .of(decision.point(), Math.sqrt(square), of.insertions());
        }

        private List<Remark> notes(Decision decision, List<Remark> reasons) {
            RuleNotes notes = new RuleNotes(rule, confidence, preparation, evaluation);
            notes.about(decision, quantity);
            Doubts.note(touching, causing).ifPresent(notes::add);
            // Of a firm verdict no reason tells what was missing.
            if (reasons.isEmpty() && lacksBands()) {
                notes.add(Caps.missing(ready));
            }
            notes.aboutMembers(known);
            return notes.all();
        }

        private Judgement record(Decision decision, List<Remark> reasons) {
            Point point = PointRecord.of(decision.point(), limit, known);
            double correction = Extremes.isExtreme(statistic)
                    ? Extremes.correction(
                            statistic, curves.subjects().get(decision.point().subject()), options.trials())
                    : drawn(decision);
            return new Judgement(
                    written,
                    RuleText.of(written),
                    decision.verdict(),
                    known ? OptionalDouble.of(decision.probability()) : OptionalDouble.empty(),
                    OptionalDouble.of(value(decision)),
                    known ? OptionalDouble.of(correction) : OptionalDouble.empty(),
                    Optional.of(point),
                    point.standardUncertainty(),
                    point.lower(),
                    point.upper(),
                    reasons,
                    cells(),
                    notes(decision, reasons));
        }

        private double drawn(Decision decision) {
            return evaluation
                    .drawn()
                    .get(decision.point().subject())
                    .get(decision.point().local());
        }

        private double value(Decision decision) {
            return Extremes.isExtreme(statistic)
                    ? Extremes.of(
                            statistic, curves.subjects().get(decision.point().subject()).value)
                    : decision.point().value();
        }

        private List<CellResult> cells() {
            if (ready.size() <= Judgement.MANY_CELLS) {
                return IntStream.range(0, ready.size())
                        .mapToObj(this::withCurves)
                        .toList();
            }
            // Each looks at itself alone, so that many may be written side by side; they stay in order.
            List<CellResult> cells = new ArrayList<>(IntStream.range(0, ready.size())
                    .parallel()
                    .mapToObj(s -> record(s).brief(s, evaluation, curves))
                    .toList());
            IntStream.range(0, cells.size())
                    .boxed()
                    .sorted(Comparator.comparing(cells::get, Judgement.order(limit)))
                    .limit(Judgement.CURVES_KEPT)
                    .forEach(s -> cells.set(s, withCurves(s)));
            return cells;
        }

        private CellResult withCurves(int s) {
            return fewCurves
                    ? record(s).of(s, evaluation, curves, Evaluation.curve(preparation, rule, s, options.trials()))
                    : record(s).of(s, evaluation, curves);
        }

        private CellRecord record(int subject) {
            return new CellRecord(rule, ready.get(subject), preparation, known, evaluation.isStaged());
        }

        /** What a sum lacks of its members. */
        private Set<Remark> lacking() {
            TreeSet<Remark> lacking = new TreeSet<>();
            ready.forEach(r ->
                    r.subject().cells().forEach(c -> quantity.lacking(c, rule).ifPresent(lacking::add)));
            return lacking;
        }

        /** What lies beyond a series lies beyond its end, and nothing tells how far. */
        private Optional<Remark> beyondSeries(Decision decision) {
            Points.One point = decision.point();
            Reach reach = evaluation.reaches().get(point.subject());
            boolean open = switch (point.bound()) {
                case MEASURED -> point.errors() instanceof SeriesErrors errors && errors.unknown() > MOST_UNKNOWN;
                case AT_LEAST ->
                    limit.lower() > reach.highest() || (limit.hasUpper() && limit.upper() > reach.highest());
                case AT_MOST -> limit.upper() < reach.lowest() || (limit.hasLower() && limit.lower() < reach.lowest());
            };
            Measure end = new Measure(point.value(), limit.unit().symbol());
            return open ? Optional.of(Remark.of("beyond-series").with("value", end)) : Optional.empty();
        }

        private boolean lacksBands() {
            return ready.stream().anyMatch(r -> !r.missing().isEmpty());
        }
    }
}
