package org.ellwand.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ellwand.amount.Dimension;
import org.ellwand.claim.QuantityForm;
import org.ellwand.claim.Rule;
import org.ellwand.claim.Statistic;
import org.ellwand.input.InputException;
import org.ellwand.pairing.Cell;
import org.ellwand.pairing.Joined;
import org.ellwand.pairing.Joining;
import org.ellwand.words.Remark;

/**
 * Onset level: the level of the test sound at which the insertion gain has fallen by a stated drop below its value at the
 * lowest level measured; straight line between levels, first crossing. Not fallen by the highest level tested: above it,
 * and nothing tells how far. (The lower limit of automatic gain control in IEC 60118-2 uses 2 dB; from memory.)
 */
final class OnsetLevel implements SpectralQuantity {
    private static final int LEAST_LEVELS = 3;
    private static final List<Statistic> STATISTICS = List.of(Statistic.MEAN, Statistic.OVERALL, Statistic.EVERY_BAND);

    @Override
    public QuantityForm form() {
        return new QuantityForm(
                "onset level",
                Dimension.LEVEL,
                SpectralQuantity.needed(Map.of("drop", "an onset is where the gain has fallen by a stated amount")),
                SpectralQuantity.usable("limit weighting"),
                "dB of the stimulus level",
                "input level at which the insertion gain has fallen by drop below its value at the lowest level");
    }

    @Override
    public void check(Rule rule) throws InputException {
        Statistic statistic = rule.statistic().orElseThrow();
        if (!STATISTICS.contains(statistic)) {
            throw new InputException(
                    rule.place(),
                    "onset level cannot be told by 'statistic: " + statistic.text()
                            + "', which noise shifts from level to level: it takes every band, mean, overall");
        }
    }

    @Override
    public Joining joining() {
        return Joining.LEVELS;
    }

    @Override
    public List<CurvePart> parts(Rule rule) {
        return List.of(CurvePart.inPlace(1), CurvePart.openEar(-1));
    }

    @Override
    public List<CurvePart> partsOfDifferences(boolean attenuation) {
        return List.of(CurvePart.inPlace(attenuation ? -1 : 1));
    }

    @Override
    public Optional<Remark> unusable(Joined joined, Rule rule) {
        return SpectralQuantity.super.unusable(joined, rule).or(() -> LevelSeries.unusable(joined, rule, LEAST_LEVELS));
    }

    @Override
    public Formula formula(Joined joined, Rule rule) {
        LevelSeries series = LevelSeries.of(joined, rule);
        List<CellFormula> gains =
                series.cells().stream().map(cell -> formula(cell, rule)).toList();
        return new StagedFormula(gains, new Onset(series, Settings.decibels(rule, "drop")));
    }

    @Override
    public List<Remark> notes(List<Cell> cells, Rule rule) {
        List<Remark> notes = new ArrayList<>();
        LevelSeries.fewest(cells, rule)
                .ifPresent(levels -> notes.add(Remark.of("onset-levels").with("levels", levels)));
        notes.addAll(SeriesUnit.notes(cells, rule));
        notes.addAll(LevelSeries.leftOut(cells, rule));
        return List.copyOf(notes);
    }

    /** From gains, level by level, to the onset in each band (or of the one number). */
    private record Onset(LevelSeries series, double dropDb) implements StagedFormula.Stage {
        @Override
        public Formula.Task inner(Formula.Task task) {
            return task;
        }

        @Override
        public Outer outer(Formula.Task task) {
            int bands = task.outcome().size(task.bands().size());
            double[] levels = series.levels();
            return (gains, out) -> {
                for (int b = 0; b < bands; b++) {
                    double[] gain = LevelSeries.ofBand(gains, b, bands);
                    double onset = Crossing.first(levels, gain, gain[0] - dropDb, true);
                    out[b] = Double.isNaN(onset) ? Double.POSITIVE_INFINITY : onset;
                }
            };
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
