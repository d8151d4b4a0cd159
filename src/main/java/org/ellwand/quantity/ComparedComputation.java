package org.ellwand.quantity;

/** First less second, or first over second, number by number. */
final class ComparedComputation implements Computation {
    private final Computation first;
    private final Computation second;
    private final boolean ratio;
    private final double[] other;

    ComparedComputation(Computation first, Computation second, boolean ratio) {
        this.first = first;
        this.second = second;
        this.ratio = ratio;
        other = new double[second.size()];
    }

    @Override
    public int size() {
        return first.size();
    }

    @Override
    public boolean isLinear() {
        return !ratio && first.isLinear() && second.isLinear();
    }

    @Override
    public void compute(double[][] levelsDb, double[] out) {
        first.compute(levelsDb, out);
        second.compute(levelsDb, other);
        for (int i = 0; i < other.length; i++) {
            out[i] = ratio ? out[i] / other[i] : out[i] - other[i];
        }
    }
}
