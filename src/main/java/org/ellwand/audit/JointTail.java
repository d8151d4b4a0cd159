package org.ellwand.audit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.ellwand.amount.Interval;

/**
 * How probable it is, by chance alone, that the worst of several points looks at least as bad as a threshold: every
 * point sits on its nearest end, and the jointly drawn errors decide (single-step minimum-p, both ends counted).
 *
 * <p>The simulation is spared where the simple bounds settle the decision: the joint probability is at least the largest
 * and at most the sum of what each point alone would give, both ends counted. Where a point uses observed scatter, the larger of both is asked for, which
 * is the upper bound.
 */
final class JointTail {
    private static final int BLOCK = 1000;
    /** So many standard errors away from what decides, chance would need a million runs to mislead. */
    private static final double CLEAR = 5;

    /** Of more subjects than these, so many are drawn first: all together look as bad no less often than they do. */
    private static final int SOME = 200;

    private final List<Estimates> subjects;
    private final int trials;

    JointTail(List<Estimates> subjects, int trials) {
        this.subjects = subjects;
        this.trials = trials;
    }

    /**
     * The joint probability, or a bound of it that lies on the same side of {@code decisive}.
     *
     * @param smallest the smallest probability observed among the points
     * @param decisive 1 − confidence
     */
    double probability(List<Points.One> points, Interval limit, double smallest, double decisive) {
        if (smallest == 0) {
            return 0;
        }
        if (points.stream().anyMatch(p -> p.errors() instanceof ShareErrors)) {
            return Math.min(1, points.size() * smallest);
        }
        Thresholds thresholds = new Thresholds(points, limit, smallest);
        double bound = Math.min(1, thresholds.sum());
        boolean observed = points.stream().anyMatch(Points.One::observed);
        if (points.size() == 1 || observed || bound <= decisive) {
            return bound;
        }
        double least = thresholds.largest();
        return least > decisive ? least : simulate(points, limit, smallest, decisive);
    }

    /** Stops early where the share so far lies clearly on one side of what decides (JCGM 101:2008, 7.9, in spirit). */
    double simulate(List<Points.One> points, Interval limit, double smallest, double decisive) {
        if (subjects.size() > SOME) {
            List<Points.One> some =
                    points.stream().filter(p -> p.subject() < SOME).toList();
            Share bound = share(bySubject(some, limit, smallest), decisive);
            if (bound.clear() && bound.bad() > decisive) {
                return bound.bad();
            }
        }
        return share(bySubject(points, limit, smallest), decisive).bad();
    }

    /**
     * A share of trials.
     *
     * @param clear whether it lies clearly on one side of what decides
     */
    private record Share(double bad, boolean clear) {}

    private List<OfSubject> bySubject(List<Points.One> points, Interval limit, double smallest) {
        Map<Integer, List<Points.One>> grouped = new TreeMap<>();
        points.forEach(point -> grouped.computeIfAbsent(point.subject(), s -> new ArrayList<>(1))
                .add(point));
        double[] scratch = new double[BLOCK];
        List<OfSubject> all = new ArrayList<>(grouped.size());
        grouped.forEach((subject, own) -> all.add(new OfSubject(
                new Draws(subjects.get(subject), BLOCK, scratch),
                subjects.get(subject).size(),
                new Thresholds(own, limit, smallest))));
        return all;
    }

    /** The points of one subject, drawn together; its draws go on from block to block. */
    private record OfSubject(Draws draws, int size, Thresholds thresholds) {}

    /** The share of trials in which any point of some subjects looks as bad; of all subjects no less. */
    private Share share(List<OfSubject> some, double decisive) {
        int largest = some.stream().mapToInt(OfSubject::size).max().orElse(0);
        double[][] scratch = new double[largest][BLOCK];
        int bad = 0;
        for (int start = 0; start < trials; start += BLOCK) {
            int count = Math.min(BLOCK, trials - start);
            boolean[] beyond = new boolean[count];
            for (OfSubject one : some) {
                double[][] errors = Arrays.copyOf(scratch, one.size());
                one.draws().next(errors, count);
                one.thresholds().markBeyond(errors, beyond);
            }
            for (boolean is : beyond) {
                bad += is ? 1 : 0;
            }
            if (isClear(bad, start + count, decisive)) {
                return new Share((double) bad / (start + count), true);
            }
        }
        return new Share((double) bad / trials, false);
    }

    private static boolean isClear(int bad, int of, double decisive) {
        double standardError = Math.sqrt(decisive * (1 - decisive) / of);
        return Math.abs((double) bad / of - decisive) > CLEAR * standardError;
    }

    /**
     * For each point on its nearest end: the errors at and beyond which it looks as bad as the threshold. Of lopsided errors
     * there may be fewer so far above the value than below it, where the limit lies; a point alone then looks as bad no
     * less often than its limit is met.
     */
    private static final class Thresholds {
        private final List<Points.One> points;
        private final double[] down;
        private final double[] up;

        Thresholds(List<Points.One> points, Interval limit, double smallest) {
            this.points = points;
            down = new double[points.size()];
            up = new double[points.size()];
            double width = limit.upper() - limit.lower();
            for (int i = 0; i < down.length; i++) {
                Points.One point = points.get(i);
                // An exact number looks bad by no chance at all.
                boolean exact = point.errors().standardUncertainty() == 0;
                double out = exact ? Double.POSITIVE_INFINITY : -point.errors().quantile(smallest);
                boolean lowerIsNearest = point.value() - limit.lower() <= limit.upper() - point.value();
                down[i] = -(out + (lowerIsNearest ? 0 : width));
                double above = exact || !limit.hasUpper() ? out : point.errors().quantile(1 - smallest);
                up[i] = Math.min(out, above) + (lowerIsNearest ? width : 0);
            }
        }

        /** How probable it is that one point alone looks as bad, at either end of a limit that may be narrow. */
        private double alone(int i) {
            Points.One point = points.get(i);
            return point.errors().atMost(down[i]) + point.errors().atLeast(up[i]);
        }

        /** No joint probability is above this. */
        double sum() {
            return IntStream.range(0, down.length).mapToDouble(this::alone).sum();
        }

        /** No joint probability is below this. */
        double largest() {
            return IntStream.range(0, down.length)
                    .mapToDouble(this::alone)
                    .max()
                    .orElse(0);
        }

        /** Marks the trials in which any point lies beyond; the errors are those of one subject, by point and trial. */
        void markBeyond(double[][] errors, boolean[] beyond) {
            for (int i = 0; i < down.length; i++) {
                Points.One point = points.get(i);
                double[] own = errors[point.local()];
                for (int t = 0; t < beyond.length; t++) {
                    double error = point.sign() * own[t];
                    beyond[t] |= error <= down[i] || error >= up[i];
                }
            }
        }
    }
}
