package org.ellwand.report;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ellwand.acoustics.Bound;
import org.ellwand.audit.Judgement;
import org.ellwand.audit.Point;
import org.ellwand.claim.Rule;

/**
 * What a judgement measured, in numbers that a template puts into words.
 *
 * <p>The value is the rule's statistic as it was observed. Uncertainty and interval are of the number that decides, which
 * for a lowest, highest or middle band, or a spread, may be another one: {@code own} tells.
 */
final class MeasuredModel {
    private final Judgement judgement;
    private final Shown shown;

    private MeasuredModel(Judgement judgement, Shown shown) {
        this.judgement = judgement;
        this.shown = shown;
    }

    static Map<String, Object> of(Judgement judgement, Rule plain) {
        return new MeasuredModel(judgement, Shown.of(judgement.rule(), plain)).model();
    }

    /** All texts are empty where nothing was measured. */
    static Map<String, Object> none() {
        return Fields.of("kind", "none")
                .and("value", "")
                .and("bound", "")
                .and("statistic", "")
                .and("own", true)
                .and("withUncertainty", "")
                .and("expandedUncertainty", "")
                .and("interval", interval("", "", ""))
                .and("point", point("", "", "", ""))
                .and("decides", decides("", 0))
                .and("correction", correction("", ""))
                .and("curve", CurveRange.none())
                .map();
    }

    private Map<String, Object> model() {
        if (judgement.value().isEmpty()) {
            return none();
        }
        boolean calculated = Wording.isCalculated(judgement.rule());
        double value = Deciding.value(judgement);
        return Fields.of("kind", calculated ? "calculated" : "measured")
                .and("value", shown.value(value))
                .and("bound", bound())
                .and(
                        "statistic",
                        judgement.rule().statistic().map(s -> s.text()).orElse(""))
                .and("own", isOwn(judgement))
                .and(
                        "withUncertainty",
                        calculated || !isOwn(judgement) ? "" : shown.pair(value, judgement.standardUncertainty()))
                .and("expandedUncertainty", calculated ? "" : shown.uncertainty(judgement.standardUncertainty(), 2))
                .and("interval", calculated ? interval("", "", "") : interval())
                .and("point", judgement.point().map(this::point).orElse(point("", "", "", "")))
                .and("decides", decides())
                .and("correction", correction())
                .and("curve", CurveRange.of(judgement))
                .map();
    }

    /** Whether uncertainty and interval are those of the value itself. */
    static boolean isOwn(Judgement judgement) {
        double value = Deciding.value(judgement);
        return judgement
                .point()
                .map(point -> Math.abs(point.value() - value) < 1e-9)
                .orElse(true);
    }

    /** {@code at least} or {@code at most} where the value is the end of what was measured. */
    private String bound() {
        return switch (judgement.point().map(Point::bound).orElse(Bound.MEASURED)) {
            case AT_LEAST -> "at least";
            case AT_MOST -> "at most";
            case MEASURED -> "";
        };
    }

    private Map<String, Object> interval() {
        return interval(
                end(judgement.lower()), end(judgement.upper()), shown.unit().symbol());
    }

    private String end(OptionalDouble value) {
        return value.isPresent() ? shown.number(value.getAsDouble()) : "";
    }

    private static Map<String, Object> interval(String lower, String upper, String unit) {
        return Fields.of("lower", lower).and("upper", upper).and("unit", unit).map();
    }

    private Map<String, Object> point(Point point) {
        return point(
                hertz(point.hz()),
                hertz(point.lessHz()),
                shown.value(point.value()),
                Wording.isCalculated(judgement.rule()) ? "" : shown.pair(point.value(), point.standardUncertainty()));
    }

    private static String hertz(OptionalDouble hz) {
        return hz.isPresent() ? Numbers.hertz(hz.getAsDouble()) : "";
    }

    private static Map<String, Object> point(String hz, String lessHz, String value, String withU) {
        return Fields.of("hz", hz)
                .and("lessHz", lessHz)
                .and("value", value)
                .and("withUncertainty", withU)
                .map();
    }

    private Map<String, Object> decides() {
        int cells = judgement.cells().size();
        Optional<String> name = Deciding.cell(judgement)
                .filter(cell -> cells > 1)
                .map(cell -> new CellNames(judgement.cells()).shortName(cell));
        return decides(name.orElse(""), name.isPresent() ? cells : 0);
    }

    private static Map<String, Object> decides(String name, int of) {
        return Fields.of("name", name).and("of", of).map();
    }

    /** Shown where it would change a printed digit. */
    private Map<String, Object> correction() {
        double added = judgement.correction().orElse(0);
        return Math.abs(added * shown.factor()) < 0.05
                ? correction("", "")
                : correction(shown.withUnit(Math.abs(added)), added > 0 ? "high" : "low");
    }

    private static Map<String, Object> correction(String size, String side) {
        return Fields.of("size", size).and("reads", side).map();
    }
}
