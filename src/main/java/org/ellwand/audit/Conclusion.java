package org.ellwand.audit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ellwand.acoustics.Bound;
import org.ellwand.amount.Interval;
import org.ellwand.claim.Statistic;

/**
 * From points to a decision about the claim: which statement the rule makes of its points, cell by cell or together, and
 * what missing bands leave of it.
 */
final class Conclusion {
    private static final double NO_SCATTER = 1e-9;

    private final Statistic statistic;
    private final Interval limit;
    private final double confidence;
    private final List<Ready> ready;
    private final Evaluation evaluation;
    private final JointTail jointTail;

    Conclusion(
            Statistic statistic,
            Interval limit,
            double confidence,
            List<Ready> ready,
            Evaluation evaluation,
            JointTail jointTail) {
        this.statistic = statistic;
        this.limit = limit;
        this.confidence = confidence;
        this.ready = ready;
        this.evaluation = evaluation;
        this.jointTail = jointTail;
    }

    Decision decide() {
        return switch (statistic) {
            case MEAN, SLOPE, OVERALL ->
                capped(statement(limit).every(evaluation.points().all()), anyMissing(), anyMissing());
            case EVERY_BAND -> every(limit);
            case LOWEST -> both(this::every, this::some);
            case HIGHEST -> both(this::some, this::every);
            case SPREAD -> spread();
            case MEDIAN -> both(l -> half(l, true), l -> half(l, false));
        };
    }

    private Statement statement(Interval ends) {
        return new Statement(ends, confidence, jointTail);
    }

    private Decision spread() {
        // A spread is never negative: a lower end at or below zero says nothing.
        boolean lower = limit.hasLower() && limit.lower() > 0;
        Interval upper =
                new Interval(-limit.upper(), limit.upper(), limit.upperOpen(), limit.upperOpen(), limit.unit());
        if (!lower) {
            return every(upper);
        }
        Decision some = some(Interval.atLeast(limit.lower(), limit.unit()));
        return limit.hasUpper() ? both(some, every(upper)) : some;
    }

    /** A two-sided limit is two statements; a one-sided limit is one of them. */
    private Decision both(Function<Interval, Decision> lower, Function<Interval, Decision> upper) {
        Interval below = new Interval(limit.lower(), Double.POSITIVE_INFINITY, limit.lowerOpen(), false, limit.unit());
        Interval above = new Interval(Double.NEGATIVE_INFINITY, limit.upper(), false, limit.upperOpen(), limit.unit());
        if (!limit.hasUpper()) {
            return lower.apply(below);
        }
        return limit.hasLower() ? both(lower.apply(below), upper.apply(above)) : upper.apply(above);
    }

    /** Passes if both pass, fails if either fails. */
    private static Decision both(Decision one, Decision other) {
        Verdict verdict = one.verdict() == Verdict.FAIL || other.verdict() == Verdict.FAIL
                ? Verdict.FAIL
                : one.verdict() == Verdict.PASS && other.verdict() == Verdict.PASS ? Verdict.PASS : Verdict.MARGINAL;
        return one.worse(other).withVerdict(verdict);
    }

    private Decision every(Interval ends) {
        List<Points.One> usable = new ArrayList<>(usable(evaluation.points().all(), ends));
        usable.removeIf(point -> isCertainByChance(point) && !holds(point, ends));
        boolean missing = usable.size() < evaluation.points().size() || anyMissing();
        List<Points.One> judged = usable.isEmpty() ? evaluation.points().all() : usable;
        Decision decision = statement(ends).every(judged);
        return capped(decision, missing, usable.isEmpty());
    }

    private Decision some(Interval ends) {
        return eachSubject((s, share) -> {
            List<Points.One> all = evaluation.points().of(s);
            List<Points.One> usable = new ArrayList<>(usable(all, ends));
            usable.removeIf(point -> isCertainByChance(point) && holds(point, ends));
            boolean missing =
                    usable.size() < all.size() || !ready.get(s).missing().isEmpty();
            Decision decision = statement(ends).some(usable.isEmpty() ? all : usable, share);
            return capped(decision, usable.isEmpty(), missing);
        });
    }

