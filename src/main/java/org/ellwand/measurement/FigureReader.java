package org.ellwand.measurement;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ellwand.amount.Amount;
import org.ellwand.amount.Unit;

/** Reads {@code figures}. */
final class FigureReader {
    static final List<String> KEYS = List.of("of", "value", "uncertainty", "product");

    private final ConditionFiller filler;
    private final Set<String> conditions;

    FigureReader(ConditionFiller filler, Set<String> conditions) {
        this.filler = filler;
        this.conditions = conditions;
    }

    List<Figure> read(Keys session) {
        List<Figure> figures = new ArrayList<>();
        session.mappings("figures").forEach(keys -> figure(keys).ifPresent(figures::add));
        return List.copyOf(figures);
    }

    private Optional<Figure> figure(Keys keys) {
        keys.onlyKnown("a figure", ConditionNames.after(KEYS, conditions));
        keys.need("of", "say what was measured");
        keys.need("value", "give the figure with its unit");
        Optional<String> of = keys.text("of");
        Optional<Amount> value = keys.amount("value", unit -> true, "a number with its unit");
        Optional<Amount> uncertainty = value.flatMap(v -> uncertainty(keys, v));
        Optional<Conditions> filled = filler.fill(keys.conditions(conditions), Map.of(), keys.place());
        if (of.isEmpty() || value.isEmpty() || filled.isEmpty()) {
            return Optional.empty();
        }
        filler.once("figure of " + of.get(), filled.get(), keys.place());
        return Optional.of(new Figure(of.get(), value.get(), uncertainty, filled.get(), keys.place()));
    }

    /** A level has its uncertainty in dB, everything else in a unit of its own kind. */
    private static Optional<Amount> uncertainty(Keys keys, Amount value) {
        Optional<Amount> size = keys.amount(
                "uncertainty",
                unit -> value.unit().isLevel()
                        ? unit == Unit.DB
                        : unit.dimension() == value.unit().dimension(),
                "a standard uncertainty in " + (value.unit().isLevel() ? "dB" : "the unit of the value"));
        if (size.isPresent() && size.get().value() < 0) {
            keys.problems().add(keys.placeOf("uncertainty"), "a standard uncertainty is not negative");
        }
        return size;
    }
}
