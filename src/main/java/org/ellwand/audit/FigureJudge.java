package org.ellwand.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import org.ellwand.acoustics.Bound;
import org.ellwand.amount.Dimension;
import org.ellwand.amount.Unit;
import org.ellwand.check.Finding;
import org.ellwand.claim.Population;
import org.ellwand.claim.Rule;
import org.ellwand.input.InputException;
import org.ellwand.measurement.Figure;
import org.ellwand.measurement.Session;
import org.ellwand.pairing.FigureSelection;
import org.ellwand.statistics.Errors;
import org.ellwand.statistics.NormalErrors;
import org.ellwand.words.Remark;

/**
 * Judges a rule about a single figure: value and standard uncertainty as declared; several figures of one condition are
 * repeats and averaged. A ratio is that of two normal numbers.
 */
final class FigureJudge {
    private final String product;
    private final List<Session> sessions;
    private final double confidence;
    private final AuditOptions options;
    private final Doubts doubts;

    FigureJudge(AuditOptions options, String product, List<Session> sessions, double confidence, Doubts doubts) {
        this.doubts = doubts;
        this.options = options;
        this.product = product;
        this.sessions = sessions;
        this.confidence = confidence;
    }

    Judgement judge(Rule rule) throws InputException {
        FigureCells made = FigureCells.of(rule, new FigureSelection(product, sessions));
        List<FigureCell> cells = made.cells();
        if (cells.isEmpty()) {
            Remark reason = made.dropped().isEmpty()
                    ? Remark.of("no-reading")
                    : Remark.of("no-usable-reading").with("why", made.dropped());
            return Judgements.untested(rule, reason, Misnamed.notes(rule, product, sessions));
        }
        refuseUnit(rule, cells);
        boolean known = cells.stream().allMatch(c -> c.errors().isPresent());
        List<Points.One> points = new ArrayList<>();
        for (int i = 0; i < cells.size(); i++) {
            points.add(point(i, cells.get(i)));
        }
        Decision decision =
                new Statement(rule.limit(), confidence, new JointTail(List.of(), options.trials())).every(points);
        Judgement judgement = known ? doubted(record(rule, cells, points, decision)) : unstated(rule, cells, points);
        return judgement.noted(made.notes()).noted(Judgements.notUsed(made.dropped()));
    }

    /** A verdict that a fault of its figures could have caused is not firm. */
    private Judgement doubted(Judgement judgement) throws InputException {
        Rule rule = judgement.rule();
        List<Figure> figures = new FigureSelection(product, sessions).all(rule);
        List<Finding> causing = judgement.verdict() == Verdict.MARGINAL ? List.of() : doubts.of(figures, rule);
        return Doubts.reason(causing, judgement.verdict())
                .map(reason -> judgement.with(Verdict.MARGINAL, reason))
                .orElse(judgement);
    }

    private static void refuseUnit(Rule rule, List<FigureCell> cells) throws InputException {
        Dimension wanted = rule.limit().unit().dimension();
        Optional<FigureCell> other =
                cells.stream().filter(c -> c.unit().dimension() != wanted).findFirst();
        if (other.isPresent()) {
            throw new InputException(
                    rule.place(),
                    "the limit is in '" + symbol(rule.limit().unit()) + "' and the figure in '"
                            + symbol(other.get().unit()) + "'");
        }
    }

    private static String symbol(Unit unit) {
        return unit == Unit.NONE ? "plain numbers" : unit.symbol();
    }

    private static Points.One point(int subject, FigureCell cell) {
        Errors errors = cell.errors().orElse(new NormalErrors(0));
        return new Points.One(
                subject,
                0,
                1,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                cell.value(),
                errors,
                true,
                Bound.MEASURED);
    }

    private Judgement record(Rule rule, List<FigureCell> cells, List<Points.One> points, Decision decision) {
        List<Remark> reasons = new ArrayList<>();
        Verdict verdict = decision.verdict();
        cells.forEach(c -> c.caps().stream().filter(r -> !reasons.contains(r)).forEach(reasons::add));
        if (!reasons.isEmpty()) {
            verdict = Verdict.MARGINAL;
        } else if (verdict == Verdict.MARGINAL) {
            reasons.add(new Settling(rule.limit(), confidence, points.size()).of(decision.point(), 0, 1));
        }
        Point point = PointRecord.of(decision.point(), rule.limit(), true);
        return new Judgement(
                rule,
                RuleText.of(rule),
                verdict,
                OptionalDouble.of(decision.probability()),
                OptionalDouble.of(decision.point().value()),
                OptionalDouble.of(0),
                Optional.of(point),
                point.standardUncertainty(),
                point.lower(),
                point.upper(),
                reasons,
                results(rule, cells, points, true),
                notes(rule, cells, points, decision.point()));
    }

    private List<Remark> notes(Rule rule, List<FigureCell> cells, List<Points.One> points, Points.One point) {
        if (point.errors() instanceof ShareErrors share) {
            return List.of(new Settling(rule.limit(), confidence).said(share));
        }
        List<Remark> notes = new ArrayList<>(notes(rule, cells));
        if (!notes.isEmpty()) {
            Lot lot = new Lot(rule.limit(), confidence);
            for (int i = 0; i < cells.size(); i++) {
                lot.add(
                        cells.get(i).conditions().get("unit").orElse(""),
                        points.get(i),
                        Ends.margin(points.get(i), rule.limit()));
            }
            notes.addAll(lot.remarks());
        }
        return notes;
    }

    private static Judgement unstated(Rule rule, List<FigureCell> cells, List<Points.One> points) {
        Points.One worst = points.stream()
                .min(Comparator.comparingDouble(p -> Ends.margin(p, rule.limit())))
                .orElseThrow();
        Remark reason = Ends.notStated(worst.value(), rule.limit());
        return new Judgement(
                rule,
                RuleText.of(rule),
                Verdict.MARGINAL,
                OptionalDouble.empty(),
                OptionalDouble.of(worst.value()),
                OptionalDouble.empty(),
                Optional.of(PointRecord.of(worst, rule.limit(), false)),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                List.of(reason),
                results(rule, cells, points, false),
                notes(rule, cells));
    }

    private static List<CellResult> results(Rule rule, List<FigureCell> cells, List<Points.One> points, boolean known) {
        List<CellResult> results = new ArrayList<>();
        for (int i = 0; i < cells.size(); i++) {
            Point point = PointRecord.of(points.get(i), rule.limit(), known);
            results.add(new CellResult(
                    cells.get(i).conditions(),
                    cells.get(i).count(),
                    cells.get(i).value(),
                    Bound.MEASURED,
                    point.standardUncertainty(),
                    point.probability(),
                    List.of(),
                    List.of(),
                    List.of(),
                    List.of(),
                    known ? cells.get(i).contributions() : List.of()));
        }
        return results;
    }

    private static List<Remark> notes(Rule rule, List<FigureCell> cells) {
        if (rule.units().filter(Population.Each.class::isInstance).isEmpty()) {
            return List.of();
        }
        TreeSet<String> units = new TreeSet<>();
        cells.forEach(c -> units.add(c.conditions().get("unit").orElse("(unit)")));
        return List.of(Remark.of("units-not-product").with("names", units));
    }
}
