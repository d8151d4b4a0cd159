package org.ellwand.audit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.stream.Stream;

/** The scatter that was seen of a subject's judged numbers, in the place of what is declared. */
final class ObservedScatter {
    private final double[] value;
    private final boolean centred;
    private final boolean[] observed;
    private final List<BitSet> covered;
    private final double[] centreShift;
    private final List<Group> groups = new ArrayList<>();

    /**
     * @param value the judged numbers
     * @param centred whether the draws centre on the numbers as they are: those of linear sums do, and where repeats of
     *     several kinds are there none is moved
     */
    ObservedScatter(double[] value, boolean centred) {
        this.value = value;
        this.centred = centred;
        observed = new boolean[value.length];
        covered = Stream.generate(BitSet::new).limit(value.length).toList();
        centreShift = new double[value.length];
    }

    /**
     * Takes the scatter of repeats for the error of some numbers.
     *
     * @param x numbers by repeat and point
     * @param replaced which of the points
     * @param readings whose errors it holds, by their positions
     */
    void take(Repeats repeats, double[][] x, boolean[] replaced, BitSet readings) {
        double[][] effects = new double[value.length][x.length];
        for (int p = 0; p < value.length; p++) {
            if (replaced[p]) {
                observed[p] = true;
                covered.get(p).or(readings);
                scatter(repeats, x, p, effects[p]);
            }
        }
        groups.add(new Group(repeats.key(), x.length - 1, effects));
    }

    /** A group that stands beside. */
    void add(Group group) {
        groups.add(group);
    }

    private void scatter(Repeats repeats, double[][] x, int p, double[] effects) {
        int n = x.length;
        double mean = Arrays.stream(x).mapToDouble(row -> row[p]).average().orElse(0);
        for (int i = 0; i < n; i++) {
            effects[i] = repeats.weight() * (x[i][p] - mean) / Math.sqrt((double) n * (n - 1));
        }
        // The draws centre on the mean of the repeats' numbers, moved by n/(n−1) of its distance from the number of
        // their mean curve; as seen from that number, by 1/(n−1) of the distance.
        if (!centred) {
            centreShift[p] -= (mean - value[p]) / (n - 1);
        }
    }

    /** Which of the numbers scatter as was seen. */
    boolean[] observed() {
        return observed;
    }

    /** By point, the readings whose errors are in the scatter. */
    List<BitSet> covered() {
        return covered;
    }

    double[] centreShift() {
        return centreShift;
    }

    List<Group> groups() {
        return groups;
    }
}
