package org.ellwand.report;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.ellwand.acoustics.Weighting;
import org.ellwand.amount.Interval;
import org.ellwand.amount.Unit;
import org.ellwand.claim.BandChoice;
import org.ellwand.claim.Between;
import org.ellwand.claim.Choice;
import org.ellwand.claim.LevelChoice;
import org.ellwand.claim.Rule;
import org.ellwand.claim.Statistic;
import org.ellwand.input.Place;

/** Rules of the sample audit. */
final class SampleRules {
    static final Place PLACE = new Place("claims/skerry-tide.yaml", 10, 5);

    private SampleRules() {}

    static Rule attenuation(String name, Statistic statistic, Interval limit) {
        return rule(name, "attenuation", Optional.of(statistic), limit, Optional.empty(), Optional.empty());
    }

    static Rule gain(Interval limit) {
        return rule(
                "plain",
                "insertion gain",
                Optional.of(Statistic.EVERY_BAND),
                limit,
                Optional.empty(),
                Optional.empty());
    }

    static Rule overall(Interval limit) {
        return rule("plain", "attenuation", Optional.of(Statistic.OVERALL), limit, Optional.empty(), Optional.empty());
    }

    static Rule difference(Interval limit) {
        return rule(
                "plain",
                "attenuation",
                Optional.of(Statistic.MEAN),
                limit,
                Optional.of(new Between("setting", "flood", "ebb")),
                Optional.empty());
    }

    static Rule battery(Interval limit) {
        return rule("plain", "figure", Optional.empty(), limit, Optional.empty(), Optional.of("battery life"));
    }

    private static Rule rule(
            String name,
            String quantity,
            Optional<Statistic> statistic,
            Interval limit,
            Optional<Between> between,
            Optional<String> of) {
        return new Rule(
                name,
                quantity,
                limit,
                statistic,
                of.isPresent() ? Optional.empty() : Optional.of(new BandChoice.Range(Interval.of(125, 8000, Unit.HZ))),
                Optional.empty(),
                statistic.filter(s -> s == Statistic.OVERALL).map(s -> Weighting.A),
                between.isPresent() || of.isPresent()
                        ? Map.of()
                        : Map.of("setting", new Choice.OneOf(List.of("flood"))),
                Optional.empty(),
                of.isPresent()
                        ? Optional.empty()
                        : Optional.of(new LevelChoice.Range(Interval.of(90, 100, Unit.DB_SPL))),
                false,
                between,
                false,
                Optional.empty(),
                Optional.empty(),
                of,
                Optional.empty(),
                Optional.empty(),
                Map.of(),
                new TreeMap<>(Map.of("quantity", quantity, "setting", "flood")),
                new TreeMap<>(Map.of("tolerance", "3 dB", "bands", "125 Hz to 8 kHz")),
                Map.of(),
                PLACE);
    }
}
