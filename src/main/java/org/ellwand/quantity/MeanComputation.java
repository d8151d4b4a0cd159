package org.ellwand.quantity;

import java.util.Arrays;
import java.util.List;

/** The arithmetic mean of several computations, number by number. */
final class MeanComputation implements Computation {
    private final List<Computation> members;
    private final double[] one;

    MeanComputation(List<Computation> members) {
        this.members = List.copyOf(members);
        one = new double[members.get(0).size()];
    }

    @Override
    public int size() {
        return one.length;
    }

    @Override
    public boolean isLinear() {
        return members.stream().allMatch(Computation::isLinear);
    }

    @Override
    public void compute(double[][] levelsDb, double[] out) {
        Arrays.fill(out, 0);
        for (Computation member : members) {
            member.compute(levelsDb, one);
            for (int i = 0; i < one.length; i++) {
                out[i] += one[i] / members.size();
            }
        }
    }
}
