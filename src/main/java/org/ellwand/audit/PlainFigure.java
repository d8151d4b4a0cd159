package org.ellwand.audit;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.StringJoiner;
import org.ellwand.amount.Unit;
import org.ellwand.claim.Rule;
import org.ellwand.measurement.Conditions;
import org.ellwand.statistics.Errors;
import org.ellwand.statistics.NormalErrors;

/**
 * A figure as it was read, the mean of its repeats, or two of them compared.
 *
 * @param variance absent where one of the repeats has no uncertainty, and of a ratio
 * @param errors absent where nothing tells the spread
 * @param count how many figures went into it
 */
record PlainFigure(
        Conditions conditions, double value, Unit unit, Optional<Double> variance, Optional<Errors> errors, int count) {
    /** With normal errors. */
    static PlainFigure of(Conditions conditions, double value, Unit unit, Optional<Double> variance, int count) {
        return new PlainFigure(
                conditions, value, unit, variance, variance.map(v -> new NormalErrors(Math.sqrt(v))), count);
    }

    /** To be judged by itself. */
    FigureCell cell(Rule rule) {
        List<Contribution> declared = errors
                .map(Errors::standardUncertainty)
                .filter(u -> u > 0 && Double.isFinite(u))
                .map(u -> new Contribution(Contribution.OF_FIGURE, instance(rule), u))
                .stream()
                .toList();
        return new FigureCell(conditions, value, unit, errors, declared, count, List.of());
    }

    /** The session, and what tells the figure from its others. */
    private String instance(Rule rule) {
        StringJoiner instance = new StringJoiner(", ", conditions.get("session").orElse("") + "/", "");
        instance.add(rule.of().orElse(""));
        conditions.without(Set.of("session")).values().forEach((name, value) -> instance.add(name + " " + value));
        return instance.toString();
    }
}
