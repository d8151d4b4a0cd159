package org.ellwand.quantity;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Numbers made of the numbers of several computations of one size: their difference, ratio or mean. Where a member lies
 * beyond its reach nothing can be said of the whole: NaN.
 */
final class ComposedComputation implements Computation {
    private final List<Computation> members;
    private final Way way;
    private final double[][] outs;
    private final boolean linear;
    private final boolean staged;

    /** How they are put together. */
    enum Way {
        DIFFERENCE,
        RATIO,
        MEAN
    }

    ComposedComputation(List<Computation> members, Way way) {
        this.members = List.copyOf(members);
        this.way = way;
        linear = way != Way.RATIO && members.stream().allMatch(Computation::isLinear);
        staged = members.stream().anyMatch(Computation::isStaged);
        outs = members.stream().map(m -> new double[m.size()]).toArray(double[][]::new);
    }

    @Override
    public int size() {
        return outs[0].length;
    }

    @Override
    public boolean isLinear() {
        return linear;
    }

    @Override
    public List<Integer> readings() {
        return Computation.readings(members);
    }

    @Override
    public void compute(double[][] levelsDb, double[] out) {
        for (int m = 0; m < outs.length; m++) {
            members.get(m).compute(levelsDb, outs[m]);
        }
        compose(out);
    }

    @Override
    public boolean addSlopes(double factor, Slopes slopes) {
        List<Computation.Addend> addends = isLinear() ? addends() : List.of();
        boolean closed = !addends.isEmpty() && addends.stream().allMatch(a -> a.of() instanceof SpectralComputation);
        return closed && addends.stream().allMatch(a -> a.of().addSlopes(factor * a.factor(), slopes));
    }

    @Override
    public boolean addShape(Shape shape) {
        boolean closed = isLinear();
        for (Computation.Addend addend : closed ? addends() : List.<Computation.Addend>of()) {
            shape.number(addend.factor());
            closed &= addend.of() instanceof SpectralComputation && addend.of().addShape(shape);
        }
        return closed;
    }

    @Override
    public List<Addend> addends() {
        return switch (way) {
            case RATIO -> Computation.super.addends();
            case DIFFERENCE -> Stream.concat(addends(0, 1), addends(1, -1)).toList();
            case MEAN ->
                IntStream.range(0, outs.length)
                        .boxed()
                        .flatMap(m -> addends(m, 1.0 / outs.length))
                        .toList();
        };
    }

    private Stream<Addend> addends(int member, double factor) {
        return members.get(member).addends().stream().map(a -> new Addend(a.of(), factor * a.factor()));
    }

    private void compose(double[] out) {
        for (int i = 0; i < out.length; i++) {
            out[i] = composed(i);
        }
    }

    private double composed(int i) {
        return switch (way) {
            case DIFFERENCE -> areTold(i) ? outs[0][i] - outs[1][i] : Double.NaN;
            case RATIO -> areTold(i) ? ratio(outs[0][i], outs[1][i]) : Double.NaN;
            case MEAN -> mean(i);
        };
    }

    /** To nothing there is no ratio, not even of nothing. */
    private static double ratio(double one, double other) {
        return other == 0 ? Double.POSITIVE_INFINITY : one / other;
    }

    /** A number over one that lies beyond would seem to be 0. */
    private boolean areTold(int i) {
        return Double.isFinite(outs[0][i]) && Double.isFinite(outs[1][i]);
    }

    private double mean(int i) {
        double sum = 0;
        for (double[] out : outs) {
            sum += out[i] / outs.length;
        }
        return Double.isFinite(sum) ? sum : Double.NaN;
    }

    @Override
    public Computation inner() {
        return staged
                ? new JoinedComputation(members.stream().map(Computation::inner).toList())
                : this;
    }

    @Override
    public void outer(double[] inner, double[] out) {
        if (!staged) {
            Computation.super.outer(inner, out);
            return;
        }
        int at = 0;
        for (int m = 0; m < outs.length; m++) {
            int size = members.get(m).inner().size();
            members.get(m).outer(Arrays.copyOfRange(inner, at, at + size), outs[m]);
            at += size;
        }
        compose(out);
    }
}
