package org.ellwand.quantity;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.ellwand.acoustics.Weighting;
import org.ellwand.amount.Dimension;
import org.ellwand.amount.Unit;
import org.ellwand.claim.QuantityForm;
import org.ellwand.claim.Rule;
import org.ellwand.claim.Statistic;
import org.ellwand.pairing.Cell;
import org.ellwand.pairing.Joined;
import org.ellwand.pairing.Joining;
import org.ellwand.words.Remark;

/**
 * Criterion level: the level of the test sound at which the A-weighted output level reaches a criterion, 85 dB(A) in the
 * tests of level-dependent protectors (EN 352-4; read in a development report); straight line between levels, first
 * crossing. Reached at the lowest level already: below it; not reached by the highest: above it.
 */
final class CriterionLevel implements SpectralQuantity {
    private static final int LEAST_LEVELS = 2;

    @Override
    public QuantityForm form() {
        return new QuantityForm(
                "criterion level",
                Dimension.LEVEL,
                Map.of(
                        "bands",
                        "a level is summed over stated bands",
                        "criterion",
                        "the level at the ear that is looked for",
                        "referred to",
                        "an eardrum reads 5 to 10 dB(A) above the field"),
                OutputSums.usable("limit weighting"),
                "dB of the stimulus level",
                "input level at which the A-weighted output level reaches the criterion");
    }

    @Override
    public Joining joining() {
        return Joining.LEVELS;
    }

    @Override
    public Rule completed(Rule rule) {
        return rule.with(Statistic.OVERALL, Weighting.A);
    }

    @Override
    public List<CurvePart> parts(Rule rule) {
        return OutputSums.parts(rule);
    }

    @Override
    public Optional<Remark> unusable(Joined joined, Rule rule) {
        return SpectralQuantity.super.unusable(joined, rule).or(() -> LevelSeries.unusable(joined, rule, LEAST_LEVELS));
    }

    @Override
    public Formula formula(Joined joined, Rule rule) {
        LevelSeries series = LevelSeries.of(joined, rule);
        List<CellFormula> levels =
                series.cells().stream().map(cell -> formula(cell, rule)).toList();
        return new StagedFormula(levels, new Reached(series, Settings.amount(rule, "criterion", Unit.DB_A)));
    }

    @Override
    public List<Remark> notes(List<Cell> cells, Rule rule) {
        return Stream.concat(SeriesUnit.notes(cells, rule).stream(), LevelSeries.leftOut(cells, rule).stream())
                .toList();
    }

    private record Reached(LevelSeries series, double criterionDbA) implements StagedFormula.Stage {
        @Override
        public Formula.Task inner(Formula.Task task) {
            return task;
        }

        @Override
        public Outer outer(Formula.Task task) {
            double[] given = series.levels();
            return (levels, out) -> out[0] = reached(given, levels);
        }

        private double reached(double[] given, double[] levelsDbA) {
            if (levelsDbA[0] > criterionDbA) {
                return Double.NEGATIVE_INFINITY;
            }
            double level = Crossing.first(given, levelsDbA, criterionDbA, false);
            return Double.isNaN(level) ? Double.POSITIVE_INFINITY : level;
        }

        @Override
        public List<Double> seriesLevelsDb() {
            return series.level();
        }

        @Override
        public Reach reach(Formula.Task task) {
            return series.reach();
        }
    }
}
