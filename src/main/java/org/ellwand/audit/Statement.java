package org.ellwand.audit;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.ellwand.amount.Interval;

/**
 * What a claim says of its points, and when that may be called true or false at a confidence.
 *
 * <p>Every point: passes where each holds with the confidence; fails where the worst lies further beyond its limit than
 * the worst of so many points would by chance. Some point: the mirror image. Half of the points: B points, m of which must
 * hold; the shares of the error probability are those of Bonferroni.
 */
final class Statement {
    private final Interval limit;
    private final double error;
    private final JointTail jointTail;

    /**
     * @param limit where the points must lie
     * @param confidence of a firm verdict
     */
    Statement(Interval limit, double confidence, JointTail jointTail) {
        this.limit = limit;
        this.error = 1 - confidence;
        this.jointTail = jointTail;
    }

    /** A point with its probabilities. */
    private record Seen(Points.One point, Ends ends) {
        double holds() {
            return ends.holds();
        }
    }

    /** Least probable first. */
    private List<Seen> sorted(List<Points.One> points) {
        return points.stream()
                .map(p -> new Seen(p, Ends.of(p, limit)))
                .sorted(Comparator.comparingDouble(Seen::holds))
                .toList();
    }

    /** The least probable; where probabilities are too near 0 or 1 to be told apart, units of u beyond or within the limit tell. */
    private Seen least(List<Seen> seen) {
        return ofEquals(seen, seen.get(0)).min(byMargin()).orElse(seen.get(0));
    }

    /** The most probable, in the same way. */
    private Seen most(List<Seen> seen) {
        Seen last = seen.get(seen.size() - 1);
        return ofEquals(seen, last).max(byMargin()).orElse(last);
    }

    private static Stream<Seen> ofEquals(List<Seen> seen, Seen one) {
        return seen.stream().filter(s -> s.holds() == one.holds());
    }

    private Comparator<Seen> byMargin() {
        return Comparator.comparingDouble(s -> Ends.margin(s.point(), limit));
    }

    Decision every(List<Points.One> points) {
        List<Seen> seen = sorted(points);
        Seen least = least(seen);
        Verdict verdict = Verdict.MARGINAL;
        if (atLeastConfident(least.holds())) {
            verdict = Verdict.PASS;
        } else {
            double worst =
                    seen.stream().mapToDouble(s -> s.ends().worse()).min().orElse(1);
            if (jointTail.probability(points, limit, worst, error) <= error) {
                verdict = Verdict.FAIL;
            }
        }
        return new Decision(verdict, least.holds(), least.point());
    }

    /** For a one-sided limit. */
    Decision some(List<Points.One> points, double shareOfError) {
        List<Seen> seen = sorted(points);
        Seen most = most(seen);
        Verdict verdict = Verdict.MARGINAL;
        if (most.holds() <= error * shareOfError) {
            verdict = Verdict.FAIL;
        } else if (jointTail.probability(points, limit, 1 - most.holds(), error) <= error) {
            verdict = Verdict.PASS;
        }
        return new Decision(verdict, most.holds(), most.point());
    }

    /** For a one-sided limit: at least {@code needed} of the points must hold. */
    Decision half(List<Points.One> points, int needed, double shareOfError) {
        List<Seen> seen = sorted(points);
        int size = seen.size();
        Seen mth = seen.get(size - needed);
        Verdict verdict = Verdict.MARGINAL;
        if (1 - mth.holds() <= error / (size - needed + 1)) {
            verdict = Verdict.PASS;
        } else if (mth.holds() <= error * shareOfError / needed) {
            verdict = Verdict.FAIL;
        }
        return new Decision(verdict, mth.holds(), mth.point());
    }

    /** Written with the error probability, so that a rounding of 1 − confidence cannot refuse what it equals. */
    private boolean atLeastConfident(double probability) {
        return 1 - probability <= error;
    }
}
