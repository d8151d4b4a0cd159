package org.ellwand.audit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.ellwand.quantity.Computation;

/**
 * The estimates of judged numbers that are found in inner ones, to first order at the unperturbed readings: what each
 * cause and each scatter does to them. Where a judged number does not lie in reach, nothing moves it.
 */
final class Linearized {
    private static final double STEP = 1e-3;
    private static final double CANCELLED = 1e-6;

    private final Computation computation;
    private final Estimates inner;
    private final double[][] gradient;

    private Linearized(Computation computation, Estimates inner) {
        this.computation = computation;
        this.inner = inner;
        this.gradient = gradient();
    }

    static Estimates of(Computation computation, Estimates inner) {
        return new Linearized(computation, inner).estimates();
    }

    private double[][] gradient() {
        double[][] gradient = new double[computation.size()][inner.size()];
        double[] numbers = inner.value.clone();
        double[] up = new double[computation.size()];
        double[] down = new double[computation.size()];
        for (int k = 0; k < numbers.length; k++) {
            double number = numbers[k];
            numbers[k] = number + STEP;
            computation.outer(numbers, up);
            numbers[k] = number - STEP;
            computation.outer(numbers, down);
            numbers[k] = number;
            for (int p = 0; p < up.length; p++) {
                double slope = (up[p] - down[p]) / (2 * STEP);
                gradient[p][k] = Double.isFinite(slope) ? slope : 0;
            }
        }
        return gradient;
    }

    private Estimates estimates() {
        double[] value = new double[computation.size()];
        computation.outer(inner.value, value);
        List<Group> groups = new ArrayList<>();
        inner.groups.forEach(g -> groups.add(through(g)));
        boolean[] observed = new boolean[value.length];
        for (int k = 0; k < inner.observed.length; k++) {
            for (int p = 0; p < value.length; p++) {
                observed[p] |= inner.observed[k] && gradient[p][k] != 0;
            }
        }
        return new Estimates(
                computation,
                value,
                inner.factorSource(),
                inner.originSource(),
                through(inner.effect),
                through(inner.declaredEffect),
                groups,
                observed,
                new double[value.length],
                inner.members,
                inner.notes);
    }

    private Group through(Group group) {
        double[][] effects = new double[inner.size()][group.columns()];
        for (int k = 0; k < effects.length; k++) {
            for (int c = 0; c < group.columns(); c++) {
                effects[k][c] = group.effect(k, c);
            }
        }
        return new Group(group.key(), group.degreesOfFreedom(), through(effects));
    }

    private Effects through(Effects effect) {
        double[][] judged = through(effect.dense());
        return Effects.of(
                judged.length,
                effect.factors(),
                f -> Arrays.stream(judged).mapToDouble(row -> row[f]).toArray());
    }

    private double[][] through(double[][] effect) {
        double[][] judged = new double[gradient.length][effect[0].length];
        for (int p = 0; p < judged.length; p++) {
            for (int f = 0; f < judged[p].length; f++) {
                judged[p][f] = through(effect, p, f);
            }
        }
        return judged;
    }

    private double through(double[][] effect, int point, int column) {
        double sum = 0;
        double largest = 0;
        for (int k = 0; k < effect.length; k++) {
            double one = gradient[point][k] * effect[k][column];
            sum += one;
            largest = Math.max(largest, Math.abs(one));
        }
        // What cancels leaves the error of the difference quotient behind; it is nothing.
        return Math.abs(sum) < CANCELLED * largest ? 0 : sum;
    }
}
