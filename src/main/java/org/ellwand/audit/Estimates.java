package org.ellwand.audit;

import java.util.Arrays;
import java.util.List;
import org.ellwand.quantity.Computation;
import org.ellwand.words.Remark;

/**
 * The judged numbers of one subject and everything that moves them. Arrays run over the points of the subject.
 */
final class Estimates {
    final Computation computation;
    final double[] value;
    /** The factors that move the subject, and their effect by point. */
    final List<Factor> factors;

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
            List<Factor> factors,
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
        this.effect = effect;
        this.declaredEffect = declaredEffect;
        this.groups = groups;
        this.observed = observed;
        this.centreShift = centreShift;
        this.members = members;
        this.notes = List.copyOf(notes);
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
