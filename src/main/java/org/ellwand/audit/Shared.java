package org.ellwand.audit;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.ellwand.claim.Population;
import org.ellwand.claim.Rule;
import org.ellwand.claim.Statistic;
import org.ellwand.input.InputException;

/** Rules about a share of people or products. */
final class Shared {
    private static final List<Statistic> STATISTICS =
            List.of(Statistic.EVERY_BAND, Statistic.MEAN, Statistic.SLOPE, Statistic.OVERALL);

    private Shared() {}

    /** The share that a rule speaks of, above 0 and below 1; absent where it speaks of none. */
    static Optional<Double> of(Rule rule) {
        return shares(rule).map(s -> s.percent() / 100).findFirst();
    }

    /** Refuses a share that no evidence can be about. */
    static void check(Rule rule) throws InputException {
        if (shares(rule).count() > 1) {
            throw new InputException(
                    rule.place(), "'ears' and 'units' cannot both be a share: say 'each' or 'mean' of one of them");
        }
        Optional<Statistic> statistic = rule.statistic().filter(s -> !STATISTICS.contains(s));
        if (of(rule).isPresent() && statistic.isPresent()) {
            throw new InputException(
                    rule.place(),
                    "a share cannot be told by 'statistic: " + statistic.get().text()
                            + "', which noise shifts in every ear: it takes every band, mean, slope, overall");
        }
    }

    private static Stream<Population.Share> shares(Rule rule) {
        return Stream.of(rule.ears(), rule.units())
                .flatMap(Optional::stream)
                .filter(Population.Share.class::isInstance)
                .map(Population.Share.class::cast);
    }
}
