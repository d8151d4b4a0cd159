package org.ellwand.audit;

import java.util.ArrayList;
import java.util.List;
import org.ellwand.acoustics.Weighting;
import org.ellwand.claim.Rule;
import org.ellwand.quantity.Computation;
import org.ellwand.quantity.Formula;
import org.ellwand.quantity.Outcome;
import org.ellwand.quantity.Reach;

/**
 * One outcome of a rule's subjects, evaluated: values, errors, points.
 *
 * @param outcome what was computed of each curve
 * @param isStaged whether the numbers are looked for in others, and draws tell what may lie beyond those
 * @param subjects in the order of the ready ones; of judged numbers that are found in inner ones, to first order
 * @param points over all subjects
 * @param drawn for each subject and point: mean of the draws less the value, where drawn
 * @param reaches for each subject, how far its numbers can be told
 */
record Evaluation(
        Outcome outcome,
        boolean isStaged,
        List<Estimates> subjects,
        Points points,
        List<List<Double>> drawn,
        List<Reach> reaches) {

    static Evaluation of(Preparation preparation, Rule rule, Outcome outcome, int trials) {
        List<Computation> computations = preparation.ready().stream()
                .map(ready -> computation(preparation, ready, rule, outcome))
                .toList();
        int points = computations.stream().mapToInt(c -> c.inner().size()).sum();
        return new Work(preparation, rule, outcome, trials, points).evaluation(computations);
    }

    /** The points of one subject of a quantity that has a curve, as they are among those of all. */
    static List<Points.One> curve(Preparation preparation, Rule rule, int subject, int trials) {
        List<Ready> all = preparation.ready();
        int points =
                all.stream().mapToInt(r -> Outcome.CURVE.size(r.bands().size())).sum();
        Work work = new Work(preparation, rule, Outcome.CURVE, trials, points);
        Ready ready = all.get(subject);
        work.add(subject, ready, computation(preparation, ready, rule, Outcome.CURVE));
        return work.points;
    }

    private static Computation computation(Preparation preparation, Ready ready, Rule rule, Outcome outcome) {
        return ready.subject().formula().computation(task(ready, rule, outcome), preparation.index());
    }

    /** One subject by itself. */
    Evaluation only(int subject) {
        List<Points.One> own =
                points.of(subject).stream().map(p -> p.ofSubject(0)).toList();
        return new Evaluation(
                outcome,
                isStaged,
                List.of(subjects.get(subject)),
                new Points(own),
                List.of(drawn.get(subject)),
                List.of(reaches.get(subject)));
    }

    static Formula.Task task(Ready ready, Rule rule, Outcome outcome) {
        return new Formula.Task(
                ready.resolution(), ready.bands(), outcome, rule.weighting().orElse(Weighting.Z));
    }

    private static final class Work {
        private final Preparation preparation;
        private final Rule rule;
        private final Outcome outcome;
        private final PointMaker maker;
        private final Estimator estimator;
        private final List<Estimates> subjects = new ArrayList<>();
        private final List<Points.One> points = new ArrayList<>();
        private final List<List<Double>> drawn = new ArrayList<>();

        /** @param points of all subjects together */
        Work(Preparation preparation, Rule rule, Outcome outcome, int trials, int points) {
            this.preparation = preparation;
            this.rule = rule;
            this.outcome = outcome;
            double[][] levelsDb = preparation.levelsDb();
            estimator = new Estimator(
                    preparation.index(),
                    levelsDb,
                    preparation.moves(),
                    preparation.ready().size() > Judgement.MANY_CELLS,
                    Math.max(1, points));
            maker = new PointMaker(levelsDb, trials, !rule.ratio(), Shared.of(rule));
        }

        Evaluation evaluation(List<Computation> computations) {
            List<Ready> ready = preparation.ready();
            for (int s = 0; s < computations.size(); s++) {
                add(s, ready.get(s), computations.get(s));
            }
            List<Reach> reaches = computations.stream().map(Computation::reach).toList();
            boolean staged = subjects.stream().anyMatch(s -> s.computation.isStaged());
            return new Evaluation(outcome, staged, subjects, new Points(points), drawn, reaches);
        }

        private void add(int s, Ready ready, Computation judged) {
            boolean staged = judged.isStaged() && !ready.subject().isPopulation();
            Formula.Task task = task(ready, rule, outcome);
            Estimates estimates = estimator.estimate(ready.subject(), staged ? judged.inner() : judged, task);
            PointMaker.Made made = staged
                    ? maker.staged(s, judged, estimates, outcome, ready)
                    : maker.points(s, estimates, outcome, ready);
            subjects.add(staged ? Linearized.of(judged, estimates) : estimates);
            points.addAll(made.points());
            drawn.add(made.drawn());
        }
    }
}
