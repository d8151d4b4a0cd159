package org.ellwand.quantity;

import java.util.Map;
import java.util.Optional;
import org.ellwand.acoustics.SettlingTime;
import org.ellwand.amount.Dimension;
import org.ellwand.amount.Unit;
import org.ellwand.claim.QuantityForm;
import org.ellwand.claim.Rule;
import org.ellwand.measurement.Step;
import org.ellwand.measurement.Trace;
import org.ellwand.pairing.Joined;
import org.ellwand.pairing.Source;

/** Attack time (after a step up) and release time (after a step down): {@link SettlingTime}. */
final class SettlingQuantity implements CellQuantity {
    private static final double MS_PER_S = 1000;

    private final boolean attack;

    private SettlingQuantity(boolean attack) {
        this.attack = attack;
    }

    static SettlingQuantity attack() {
        return new SettlingQuantity(true);
    }

    static SettlingQuantity release() {
        return new SettlingQuantity(false);
    }

    @Override
    public QuantityForm form() {
        return new QuantityForm(
                attack ? "attack time" : "release time",
                Dimension.TIME,
                Map.of("within", "a time ends where the level stays within a stated distance of the steady level"),
                Keys.ofNumbers(),
                "ms",
                "from the step until the level stays within a stated distance of the new steady level");
    }

    @Override
    public Source source(Rule rule) {
        double withinDb = Settings.decibels(rule, "within");
        return new TraceSource(
                this::isOfTheDirection,
                (session, trace, dropped) -> trace.step()
                        .map(step ->
                                SettlingTime.seconds(trace.levels(), step.at().in(Unit.SECOND), withinDb)),
                MS_PER_S,
                Optional.of(Unit.MILLISECOND));
    }

    private boolean isOfTheDirection(Trace trace) {
        return trace.step().map(this::isOfTheDirection).orElse(false);
    }

    private boolean isOfTheDirection(Step step) {
        return attack == (step.to().value() > step.from().value());
    }

    @Override
    public Rule completed(Rule rule) {
        return Keys.ofOneNumber(rule);
    }

    @Override
    public Formula formula(Joined joined, Rule rule) {
        double unitMs = rule.limit().unit().dimension() == Dimension.TIME
                ? rule.limit().unit().factor() * MS_PER_S
                : 1;
        return new NumberFormula(joined.first(), 1 / unitMs);
    }
}
