package org.ellwand.report;

import org.ellwand.amount.Unit;
import org.ellwand.claim.Rule;
import org.ellwand.claim.Statistic;

/** What of a rule decides how its numbers are shown. */
final class Wording {
    private Wording() {}

    /** Whether the value was worked out of given numbers and has no uncertainty of its own: a rating. */
    static boolean isCalculated(Rule rule) {
        return rule.quantity().equals("rating");
    }

    /** Whether a single band of the curve can be held against the limit at sight. */
    static boolean curveComparesWithLimit(Rule rule) {
        boolean level = rule.limit().unit().isLevel() || rule.limit().unit() == Unit.DB;
        return level && rule.statistic().map(Wording::speaksOfBands).orElse(true);
    }

    private static boolean speaksOfBands(Statistic statistic) {
        return !statistic.comparesBands() && statistic != Statistic.OVERALL;
    }
}
