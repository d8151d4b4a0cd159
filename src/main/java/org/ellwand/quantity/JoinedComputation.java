package org.ellwand.quantity;

import java.util.List;

/** The numbers of several computations, one after the other. */
final class JoinedComputation implements Computation {
    private final List<Computation> members;
    private final double[][] outs;

    JoinedComputation(List<Computation> members) {
        this.members = List.copyOf(members);
        outs = members.stream().map(m -> new double[m.size()]).toArray(double[][]::new);
    }

    @Override
    public int size() {
        return members.stream().mapToInt(Computation::size).sum();
    }

    @Override
    public boolean isLinear() {
        return members.stream().allMatch(Computation::isLinear);
    }

    @Override
    public List<Integer> readings() {
        return Computation.readings(members);
    }

    @Override
    public void compute(double[][] levelsDb, double[] out) {
        int at = 0;
        for (int m = 0; m < outs.length; m++) {
            members.get(m).compute(levelsDb, outs[m]);
            System.arraycopy(outs[m], 0, out, at, outs[m].length);
            at += outs[m].length;
        }
    }
}
