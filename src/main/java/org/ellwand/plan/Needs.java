package org.ellwand.plan;

import java.util.List;
import org.ellwand.amount.Interval;
import org.ellwand.audit.CellResult;
import org.ellwand.audit.Judgement;
import org.ellwand.audit.Point;
import org.ellwand.claim.Rule;
import org.ellwand.claim.Statistic;
import org.ellwand.statistics.Errors;
import org.ellwand.statistics.MixedErrors;
import org.ellwand.statistics.NormalErrors;
import org.ellwand.statistics.Scatter;

/**
 * What a judgement lacks to be firm.
 *
 * @param plain with a value and a standard uncertainty
 */
record Needs(Judgement plain, double confidence) {
    /** Of a spread every pair of bands is judged, in both directions. */
    static Interval limit(Rule rule) {
        Interval limit = rule.limit();
        boolean pairs = rule.statistic().filter(s -> s == Statistic.SPREAD).isPresent() && limit.hasUpper();
        return pairs ? Interval.of(-limit.upper(), limit.upper(), limit.unit()) : limit;
    }

    /** How many numbers a claim was judged by. */
    private int points() {
        Statistic statistic = plain.rule().statistic().orElse(Statistic.MEAN);
        int points = 0;
        for (CellResult cell : plain.cells()) {
            int bands = cell.bands().size();
            points += switch (statistic) {
                case EVERY_BAND, LOWEST, HIGHEST, MEDIAN -> bands;
                case SPREAD -> bands * (bands - 1);
                case MEAN, SLOPE, OVERALL -> 1;
            };
        }
        return Math.max(points, 1);
    }

    Chance chance() {
        return Chance.ofSeveral(limit(plain.rule()), confidence, points());
    }

    /** As the judge sees them: normal, or with the t of what few repeats show. */
    private Errors errors() {
        List<Scatter> scatters = Uncertain.contributions(plain).stream()
                .filter(c -> c.degreesOfFreedom().isPresent())
                .map(c -> new Scatter(c.degreesOfFreedom().orElseThrow(), c.effect()))
                .toList();
        return scatters.isEmpty()
                ? new NormalErrors(plain.standardUncertainty().orElseThrow())
                : new MixedErrors(Uncertain.declared(plain), scatters);
    }

    /** The narrowest limit that the value as measured would pass. */
    String wouldPass() {
        Interval limit = limit(plain.rule());
        double value = plain.point().map(Point::value).orElse(plain.value().orElseThrow());
        double u = plain.standardUncertainty().orElseThrow();
        double margin = -errors().quantile(1 - confidence);
        int decimals = Math.max(1, (int) Math.ceil(-Math.log10(Math.max(u, 1e-6))));
        double step = Math.pow(10, -decimals);
        if (limit.hasLower() && limit.hasUpper()) {
            double half = chance().tolerance(value, errors());
            return "± " + Text.amount(Math.ceil(half / step) * step, decimals, limit.unit());
        }
        return limit.hasLower()
                ? "\u2265 " + Text.amount(Math.floor((value - margin) / step) * step, decimals, limit.unit())
                : "\u2264 " + Text.amount(Math.ceil((value + margin) / step) * step, decimals, limit.unit());
    }
}
