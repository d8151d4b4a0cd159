package org.ellwand.plan;

import java.util.Locale;
import java.util.regex.Pattern;
import org.ellwand.amount.Unit;

/** Numbers as a plan prints them. */
final class Text {
    private static final Pattern OTHER_LETTER = Pattern.compile("[\\p{L}\\p{N}&&[^a-z0-9]]");

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

    /**
     * Small letters, digits and hyphens, which every file system takes. A text with other letters has a number of its own behind it, for
     * Größe and Grüße would come to the same.
     */
    static String slug(String text) {
        String small = text.toLowerCase(Locale.ROOT);
        String plain = small.replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
        return OTHER_LETTER.matcher(small).find()
                ? (plain + "-" + Integer.toHexString(small.hashCode())).replaceAll("^-", "")
                : plain;
    }
}
