package org.ellwand.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import org.ellwand.acoustics.Bound;
import org.ellwand.amount.Interval;
import org.ellwand.amount.Unit;
import org.ellwand.audit.Judgement;
import org.ellwand.audit.Point;

/** The measured value of a judgement in the words that tables print. */
final class MeasuredModel {
    private MeasuredModel() {}

    /** All texts are empty where nothing was measured. */
    static Map<String, Object> of(Judgement judgement) {
        return Fields.of("value", value(judgement))
                .and("expandedUncertainty", expanded(judgement))
                .and("interval", interval(judgement))
                .and("point", judgement.point().map(MeasuredModel::point).orElse(""))
                .and("decides", decides(judgement))
                .and("correction", correction(judgement))
                .and("text", text(judgement))
                .map();
    }

    static Map<String, Object> none() {
        return Fields.of("value", "")
                .and("expandedUncertainty", "")
                .and("interval", "")
                .and("point", "")
                .and("decides", "")
                .and("correction", "")
                .and("text", "")
                .map();
    }

    static String value(Judgement judgement) {
        Interval limit = judgement.rule().limit();
        return judgement.value().isPresent()
                ? bound(judgement)
                        + Numbers.withUnit(
                                Numbers.value(judgement.value().getAsDouble(), limit.unit(), limit), limit.unit())
                : "";
    }

    /** {@code above } or {@code below } where the value is the end of what was measured. */
    private static String bound(Judgement judgement) {
        return switch (judgement.point().map(Point::bound).orElse(Bound.MEASURED)) {
            case AT_LEAST -> "above ";
            case AT_MOST -> "below ";
            case MEASURED -> "";
        };
    }

    /** {@code 16.6 dB; U = 1.0 dB (k = 2); 95 % interval 15.6 to 17.6 dB}; {@code 21.9 dB, calculated}. */
    private static String text(Judgement judgement) {
        if (Wording.isCalculated(judgement.rule()) && judgement.value().isPresent()) {
            return value(judgement) + ", calculated";
        }
        List<String> parts = new ArrayList<>();
        String expanded = expanded(judgement);
        String interval = interval(judgement);
        parts.add(value(judgement));
        if (!expanded.isEmpty()) {
            parts.add("U = " + expanded + " (k = 2)");
        }
        if (!interval.isEmpty()) {
            parts.add("95 % interval " + interval);
        }
        return parts.get(0).isEmpty() ? "" : String.join("; ", parts);
    }

    private static String expanded(Judgement judgement) {
        if (Wording.isCalculated(judgement.rule())) {
            return "";
        }
        Unit unit = judgement.rule().limit().unit();
        return text(judgement.standardUncertainty(), u -> Numbers.withUnit(Numbers.expanded(u), unit));
    }

    /** Both ends; {@code from 89.2 dB SPL} or {@code up to 89.2 dB SPL} where the other lies beyond what was measured. */
    static String interval(Judgement judgement) {
        if (Wording.isCalculated(judgement.rule())) {
            return "";
        }
        Unit unit = judgement.rule().limit().unit();
        String lower = text(judgement.lower(), value -> Numbers.value(value, unit));
        String upper = text(judgement.upper(), value -> Numbers.value(value, unit));
        if (lower.isEmpty() || upper.isEmpty()) {
            String end = lower + upper;
            return end.isEmpty() ? "" : (lower.isEmpty() ? "up to " : "from ") + Numbers.withUnit(end, unit);
        }
        return Numbers.withUnit(lower + " to " + upper, unit);
    }

    /** {@code crew-02-right, the least favourable of 2}; empty where one cell is all there is. */
    static String decides(Judgement judgement) {
        int cells = judgement.cells().size();
        return cells < 2
                ? ""
                : Deciding.cell(judgement)
                        .map(cell ->
                                new CellNames(judgement.cells()).shortName(cell) + ", the least favourable of " + cells)
                        .orElse("");
    }

    /** {@code at 2 kHz}; empty where the point is a whole cell. */
    static String point(Point point) {
        if (point.hz().isEmpty()) {
            return "";
        }
        String less = point.lessHz().isPresent()
                ? " less " + Numbers.hertz(point.lessHz().getAsDouble())
                : "";
        return "at " + Numbers.hertz(point.hz().getAsDouble()) + less;
    }

    /** Shown where it would change a printed digit. */
    private static String correction(Judgement judgement) {
        Unit unit = judgement.rule().limit().unit();
        return text(
                judgement.correction(),
                added -> Math.abs(added) < 0.05 ? "" : Numbers.withUnit(Numbers.value(added, unit), unit));
    }

    private static String text(OptionalDouble value, DoubleFunction<String> words) {
        return value.isPresent() ? words.apply(value.getAsDouble()) : "";
    }
}
