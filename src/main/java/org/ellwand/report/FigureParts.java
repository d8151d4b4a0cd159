package org.ellwand.report;

import java.util.Map;
import org.ellwand.amount.Interval;
import org.ellwand.amount.Unit;
import org.ellwand.claim.Rule;

/** What curves and ranges have in common. */
final class FigureParts {
    private FigureParts() {}

    static Map<String, Object> plot(Frame frame) {
        return Fields.of("left", Frame.px(frame.left()))
                .and("top", Frame.px(frame.top()))
                .and("right", Frame.px(frame.right()))
                .and("bottom", Frame.px(frame.bottom()))
                .and("width", Frame.px(frame.width()))
                .and("height", Frame.px(frame.height()))
                .map();
    }

    static Object tick(double at, String label) {
        return Fields.of("at", Frame.px(at)).and("label", label).map();
    }

    /** A claimed range of levels, from edge to edge; an open end reaches the plot's own edge. */
    static Object claimedAcross(Frame frame, Rule rule) {
        Interval limit = rule.limit();
        double top = limit.hasUpper() ? frame.y(limit.upper()) : frame.top();
        double bottom = limit.hasLower() ? frame.y(limit.lower()) : frame.bottom();
        return Fields.of("from", Frame.px(top))
                .and("size", Frame.px(bottom - top))
                .and("hasFrom", limit.hasUpper())
                .and("hasTo", limit.hasLower())
                .and("to", Frame.px(bottom))
                .and("label", claimed(rule))
                .and("labelAt", above(frame))
                .map();
    }

    /** Where the claimed range is named: above the plot, out of the way of the curves. */
    static String above(Frame frame) {
        return Frame.px(frame.top() - 11);
    }

    static String claimed(Rule rule) {
        String subject = Wording.subject(rule);
        return "claimed: " + Phrases.interval(rule.limit()) + (subject.isEmpty() ? "" : ", " + subject);
    }

    /** The unit of the single bands, which a slope and a weighted sum do not share. */
    static Unit curveUnit(Rule rule) {
        Unit unit = rule.limit().unit();
        boolean level = unit.isLevel() && rule.between().isEmpty();
        return unit == Unit.DB || !level ? Unit.DB : Unit.DB_SPL;
    }

    static String shortened(String text, int characters) {
        return text.codePointCount(0, text.length()) <= characters
                ? text
                : text.substring(0, text.offsetByCodePoints(0, characters - 1)) + "…";
    }
}
