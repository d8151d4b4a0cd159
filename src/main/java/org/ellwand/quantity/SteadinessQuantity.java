package org.ellwand.quantity;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.ellwand.acoustics.GainSteadiness;
import org.ellwand.acoustics.TraceNumber;
import org.ellwand.amount.Dimension;
import org.ellwand.claim.QuantityForm;
import org.ellwand.claim.Rule;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.Reading;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.Trace;
import org.ellwand.pairing.Cell;
import org.ellwand.pairing.Joined;
import org.ellwand.pairing.Source;
import org.ellwand.words.Remark;

/**
 * Gain steadiness: {@link GainSteadiness} of a trace in place and one of the open ear, of the same session, ear and
 * programme. Repeats tell the spread.
 */
final class SteadinessQuantity implements CellQuantity {
    private static final List<String> SHARED = List.of("head", "ear", "side", "stimulus");

    @Override
    public QuantityForm form() {
        return new QuantityForm(
                "gain steadiness",
                Dimension.SHARE,
                Map.of("within", "steady means within a stated distance of the mean gain"),
                Keys.ofNumbers(),
                "%",
                "share of 125 ms frames whose insertion gain lies within a stated distance of the mean gain");
    }

    @Override
    public Source source(Rule rule) {
        double withinDb = Settings.decibels(rule, "within");
        return new TraceSource(
                trace -> trace.step().isEmpty(),
                (session, trace, dropped) -> steadiness(session, trace, withinDb, dropped),
                1,
                Optional.empty());
    }

    private static Optional<TraceNumber> steadiness(
            Session session, Trace inPlace, double withinDb, Consumer<Remark> dropped) {
        Optional<Trace> open = session.traces().stream()
                .filter(trace -> isPartner(trace, inPlace))
                .findFirst();
        if (open.isEmpty()) {
            dropped.accept(Remark.of("no-open-ear-trace").with("session", session.id()));
        }
        return open.map(trace -> GainSteadiness.percent(inPlace.levels(), trace.levels(), withinDb));
    }

    private static boolean isPartner(Trace open, Trace inPlace) {
        Conditions conditions = open.conditions();
        return open.step().isEmpty()
                && conditions.get("device").equals(Optional.of(Reading.OPEN_EAR))
                && open.levelsIn() == inPlace.levelsIn()
                && SHARED.stream()
                        .allMatch(name ->
                                conditions.get(name).equals(inPlace.conditions().get(name)));
    }

    @Override
    public Rule completed(Rule rule) {
        return Keys.ofOneNumber(rule);
    }

    @Override
    public Formula formula(Joined joined, Rule rule) {
        return new NumberFormula(joined.first(), 1);
    }

    @Override
    public List<Remark> notes(List<Cell> cells, Rule rule) {
        return List.of(Remark.of("pauses-count"));
    }
}
