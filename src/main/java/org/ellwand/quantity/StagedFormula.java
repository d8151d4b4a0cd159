package org.ellwand.quantity;

import java.util.List;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Resolution;

/**
 * Numbers that are found in the numbers of other formulas.
 *
 * @param members whose numbers, one after the other, are the inner ones
 * @param stage from there to the judged ones
 */
record StagedFormula(List<? extends Formula> members, Stage stage) implements Formula {
    StagedFormula {
        members = List.copyOf(members);
    }

    /** The second step, once the bands are known. */
    interface Stage {
        /** What is to be computed first. */
        Task inner(Task task);

        Outer outer(Task task);

        /** Levels of the test sound that the inner numbers belong to; none where they are no series of levels. */
        default List<Double> seriesLevelsDb() {
            return List.of();
        }

        /** How far the judged numbers can be told. */
        Reach reach(Task task);
    }

    @Override
    public Computation computation(Task task, ReadingIndex index) {
        List<Computation> inner = members.stream()
                .map(m -> m.computation(stage.inner(task), index))
                .toList();
        return new StagedComputation(
                new JoinedComputation(inner),
                stage.outer(task),
                task.outcome().size(task.bands().size()),
                stage.reach(task),
                stage.seriesLevelsDb());
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
