package org.ellwand.quantity;

import java.util.Map;
import java.util.Optional;
import org.ellwand.acoustics.LevelDrift;
import org.ellwand.amount.Dimension;
import org.ellwand.claim.QuantityForm;
import org.ellwand.claim.Rule;
import org.ellwand.pairing.Joined;
import org.ellwand.pairing.Source;

/** Level drift of a steady trace: {@link LevelDrift}. What a trace has of calibration cancels; repeats tell the spread. */
final class DriftQuantity implements CellQuantity {
    @Override
    public QuantityForm form() {
        return new QuantityForm(
                "level drift",
                Dimension.LEVEL_DIFFERENCE,
                Map.of(),
                Keys.ofNumbers(),
                "dB",
                "mean level of the last fifth of a steady trace less that of its first fifth");
    }

    @Override
    public Source source(Rule rule) {
        return new TraceSource(
                trace -> trace.step().isEmpty(),
                (session, trace, dropped) -> Optional.of(LevelDrift.db(trace.levels())),
                1,
                Optional.empty());
    }

    @Override
    public Rule completed(Rule rule) {
        return Keys.ofOneNumber(rule);
    }

    @Override
    public Formula formula(Joined joined, Rule rule) {
        return new NumberFormula(joined.first(), 1);
    }
}
