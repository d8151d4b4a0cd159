package org.ellwand.quantity;

import java.util.List;
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

    /** Whether all readings concerned have what a band needs. */
    boolean has(Band band, Resolution resolution);

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
        public boolean has(Band band, Resolution resolution) {
            return first.has(band, resolution) && second.has(band, resolution);
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
        public boolean has(Band band, Resolution resolution) {
            return members.stream().allMatch(m -> m.has(band, resolution));
        }

        @Override
        public List<Band> anyBands(Resolution resolution) {
            return Formula.union(members, resolution);
        }
    }

    static List<Band> union(List<? extends Formula> formulas, Resolution resolution) {
        return formulas.stream()
                .flatMap(f -> f.anyBands(resolution).stream())
                .distinct()
                .sorted()
                .toList();
    }
}
