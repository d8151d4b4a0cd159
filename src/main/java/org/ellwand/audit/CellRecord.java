package org.ellwand.audit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.ellwand.acoustics.Weighting;
import org.ellwand.amount.Dimension;
import org.ellwand.amount.Interval;
import org.ellwand.amount.Unit;
import org.ellwand.claim.Rule;
import org.ellwand.claim.Statistic;
import org.ellwand.measurement.NumberReading;
import org.ellwand.pairing.Cell;
import org.ellwand.quantity.CellFormula;
import org.ellwand.quantity.Computation;
import org.ellwand.quantity.Formula;
import org.ellwand.quantity.Outcome;

/** Writes down what was found in one cell. */
final class CellRecord {
    /** With it a fail is never asked for, which would need joint draws. */
    private static final double ANY_CONFIDENCE = 0;

    /** So many curves of repeats can still be told apart. */
    private static final int MOST_CURVES = 50;

    private final Rule rule;
    private final Ready ready;
    private final Preparation preparation;
    private final boolean known;
    private final boolean staged;

    CellRecord(Rule rule, Ready ready, Preparation preparation, boolean known, boolean staged) {
        this.rule = rule;
        this.ready = ready;
        this.preparation = preparation;
        this.known = known;
        this.staged = staged;
    }

    CellResult of(int subject, Evaluation evaluation, Evaluation curves) {
        return of(
                subject,
                evaluation,
                curves,
                curves.outcome() == Outcome.CURVE ? curves.points().of(subject) : List.of());
    }

    /** With the points of its curve, where those were evaluated by themselves. */
    CellResult of(int subject, Evaluation evaluation, Evaluation curves, List<Points.One> curve) {
        CellResult brief = brief(subject, evaluation, curves);
        return new CellResult(
                brief.conditions(),
                brief.insertions(),
                brief.value(),
                brief.bound(),
                brief.standardUncertainty(),
                brief.probability(),
                bands(curve),
                levels(false),
                levels(true),
                insertionCurves(),
                brief.contributions(),
                brief.series(),
                brief.settled());
    }

    /** Without curves. */
    CellResult brief(int subject, Evaluation evaluation, Evaluation curves) {
        Statistic statistic = rule.statistic().orElseThrow();
        Estimates estimates = evaluation.subjects().get(subject);
        Decision decision = deciding(evaluation.only(subject));
        Points.One deciding = decision.point();
        double value = Extremes.isExtreme(statistic)
                ? Extremes.of(statistic, curves.subjects().get(subject).value)
                : deciding.value();
        return new CellResult(
                ready.subject().conditions(),
                ready.subject().insertions(),
                value,
                deciding.bound(),
                maybe(deciding.errors().standardUncertainty()),
                maybe(decision.probability()),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                known ? Contributions.of(estimates, deciding.local()) : List.of(),
                series(estimates.computation),
                settled());
    }

    /** Times that were read off traces; none where the number is another. */
    private List<CellResult.Settled> settled() {
        Unit unit = rule.limit().unit();
        return ready.subject().cells().stream()
                .flatMap(cell -> cell.insertions().stream()
                        .flatMap(insertion -> insertion.takes().stream())
                        .filter(NumberReading.class::isInstance)
                        .map(NumberReading.class::cast)
                        .filter(take -> unit.dimension() == Dimension.TIME
                                && take.movedBy().equals(Optional.of(Unit.MILLISECOND)))
                        .map(take -> new CellResult.Settled(
                                cell.session().id(),
                                take.place().file(),
                                Unit.MILLISECOND.convert(take.number(), unit))))
                .toList();
    }

    /** Only where every level has one number: of a series in each band the judged numbers themselves are the curve. */
    private List<CellResult.AtLevel> series(Computation judged) {
        List<Double> levels = judged.seriesLevelsDb();
        double[] numbers = new double[judged.inner().size()];
        if (levels.isEmpty() || levels.size() != numbers.length) {
            return List.of();
        }
        judged.inner().compute(preparation.levelsDb(), numbers);
        return IntStream.range(0, numbers.length)
                .mapToObj(i -> new CellResult.AtLevel(levels.get(i), numbers[i]))
                .toList();
    }

    private OptionalDouble maybe(double value) {
        return known && Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
    }

    /** What the rule says of its points, said of this cell alone; how firmly is not asked. */
    private Decision deciding(Evaluation own) {
        return new Conclusion(
                        rule.statistic().orElseThrow(),
                        rule.limit(),
                        ANY_CONFIDENCE,
                        List.of(ready),
                        own,
                        new JointTail(List.of(), 0))
                .decide();
    }

    private List<Point> bands(List<Points.One> points) {
        Interval limit = rule.limit();
        return points.stream().map(p -> PointRecord.of(p, limit, known)).toList();
    }

    /** Mean levels of a single cell in place, or of its open ear; empty for pairs and means. */
    private List<Double> levels(boolean openEar) {
        List<Cell> cells = ready.subject().cells();
        if (cells.size() != 1 || ready.bands().isEmpty()) {
            return List.of();
        }
        return CellFormula.meanLevels(cells.get(0), openEar, ready.resolution(), ready.bands());
    }

    private List<List<Double>> insertionCurves() {
        if (ready.subject().repeats().size() != 1
                || ready.subject().repeats().get(0).count() > MOST_CURVES
                || ready.bands().isEmpty()
                || staged) {
            return List.of();
        }
        List<List<Double>> curves = new ArrayList<>();
        Formula.Task task = new Formula.Task(
                ready.resolution(),
                ready.bands(),
                Outcome.CURVE,
                rule.weighting().orElse(Weighting.Z));
        for (Repeats.Member member : ready.subject().repeats().get(0).members()) {
            double[] out = new double[ready.bands().size()];
            member.formula().computation(task, preparation.index()).compute(preparation.levelsDb(), out);
            curves.add(Arrays.stream(out).boxed().toList());
        }
        return curves;
    }
}
