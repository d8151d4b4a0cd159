package org.ellwand.quantity;

import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Resolution;
import org.ellwand.acoustics.Weighting;

/** How one judged number or curve is put together from cells; turned into a {@link Computation} once its bands are known. */
public interface Formula {
    /**
     * What to compute.
     *
     * @param resolution of the curve
     * @param bands every one of them is there in all readings concerned
     */
    record Task(Resolution resolution, List<Band> bands, Outcome outcome, Weighting weighting) {
        Task with(Outcome other) {
            return new Task(resolution, bands, other, weighting);
        }
    }

    Computation computation(Task task, ReadingIndex index);

    /** Those of some bands for which all readings concerned have what is needed. */
    List<Band> having(List<Band> bands, Resolution resolution);

    /** Every band that any reading in place has. */
    List<Band> anyBands(Resolution resolution);

    /** First less second, or first over second. */
    record Comparison(Formula first, Formula second, boolean ratio) implements Formula {
        @Override
        public Computation computation(Task task, ReadingIndex index) {
            return new ComposedComputation(
                    List.of(first.computation(task, index), second.computation(task, index)),
                    ratio ? ComposedComputation.Way.RATIO : ComposedComputation.Way.DIFFERENCE);
        }

        @Override
        public List<Band> having(List<Band> bands, Resolution resolution) {
            return second.having(first.having(bands, resolution), resolution);
        }

        @Override
        public List<Band> anyBands(Resolution resolution) {
            return Formula.union(List.of(first, second), resolution);
        }
    }

    /** The mean of several. */
    record Mean(List<Formula> members) implements Formula {
        @Override
        public Computation computation(Task task, ReadingIndex index) {
            return new ComposedComputation(
                    members.stream().map(m -> m.computation(task, index)).toList(), ComposedComputation.Way.MEAN);
        }

        @Override
        public List<Band> having(List<Band> bands, Resolution resolution) {
            return Formula.having(members, bands, resolution);
        }

        @Override
        public List<Band> anyBands(Resolution resolution) {
            return Formula.union(members, resolution);
        }
    }

    /** Those of some bands for which every formula has what it needs. */
    static List<Band> having(List<? extends Formula> formulas, List<Band> bands, Resolution resolution) {
        List<Band> left = bands;
        for (Formula formula : formulas) {
            left = formula.having(left, resolution);
        }
        return left;
    }

    static List<Band> union(List<? extends Formula> formulas, Resolution resolution) {
        SortedSet<Band> all = new TreeSet<>();
        List<Band> last = List.of();
        for (Formula formula : formulas) {
            List<Band> bands = formula.anyBands(resolution);
            // Most have the bands of the one before.
            if (!bands.equals(last)) {
                all.addAll(bands);
                last = bands;
            }
        }
        return List.copyOf(all);
    }
}
