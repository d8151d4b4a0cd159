package org.ellwand.audit;

import java.util.ArrayList;
import java.util.List;
import org.ellwand.acoustics.Weighting;
import org.ellwand.claim.Rule;
import org.ellwand.quantity.Formula;
import org.ellwand.quantity.Outcome;

/**
 * One outcome of a rule's subjects, evaluated: values, errors, points.
 *
 * @param outcome what was computed of each curve
 * @param subjects in the order of the ready ones
 * @param points over all subjects
 * @param drawn for each subject and point: mean of the draws less the value, where drawn
 */
record Evaluation(Outcome outcome, List<Estimates> subjects, Points points, List<List<Double>> drawn) {

    static Evaluation of(Preparation preparation, Rule rule, Outcome outcome, int trials) {
        List<Ready> ready = preparation.ready();
        int claimPoints =
                ready.stream().mapToInt(r -> outcome.size(r.bands().size())).sum();
        double[][] levelsDb = preparation.levelsDb();
        Estimator estimator =
                new Estimator(preparation.index(), levelsDb, preparation.factors(), Math.max(1, claimPoints));
        PointMaker maker = new PointMaker(levelsDb, trials, !rule.ratio());
        List<Estimates> subjects = new ArrayList<>();
        List<Points.One> points = new ArrayList<>();
        List<List<Double>> drawn = new ArrayList<>();
        for (int s = 0; s < ready.size(); s++) {
            Formula.Task task = task(ready.get(s), rule, outcome);
            Formula formula = ready.get(s).subject().formula();
            Estimates estimates =
                    estimator.estimate(ready.get(s).subject(), formula.computation(task, preparation.index()), task);
            PointMaker.Made made = maker.points(s, estimates, outcome, ready.get(s));
            subjects.add(estimates);
            points.addAll(made.points());
            drawn.add(made.drawn());
        }
        return new Evaluation(outcome, subjects, new Points(points), drawn);
    }

    private static Formula.Task task(Ready ready, Rule rule, Outcome outcome) {
        return new Formula.Task(
                ready.resolution(), ready.bands(), outcome, rule.weighting().orElse(Weighting.Z));
    }
}
