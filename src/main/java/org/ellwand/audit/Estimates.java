package org.ellwand.audit;

import java.util.Arrays;
import java.util.List;
import java.util.function.Supplier;
import org.ellwand.quantity.Computation;
import org.ellwand.words.Remark;

/**
 * The judged numbers of one subject and everything that moves them. Arrays run over the points of the subject.
 */
final class Estimates {
    final Computation computation;
    final double[] value;
    private final Supplier<List<Factor>> factors;
    private final Supplier<Origins> origins;

    /** The effects of the factors by point. */
    final Effects effect;
    /** The same before observed scatter replaced any. */
    final Effects declaredEffect;

    final List<Group> groups;
    /** Whether observed scatter replaced declared sizes at the point. */
    final boolean[] observed;
    /** To be added to the draws of a sum of energies whose repeats were observed. */
    final double[] centreShift;
    /** The numbers of each person or product, where there are several; by member and point. */
    final double[][] members;
    /** What was found about the repeats, in English. */
    final List<Remark> notes;

    Estimates(
            Computation computation,
            double[] value,
            Supplier<List<Factor>> factors,
            Supplier<Origins> origins,
            Effects effect,
            Effects declaredEffect,
            List<Group> groups,
            boolean[] observed,
            double[] centreShift,
            double[][] members,
            List<Remark> notes) {
        this.computation = computation;
        this.value = value;
        this.factors = factors;
        this.origins = origins;
        this.effect = effect;
        this.declaredEffect = declaredEffect;
        this.groups = groups;
        this.observed = observed;
        this.centreShift = centreShift;
        this.members = members;
        this.notes = List.copyOf(notes);
    }

    /** The factors that move the subject, in the order of their effects; put together anew in an evaluation of many. */
    List<Factor> factors() {
        return factors.get();
    }

    /** The same, for estimates of numbers that are found in these. */
    Supplier<List<Factor>> factorSource() {
        return factors;
    }

    /** Where the factors come from, in their order. */
    Origins origins() {
        return origins.get();
    }

    /** The same, for estimates of numbers that are found in these. */
    Supplier<Origins> originSource() {
        return origins;
    }

    int size() {
        return value.length;
    }

    /** The number of each person or product at a point. */
    List<Double> membersAt(int point) {
        return Arrays.stream(members).map(numbers -> numbers[point]).toList();
    }

    double normalDeviation(int point) {
        return effect.deviation(point);
    }
}
