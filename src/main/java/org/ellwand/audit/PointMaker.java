package org.ellwand.audit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Bound;
import org.ellwand.quantity.Computation;
import org.ellwand.quantity.Outcome;
import org.ellwand.statistics.ControlledErrors;
import org.ellwand.statistics.Errors;
import org.ellwand.statistics.MixedErrors;
import org.ellwand.statistics.NormalErrors;
import org.ellwand.statistics.Scatter;
import org.ellwand.statistics.SeriesErrors;

/** Gives every judged number of a subject the distribution of its errors: closed where it may be, else drawn. */
final class PointMaker {
    /** With the control variate so many draws give a probability to 0.002; held in the tests against the plain draws. */
    private static final int ENOUGH_WITH_CONTROL = 5_000;

    /** Root mean square distance of draws and control, in units of the control's, up to which few draws suffice. */
    private static final double STRAY = 0.05;

    private final double[][] levelsDb;
    private final int trials;
    private final boolean energies;
    private final Optional<Double> share;

    /**
     * @param levelsDb unperturbed levels of all readings
     * @param energies whether what is not linear are sums of energies (and not a ratio)
     * @param share of people or products that the limit is about; absent: the mean or each
     */
    PointMaker(double[][] levelsDb, int trials, boolean energies, Optional<Double> share) {
        this.levelsDb = levelsDb;
        this.trials = trials;
        this.energies = energies;
        this.share = share;
    }

    /**
     * What was made of one subject.
     *
     * @param drawn mean of the draws less the value, by point, before they were moved; 0 for linear numbers
     */
    record Made(List<Points.One> points, List<Double> drawn) {}

    /** The points of a subject whose judged numbers are found in inner ones: found anew in every draw. */
    Made staged(int subject, Computation judged, Estimates inner, Outcome outcome, Ready ready) {
        double[] value = new double[judged.size()];
        judged.outer(inner.value, value);
        double[][] found = found(judged, inner, innerErrors(inner));
        List<Points.One> points = new ArrayList<>();
        List<Label> labels = labels(outcome, ready.bands());
        for (int p = 0; p < value.length; p++) {
            double told = judged.reach().nearest(value[p]);
            double[] from = Arrays.stream(found[p]).map(x -> x - told).toArray();
            Errors distribution = isExact(from) ? new NormalErrors(0) : new SeriesErrors(from);
            points.add(new Points.One(
                    subject,
                    p,
                    1,
                    labels.get(p).hz(),
                    labels.get(p).lessHz(),
                    told,
                    distribution,
                    true,
                    beyond(value[p])));
        }
        return new Made(points, Collections.nCopies(value.length, 0.0));
    }

    private static Bound beyond(double value) {
        return Double.isFinite(value) ? Bound.MEASURED : value > 0 ? Bound.AT_LEAST : Bound.AT_MOST;
    }

    /**
     * Errors of the inner numbers, by number and trial. What is linear in them is drawn from its covariance; what hardly
     * strays from its linear part is drawn as that, moved to where the draws centre.
     */
    private double[][] innerErrors(Estimates inner) {
        if (inner.computation.isLinear()) {
            return new JointDraws(inner).errors(trials);
        }
        Simulation simulation = simulation(inner);
        boolean few = simulation.errors()[0].length < trials;
        double[][] errors = few ? new JointDraws(inner).errors(trials) : simulation.errors();
        for (int p = 0; p < errors.length; p++) {
            double drawn = mean(simulation.errors()[p]) - mean(simulation.linear()[p]);
            double shift = inner.centreShift[p] - 2 * drawn + (few ? drawn : 0);
            errors[p] = Arrays.stream(errors[p]).map(e -> e + shift).toArray();
        }
        return errors;
    }

    private static double[][] found(Computation judged, Estimates inner, double[][] errors) {
        int trials = errors[0].length;
        double[][] found = new double[judged.size()][trials];
        double[] numbers = new double[inner.size()];
        double[] out = new double[judged.size()];
        for (int t = 0; t < trials; t++) {
            for (int k = 0; k < numbers.length; k++) {
                numbers[k] = inner.value[k] + errors[k][t];
            }
            judged.outer(numbers, out);
            for (int p = 0; p < out.length; p++) {
                found[p][t] = out[p];
            }
        }
        return found;
    }

    /** The points of one subject. A population's are taken to first order where they are found in inner numbers. */
    Made points(int subject, Estimates estimates, Outcome outcome, Ready ready) {
        double[] drawn = new double[estimates.size()];
        boolean closed = estimates.computation.isLinear() || estimates.computation.isStaged();
        Errors[] errors = closed ? closed(estimates) : simulated(estimates, drawn);
        List<Points.One> points = new ArrayList<>();
        List<Label> labels = labels(outcome, ready.bands());
        for (int p = 0; p < errors.length; p++) {
            Bound bound = outcome == Outcome.CURVE ? ready.bound(ready.bands().get(p)) : Bound.MEASURED;
            Errors shared = shared(estimates, p, errors[p]);
            points.add(point(subject, p, estimates, shared, labels.get(p), outcome, bound));
        }
        return new Made(points, Arrays.stream(drawn).boxed().toList());
    }