    private Decision half(Interval ends, boolean lower) {
        return eachSubject((s, share) -> {
            List<Points.One> points = evaluation.points().of(s);
            int bands = points.size();
            int needed = lower ? bands / 2 + 1 : (bands + 1) / 2;
            boolean missing = !ready.get(s).missing().isEmpty();
            return capped(statement(ends).half(points, needed, share), missing, missing);
        });
    }

    /** Decides about one subject, given its share of the probability of a wrong fail. */
    private interface OfSubject {
        Decision decide(int subject, double shareOfError);
    }

    /** Must hold in every cell: a pass in each; a fail needs the error probability shared out. */
    private Decision eachSubject(OfSubject one) {
        int cells = ready.size();
        List<Decision> decisions = IntStream.range(0, cells)
                .mapToObj(s -> one.decide(s, 1.0 / cells))
                .toList();
        Decision least = decisions.stream().reduce(Decision::worse).orElseThrow();
        if (decisions.stream().anyMatch(d -> d.verdict() == Verdict.FAIL)) {
            return least.withVerdict(Verdict.FAIL);
        }
        boolean all = decisions.stream().allMatch(d -> d.verdict() == Verdict.PASS);
        return least.withVerdict(all ? Verdict.PASS : Verdict.MARGINAL);
    }

    /** A bound may support a claim, never refute it: without a firm yes it is no use. */
    private List<Points.One> usable(List<Points.One> points, Interval ends) {
        if (evaluation.isStaged()) {
            return points; // Their errors tell already what lies beyond.
        }
        List<Points.One> usable = new ArrayList<>();
        for (Points.One point : points) {
            boolean fits = point.bound() == Bound.AT_LEAST ? !ends.hasUpper() : !ends.hasLower();
            if (point.bound() == Bound.MEASURED || (fits && holds(point, ends))) {
                usable.add(point);
            }
        }
        return usable;
    }

    private boolean holds(Points.One point, Interval ends) {
        return Ends.of(point, ends).holds() >= confidence;
    }

    /**
     * Levels are written to so many digits, and repeats that agree in all of them scatter by nothing: of two insertions 0.5 dB apart
     * (standard deviation), read to 0.1 dB, one band in eighteen. Beside bands that scatter such a band alone decides nothing. Where
     * none scatters, it is no chance.
     */
    private boolean isCertainByChance(Points.One point) {
        return point.observed()
                && isExact(point)
                && evaluation.points().of(point.subject()).stream()
                        .anyMatch(other -> other.observed() && !isExact(other));
    }

    private static boolean isExact(Points.One point) {
        return point.errors().standardUncertainty() < NO_SCATTER;
    }

    /** Centres of the bands that would refute or prove the claim by themselves, had their repeats not agreed in all digits. */
    List<Double> certainByChance() {
        boolean lowest = statistic == Statistic.LOWEST;
        boolean highest = statistic == Statistic.HIGHEST || statistic == Statistic.SPREAD;
        boolean refuting =
                statistic == Statistic.EVERY_BAND || (lowest && limit.hasLower()) || (highest && limit.hasUpper());
        boolean proving = (lowest && limit.hasUpper()) || (highest && limit.hasLower());
        return centres(evaluation.points().all().stream()
                .filter(this::isCertainByChance)
                .filter(point -> holds(point, limit) ? proving : refuting));
    }

    private static List<Double> centres(Stream<Points.One> points) {
        return points.flatMap(point -> point.hz().stream().boxed())
                .distinct()
                .sorted()
                .toList();
    }

    /** Centres of the bands of which no more is known than a bound, and that bound does not tell that the limit holds. */
    List<Double> onlyBounded() {
        List<Points.One> points = evaluation.points().all();
        Set<Points.One> usable = new HashSet<>(usable(points, limit));
        return centres(points.stream().filter(point -> !usable.contains(point)));
    }

    private boolean anyMissing() {
        return ready.stream().anyMatch(r -> !r.missing().isEmpty());
    }

    private Decision capped(Decision decision, boolean noPass, boolean noFail) {
        boolean firm = (decision.verdict() == Verdict.PASS && noPass) || (decision.verdict() == Verdict.FAIL && noFail);
        return firm ? decision.withVerdict(Verdict.MARGINAL) : decision;
    }
}
