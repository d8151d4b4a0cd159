package org.ellwand.quantity;

import java.util.List;

/** Judged numbers that are found in others: the level at which a series of gains has fallen, say. */
final class StagedComputation implements Computation {
    private final Computation inner;
    private final Outer outer;
    private final Reach reach;
    private final int size;
    private final List<Double> seriesLevelsDb;
    private final double[] scratch;

    /**
     * @param size how many numbers come out
     * @param reach of them
     * @param seriesLevelsDb levels of the test sound that the inner numbers belong to; empty: they are no series
     */
    StagedComputation(Computation inner, Outer outer, int size, Reach reach, List<Double> seriesLevelsDb) {
        this.inner = inner;
        this.outer = outer;
        this.size = size;
        this.reach = reach;
        this.seriesLevelsDb = List.copyOf(seriesLevelsDb);
        scratch = new double[inner.size()];
    }

    @Override
    public int size() {
        return size;
    }

    @Override
    public List<Integer> readings() {
        return inner.readings();
    }

    @Override
    public void compute(double[][] levelsDb, double[] out) {
        inner.compute(levelsDb, scratch);
        outer.apply(scratch, out);
    }

    @Override
    public boolean isLinear() {
        return false;
    }

    @Override
    public Computation inner() {
        return inner;
    }

    @Override
    public void outer(double[] numbers, double[] out) {
        outer.apply(numbers, out);
    }

    @Override
    public List<Double> seriesLevelsDb() {
        return seriesLevelsDb;
    }

    @Override
    public Reach reach() {
        return reach;
    }
}
