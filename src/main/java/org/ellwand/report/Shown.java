package org.ellwand.report;

import java.util.Map;
import java.util.OptionalDouble;
import org.ellwand.amount.Interval;
import org.ellwand.amount.Unit;
import org.ellwand.claim.Rule;

/**
 * How the numbers of a rule are printed: in the unit of its limit. A ratio whose limit was written in per cent is printed
 * in per cent, though it is judged as a plain number.
 *
 * @param unit printed behind the numbers
 * @param factor from a number of the rule to a printed one
 * @param limit in {@code unit}
 */
record Shown(Unit unit, double factor, Interval limit) {
    private static final String LIMIT = "limit";
    private static final int MOST_DECIMALS = 2;

    /** @param plain the plain rule of the same claim, which says how the limit was written */
    static Shown of(Rule rule, Rule plain) {
        boolean percent = rule.ratio() && (written(rule) + written(plain)).contains("%");
        Interval limit = rule.limit();
        if (!percent) {
            return new Shown(limit.unit(), 1, limit);
        }
        Interval scaled = new Interval(
                100 * limit.lower(), 100 * limit.upper(), limit.lowerOpen(), limit.upperOpen(), Unit.PERCENT);
        return new Shown(Unit.PERCENT, 100, scaled);
    }

    private static String written(Rule rule) {
        return rule.stated().getOrDefault(LIMIT, "") + rule.assumed().getOrDefault(LIMIT, "");
    }

    /** A value that is held against the limit: it never seems to lie on another side of it than it does. */
    String value(double value) {
        return Numbers.withUnit(Numbers.value(value * factor, unit, limit), unit);
    }

    /** A number held against nothing, without its unit. */
    String number(double value) {
        return Numbers.value(value * factor, unit);
    }

    String withUnit(double value) {
        return Numbers.withUnit(number(value), unit);
    }

    /** Two significant digits, with the unit; empty where there is none. */
    String uncertainty(OptionalDouble value, double times) {
        return value.isPresent()
                ? Numbers.withUnit(Numbers.significant(value.getAsDouble() * factor * times, 2), ofDifferences())
                : "";
    }

    /**
     * {@code 13.13 ± 0.11 dB}: U with two significant digits and two decimals at most, and the value with as many. Empty
     * where there is no uncertainty.
     */
    String pair(double value, OptionalDouble standardUncertainty) {
        if (standardUncertainty.isEmpty()) {
            return "";
        }
        double expanded = 2 * standardUncertainty.getAsDouble() * factor;
        String digits = Numbers.significant(expanded, 2);
        int decimals = Math.max(
                decimals(Numbers.value(value * factor, unit, limit)), Math.min(decimals(digits), MOST_DECIMALS));
        boolean vanishes = Numbers.fixed(expanded, decimals).matches("0[.0]*");
        return vanishes
                ? value(value) + " ± " + Numbers.withUnit(digits, ofDifferences())
                : Numbers.withUnit(
                        Numbers.fixed(value * factor, decimals) + " ± " + Numbers.fixed(expanded, decimals), unit);
    }

    /** A difference from a printed value: as many decimals as that has. */
    String difference(double size, double from) {
        int decimals = decimals(Numbers.value(from * factor, unit, limit));
        return Numbers.withUnit(Numbers.fixed(size * factor, decimals), ofDifferences());
    }

    /** A number as it was written in a claim: no more digits than it has. */
    String written(double value) {
        return Numbers.withUnit(end(value * factor), unit);
    }

    /** Levels differ by decibels without a reference. */
    private Unit ofDifferences() {
        return unit.ofDifferences();
    }

    private static int decimals(String number) {
        int point = number.indexOf('.');
        return point < 0 ? 0 : number.length() - point - 1;
    }

    /** The limit as a template words it. */
    Map<String, Object> limitModel() {
        return Fields.of("kind", kind())
                .and("lower", limit.hasLower() ? end(limit.lower()) : "")
                .and("upper", limit.hasUpper() ? end(limit.upper()) : "")
                .and("unit", unit.symbol())
                .map();
    }

    private static String end(double value) {
        return Numbers.plain(Math.round(value * 1e9) / 1e9);
    }

    private String kind() {
        if (limit.hasLower() && limit.hasUpper()) {
            return limit.lower() == limit.upper() ? "exactly" : "between";
        }
        if (limit.hasLower()) {
            return limit.lowerOpen() ? "above" : "at least";
        }
        return limit.hasUpper() ? limit.upperOpen() ? "below" : "at most" : "any";
    }

    static Map<String, Object> noLimit() {
        return Fields.of("kind", "none")
                .and("lower", "")
                .and("upper", "")
                .and("unit", "")
                .map();
    }
}
