package org.ellwand.audit;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import org.ellwand.measurement.SharedBy;
import org.ellwand.quantity.Computation;
import org.ellwand.quantity.Formula;
import org.ellwand.quantity.ReadingIndex;

/** The judged numbers of a subject's repeats, each by itself: what they scatter by is seen, and held against what is declared. */
final class RepeatNumbers {
    private final Subject subject;
    private final Formula.Task task;
    private final ReadingIndex index;
    private final double[][] levelsDb;
    private final int points;

    /** @param points judged numbers of the subject */
    RepeatNumbers(Subject subject, Formula.Task task, ReadingIndex index, double[][] levelsDb, int points) {
        this.subject = subject;
        this.task = task;
        this.index = index;
        this.levelsDb = levelsDb;
        this.points = points;
    }

    /** The numbers of each repeat by itself, by repeat and point. */
    double[][] of(Repeats repeats) {
        double[][] x = new double[repeats.count()][points];
        for (int i = 0; i < x.length; i++) {
            Computation one = repeats.members().get(i).formula().computation(task, index);
            judgedNumbers(one).compute(levelsDb, x[i]);
        }
        repeats.other().ifPresent(other -> {
            double[] others = new double[points];
            judgedNumbers(other.formula().computation(task, index)).compute(levelsDb, others);
            Arrays.stream(x).forEach(numbers -> other.hold(numbers, others));
        });
        return x;
    }

    private Computation judgedNumbers(Computation of) {
        return subject.isPopulation() ? of : of.inner();
    }

    /** What insertion and reading causes let the numbers of each repeat scatter, by repeat and point. */
    double[][] declaredVariance(Repeats repeats, List<Factor> factors, Sensitivity sensitivity) {
        double scale = repeats.count() / repeats.weight();
        double[][] variance = new double[repeats.count()][points];
        for (int i = 0; i < variance.length; i++) {
            BitSet own = index.set(repeats.members().get(i).readings());
            for (Factor factor : factors) {
                if (scatters(factor)) {
                    addSquares(variance[i], factor.only(own), sensitivity, scale);
                }
            }
        }
        return variance;
    }

    private static void addSquares(double[] variance, Factor factor, Sensitivity sensitivity, double scale) {
        if (factor.entries().size() > 0) {
            double[] effects = sensitivity.effects(factor);
            for (int p = 0; p < variance.length; p++) {
                variance[p] += effects[p] * effects[p] * scale * scale;
            }
        }
    }

    /** Whether it is a repeat's own. */
    static boolean scatters(Factor factor) {
        return factor.sharedBy() == SharedBy.INSERTION || factor.sharedBy() == SharedBy.READING;
    }
}
