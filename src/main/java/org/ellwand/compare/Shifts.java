package org.ellwand.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import org.ellwand.audit.AuditRecord;
import org.ellwand.audit.Contribution;
import org.ellwand.statistics.Errors;
import org.ellwand.statistics.MixedErrors;
import org.ellwand.statistics.NormalErrors;
import org.ellwand.statistics.Scatter;

/**
 * The shift of a cell's value and its uncertainty. A draw of a declared cause that both audits share (same cause, same
 * session, insertion or reading) moves both values, so that only the difference of its effects is left; all else adds in
 * squares (JCGM 100:2008, 5.2.2). Observed scatter is a scaled t of each audit's own.
 */
final class Shifts {
    private static final double TAIL = 0.025;
    private static final double DUST = 1e-9;

    private final OptionalDouble margin;

    /** @param margin within which two values count as the same, unit of the limit */
    Shifts(OptionalDouble margin) {
        this.margin = margin;
    }

    /** @param comparable whether both were decided at the same band, so that effects may be set against each other */
    Shift of(AuditRecord.OfCell first, AuditRecord.OfCell second, boolean comparable) {
        double value = difference(second.value().orElseThrow(), first.value().orElseThrow());
        if (first.standardUncertainty().isEmpty()
                || second.standardUncertainty().isEmpty()) {
            OptionalDouble none = OptionalDouble.empty();
            return new Shift(value, none, none, none, none, none, !comparable);
        }
        boolean same = isSame(first, second, "unit") && isSame(first, second, "device");
        // A figure that reads otherwise was read again.
        boolean again = value != 0;
        return shift(
                value,
                errors(first, second, comparable, draw -> draw.isOfFigure() ? !again : same || draw.isOfAllUnits()),
                comparable);
    }

    /** Two sums of the same numbers differ in their last digits: that is no shift. */
    private static double difference(double second, double first) {
        double value = second - first;
        return Math.abs(value) < DUST * Math.max(1, Math.abs(first)) ? 0 : value;
    }

    private Shift shift(double value, Errors errors, boolean comparable) {
        double away = Math.abs(value);
        double chance = away == 0 ? 1 : Math.min(1, 2 * errors.atLeast(away));
        return new Shift(
                value,
                OptionalDouble.of(errors.standardUncertainty()),
                OptionalDouble.of(value + errors.quantile(TAIL)),
                OptionalDouble.of(value + errors.quantile(1 - TAIL)),
                OptionalDouble.of(chance),
                margin.isPresent()
                        ? OptionalDouble.of(within(away, margin.getAsDouble(), errors))
                        : OptionalDouble.empty(),
                !comparable);
    }

    /** The less certain of the two one-sided statements: that the shift lies below the margin, and above its negative. */
    private static double within(double away, double margin, Errors errors) {
        return errors.atMost(margin - away);
    }

    private static boolean isSame(AuditRecord.OfCell first, AuditRecord.OfCell second, String condition) {
        return Objects.equals(
                first.conditions().get(condition), second.conditions().get(condition));
    }

    /** @param shared which draws of the same name are one */
    private static Errors errors(
            AuditRecord.OfCell first, AuditRecord.OfCell second, boolean comparable, Predicate<Draw> shared) {
        Map<Draw, Double> effects = new LinkedHashMap<>();
        List<Scatter> scatters = new ArrayList<>();
        double square = 0;
        for (Contribution one : second.contributions()) {
            if (one.degreesOfFreedom().isPresent()) {
                scatters.add(new Scatter(one.degreesOfFreedom().getAsInt(), one.effect()));
            } else {
                effects.put(Draw.of(one), one.effect());
            }
        }
        for (Contribution one : first.contributions()) {
            Draw draw = Draw.of(one);
            if (one.degreesOfFreedom().isPresent()) {
                scatters.add(new Scatter(one.degreesOfFreedom().getAsInt(), one.effect()));
            } else if (comparable && effects.containsKey(draw) && shared.test(draw)) {
                double left = effects.getOrDefault(draw, 0.0) - one.effect();
                effects.put(draw, left);
            } else {
                square += one.effect() * one.effect();
            }
        }
        for (double effect : effects.values()) {
            square += effect * effect;
        }
        return scatters.isEmpty() ? new NormalErrors(Math.sqrt(square)) : new MixedErrors(Math.sqrt(square), scatters);
    }
}
