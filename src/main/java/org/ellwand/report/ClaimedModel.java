package org.ellwand.report;

import java.util.Map;
import java.util.OptionalDouble;
import org.ellwand.amount.Interval;
import org.ellwand.audit.Judgement;
import org.ellwand.claim.Rule;

/**
 * What number the sentence names, and how far from it the measured one lies. Of a number with a tolerance it is the
 * number, of a one-sided limit its end, of a range the nearest end.
 */
final class ClaimedModel {
    private final Judgement judgement;
    private final Shown shown;
    private final Interval limit;

    private ClaimedModel(Judgement judgement) {
        this.judgement = judgement;
        this.shown = Shown.of(judgement.rule(), judgement.rule());
        this.limit = judgement.rule().limit();
    }

    static Map<String, Object> of(Judgement judgement) {
        return new ClaimedModel(judgement).model();
    }

    static Map<String, Object> none() {
        return model("none", "", "", "", "");
    }

    private Map<String, Object> model() {
        String kind = kind();
        double named = named(kind);
        String value = kind.equals("range") ? "" : shown.written(named);
        if (judgement.value().isEmpty()) {
            return model(kind, value, "", "", "");
        }
        double measured = Deciding.value(judgement);
        boolean inside = kind.equals("range") && limit.contains(measured);
        double difference = inside ? 0 : measured - named;
        String size = shown.difference(Math.abs(difference), measured);
        String side = inside ? "inside" : difference < 0 ? "below" : "above";
        return model(kind, value, inside ? "" : size, side, inside ? "" : against(Math.abs(difference)));
    }

    /** Against U; empty where the uncertainty is not of this value, or not known, or none. */
    private String against(double difference) {
        OptionalDouble u = judgement.standardUncertainty();
        boolean known = u.isPresent() && u.getAsDouble() > 0 && MeasuredModel.isOwn(judgement);
        return known ? difference > 2 * u.getAsDouble() ? "more" : "less" : "";
    }

    private String kind() {
        if (!limit.hasLower() || !limit.hasUpper()) {
            return limit.hasLower() ? "least" : limit.hasUpper() ? "most" : "none";
        }
        return limit.lower() == limit.upper() || isAroundANumber(judgement.rule()) ? "number" : "range";
    }

    private static boolean isAroundANumber(Rule rule) {
        String written =
                rule.stated().getOrDefault("limit", "") + rule.assumed().getOrDefault("limit", "");
        return written.contains("±")
                || rule.stated().containsKey("tolerance")
                || rule.assumed().containsKey("tolerance");
    }

    private double named(String kind) {
        return switch (kind) {
            case "least" -> limit.lower();
            case "most" -> limit.upper();
            case "number" -> (limit.lower() + limit.upper()) / 2;
            case "range" -> Deciding.value(judgement) < limit.lower() ? limit.lower() : limit.upper();
            default -> 0;
        };
    }

    private static Map<String, Object> model(String kind, String value, String difference, String side, String isU) {
        return Fields.of("kind", kind)
                .and("value", value)
                .and("difference", difference)
                .and("side", side)
                .and("againstUncertainty", isU)
                .map();
    }
}
