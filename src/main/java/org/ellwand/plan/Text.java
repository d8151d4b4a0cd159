package org.ellwand.plan;

import java.util.Locale;
import org.ellwand.amount.Unit;

/** Numbers as a plan prints them. */
final class Text {
    private Text() {}

    static String number(double value, int decimals) {
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        return text.matches("-0(\\.0*)?") ? text.substring(1) : text;
    }

    /** With a true minus sign. */
    static String amount(double value, int decimals, Unit unit) {
        String number = number(value, decimals).replace('-', '\u2212');
        return unit == Unit.NONE ? number : number + " " + unit.symbol();
    }

    /** As a YAML scalar between quotation marks. */
    static String quoted(String text) {
        return "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    }

    static String percent(double share) {
        return Math.round(100 * share) + " %";
    }

    /** Small letters, digits and hyphens. */
    static String slug(String text) {
        return text.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
    }
}
