package org.ellwand.report;

import java.util.Locale;
import org.ellwand.amount.Unit;
import org.ellwand.audit.CellResult;
import org.ellwand.claim.Rule;
import org.ellwand.claim.Statistic;

/** What figures call the things they show. */
final class Wording {
    private Wording() {}

    /** {@code attenuation}, {@code attenuation, flood less ebb}. */
    static String quantity(Rule rule) {
        boolean named = rule.quantity().equals("figure") || isCalculated(rule);
        String name = named ? rule.of().orElse(rule.quantity()) : rule.quantity();
        return rule.between()
                .map(between -> name + ", " + between.first() + (rule.ratio() ? " over " : " less ") + between.second())
                .orElse(name);
    }

    /** Whether the value was worked out of given numbers and has no uncertainty of its own: a rating. */
    static boolean isCalculated(Rule rule) {
        return rule.quantity().equals("rating");
    }

    /** What a cell is called beside its value. */
    static String cell(Rule rule, CellNames names, CellResult cell) {
        return isCalculated(rule) ? "calculated" : names.shortName(cell);
    }

    /** With a capital and the unit, as axes are labelled. */
    static String axis(Rule rule, Unit unit) {
        String name = quantity(rule);
        String capital = name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
        return unit == Unit.NONE ? capital : capital + " (" + unit(rule, unit) + ")";
    }

    private static String unit(Rule rule, Unit unit) {
        if (rule.between().isPresent()) {
            return unit.symbol();
        }
        return rule.quantity().equals("insertion gain") ? "dB re open ear" : unit.symbol();
    }

    /** Of what the limit speaks, for a label beside it. */
    static String subject(Rule rule) {
        return rule.statistic().map(Wording::subject).orElse("");
    }

    private static String subject(Statistic statistic) {
        return switch (statistic) {
            case EVERY_BAND -> "every band";
            case MEAN, MEDIAN -> statistic.text() + " of the bands";
            case LOWEST, HIGHEST -> statistic.text() + " band";
            case SPREAD -> "highest less lowest band";
            case SLOPE -> "slope";
            case OVERALL -> "overall";
        };
    }

    /** Whether a single band of the curve can be held against the limit at sight. */
    static boolean curveComparesWithLimit(Rule rule) {
        boolean level = rule.limit().unit().isLevel() || rule.limit().unit() == Unit.DB;
        return level && rule.statistic().map(Wording::speaksOfBands).orElse(true);
    }

    private static boolean speaksOfBands(Statistic statistic) {
        return statistic != Statistic.SPREAD && statistic != Statistic.SLOPE && statistic != Statistic.OVERALL;
    }
}