    private Errors shared(Estimates estimates, int p, Errors ofMean) {
        return share.isPresent() && estimates.members.length > 1
                ? ShareErrors.normal(ofMean, estimates.membersAt(p), share.get(), estimates.normalDeviation(p))
                : ofMean;
    }

    private record Label(OptionalDouble hz, OptionalDouble lessHz) {}

    private static Points.One point(
            int subject, int p, Estimates estimates, Errors errors, Label label, Outcome outcome, Bound bound) {
        double value = estimates.value[p];
        boolean turned = outcome == Outcome.PAIRS && value < 0;
        return new Points.One(
                subject,
                p,
                turned ? -1 : 1,
                turned ? label.lessHz() : label.hz(),
                turned ? label.hz() : label.lessHz(),
                turned ? -value : value,
                turned ? new Turned(errors) : errors,
                estimates.observed[p],
                bound);
    }

    private static List<Label> labels(Outcome outcome, List<Band> bands) {
        List<Label> labels = new ArrayList<>();
        for (int i = 0; i < bands.size(); i++) {
            OptionalDouble hz = OptionalDouble.of(bands.get(i).nominalHz());
            if (outcome == Outcome.CURVE) {
                labels.add(new Label(hz, OptionalDouble.empty()));
            }
            for (int j = i + 1; j < bands.size() && outcome == Outcome.PAIRS; j++) {
                labels.add(new Label(hz, OptionalDouble.of(bands.get(j).nominalHz())));
            }
        }
        return labels.isEmpty() ? List.of(new Label(OptionalDouble.empty(), OptionalDouble.empty())) : labels;
    }

    static Errors[] closed(Estimates estimates) {
        Errors[] errors = new Errors[estimates.size()];
        for (int p = 0; p < errors.length; p++) {
            errors[p] = closed(estimates, p);
        }
        return errors;
    }

    private static Errors closed(Estimates estimates, int p) {
        List<Scatter> scatters = estimates.groups.stream()
                .map(g -> g.scatter(p))
                .filter(s -> s.scale() > 0)
                .toList();
        double normal = estimates.normalDeviation(p);
        return scatters.isEmpty() ? new NormalErrors(normal) : new MixedErrors(normal, scatters);
    }

    /**
     * Sums of energies are inflated by independent noise: a draw lies on average above the value by as much as the value
     * lies above the truth, so the draws are moved by −2 · (mean of the draws − value).
     */
    private Errors[] simulated(Estimates estimates, double[] drawn) {
        Errors[] linear = closed(estimates);
        Simulation simulation = simulation(estimates);
        Errors[] errors = new Errors[linear.length];
        for (int p = 0; p < errors.length; p++) {
            double[] draws = simulation.errors()[p];
            double[] controls = simulation.linear()[p];
            drawn[p] = mean(draws) - mean(controls);
            double shift = energies ? -2 * drawn[p] + estimates.centreShift[p] : 0;
            double[] moved = Arrays.stream(draws).map(d -> d + shift).toArray();
            errors[p] = isExact(draws) ? new NormalErrors(0) : new ControlledErrors(moved, controls, linear[p]);
        }
        return errors;
    }

    private Simulation simulation(Estimates estimates) {
        Simulation few = new Simulation(estimates, levelsDb, Math.min(trials, ENOUGH_WITH_CONTROL));
        return trials <= ENOUGH_WITH_CONTROL || isNearlyLinear(few) ? few : new Simulation(estimates, levelsDb, trials);
    }

    /** The control takes little away where the draws stray far from it. */
    private static boolean isNearlyLinear(Simulation simulation) {
        for (int p = 0; p < simulation.errors().length; p++) {
            double[] draws = simulation.errors()[p];
            double[] controls = simulation.linear()[p];
            double offset = mean(draws) - mean(controls);
            double stray = 0;
            double size = 0;
            for (int t = 0; t < draws.length; t++) {
                stray += Math.pow(draws[t] - controls[t] - offset, 2);
                size += controls[t] * controls[t];
            }
            if (stray > STRAY * STRAY * size) {
                return false;
            }
        }
        return true;
    }

    private static double mean(double[] values) {
        return Arrays.stream(values).average().orElse(0);
    }

    private static boolean isExact(double[] draws) {
        return Arrays.stream(draws).allMatch(d -> d == 0);
    }

    /** The errors of a number whose sign was turned. */
    private record Turned(Errors of) implements Errors {
        @Override
        public double atMost(double x) {
            return of.atLeast(-x);
        }

        @Override
        public double atLeast(double x) {
            return of.atMost(-x);
        }

        @Override
        public double quantile(double probability) {
            return -of.quantile(1 - probability);
        }

        @Override
        public double standardUncertainty() {
            return of.standardUncertainty();
        }
    }
}
