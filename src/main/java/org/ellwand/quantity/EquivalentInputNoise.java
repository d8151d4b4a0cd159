package org.ellwand.quantity;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ellwand.acoustics.Weighting;
import org.ellwand.amount.Dimension;
import org.ellwand.claim.QuantityForm;
import org.ellwand.claim.Rule;
import org.ellwand.claim.Statistic;
import org.ellwand.pairing.Cell;
import org.ellwand.pairing.Joined;
import org.ellwand.pairing.Joining;
import org.ellwand.words.Remark;

/**
 * Equivalent input noise: the output level in quiet, each band less the insertion gain at the lowest level measured (so:
 * referred to the open ear), A-weighted sum. (Output noise less gain: ANSI S3.22, IEC 60118-0, from memory; those refer to
 * a coupler and to the high-frequency average.)
 */
final class EquivalentInputNoise implements SpectralQuantity {
    @Override
    public QuantityForm form() {
        return new QuantityForm(
                "equivalent input noise",
                Dimension.LEVEL_A,
                Map.of("bands", "a noise is summed over stated bands"),
                OutputSums.usable("limit weighting"),
                "dB(A)",
                "output level in quiet, each band less the insertion gain at the lowest level, A-weighted sum");
    }

    @Override
    public Joining joining() {
        return Joining.QUIET_AND_LOWEST;
    }

    @Override
    public Rule completed(Rule rule) {
        return rule.with(Statistic.OVERALL, Weighting.A);
    }

    @Override
    public List<CurvePart> parts(Rule rule) {
        return List.of(new CurvePart(1, -1, 1, 0, 1, Optional.empty(), Optional.empty()));
    }

    @Override
    public Formula formula(Joined joined, Rule rule) {
        Cell quiet = joined.cells().get(0);
        Cell lowest = joined.cells().get(1);
        return new CellFormula(lowest, Optional.of(quiet), parts(rule));
    }

    @Override
    public List<Remark> notes(List<Cell> cells, Rule rule) {
        return cells.stream()
                .flatMap(cell -> cell.stimulus().stream())
                .filter(sound -> !sound.isQuiet())
                .map(sound -> Remark.of("referred-by-gain").with("stimulus", sound.id()))
                .distinct()
                .toList();
    }
}
