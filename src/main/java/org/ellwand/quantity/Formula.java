package org.ellwand.quantity;

import java.util.List;
import java.util.Optional;
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
     * @param outcome what is made of the curve
     * @param weighting of an overall level
     */
    record Task(Resolution resolution, List<Band> bands, Outcome outcome, Weighting weighting) {
        Task with(Outcome other) {
            return new Task(resolution, bands, other, weighting);
        }
    }

    /**
     * {@return the computation of a task; it holds scratch space and belongs to one thread}
     *
     * @param task resolution, bands and what is made of them
     * @param index numbers the readings; it grows by those that are needed
     */
    Computation computation(Task task, ReadingIndex index);

    /**
     * {@return those of some bands for which all readings concerned have what is needed}
     *
     * @param bands to choose from
     * @param resolution of the bands
     */
    List<Band> having(List<Band> bands, Resolution resolution);

    /**
     * {@return every band that any reading in place has, lowest first}
     *
     * @param resolution of the bands
     */
    List<Band> anyBands(Resolution resolution);

    /**
     * {@return whether the readings concerned are known to have the bands of those of another formula} It may deny what is so.
     *
     * @param other any formula
     */
    default boolean hasBandsOf(Formula other) {
        return false;
    }

    /**
     * First less second, or first over second.
     *
     * @param first what stands first
     * @param second what it is compared with
     * @param ratio whether the first is divided by the second, not lessened by it
     */
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

    /**
     * The mean of several.
     *
     * @param members at least one
     */
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
        public boolean hasBandsOf(Formula other) {
            return other instanceof Mean that
                    && members.stream().allMatch(member -> member.hasBandsOf(that.members.get(0)))
                    && that.members.stream().skip(1).allMatch(member -> member.hasBandsOf(that.members.get(0)));
        }

        @Override
        public List<Band> anyBands(Resolution resolution) {
            return Formula.union(members, resolution);
        }
    }

    /**
     * {@return those of some bands for which every formula has what it needs}
     *
     * @param formulas all of them are asked
     * @param bands to choose from
     * @param resolution of the bands
     */
    static List<Band> having(List<? extends Formula> formulas, List<Band> bands, Resolution resolution) {
        List<Band> left = bands;
        Optional<Formula> last = Optional.empty();
        for (Formula formula : formulas) {
            // What has the bands of the one before leaves what that one left.
            if (last.filter(formula::hasBandsOf).isEmpty()) {
                left = formula.having(left, resolution);
            }
            last = Optional.of(formula);
        }
        return left;
    }

    /**
     * {@return the bands of several formulas together, lowest first}
     *
     * @param formulas all of them are asked
     * @param resolution of the bands
     */
    static List<Band> union(List<? extends Formula> formulas, Resolution resolution) {
        SortedSet<Band> all = new TreeSet<>();
        Optional<Formula> last = Optional.empty();
        for (Formula formula : formulas) {
            if (last.filter(formula::hasBandsOf).isEmpty()) {
                all.addAll(formula.anyBands(resolution));
            }
            last = Optional.of(formula);
        }
        return List.copyOf(all);
    }
}
