package org.ellwand.audit;

import java.util.ArrayList;
import java.util.List;
import org.ellwand.amount.Interval;
import org.ellwand.amount.Unit;
import org.ellwand.claim.BandChoice;
import org.ellwand.claim.Choice;
import org.ellwand.claim.LevelChoice;
import org.ellwand.claim.Population;
import org.ellwand.claim.Reference;
import org.ellwand.claim.Rule;
import org.ellwand.claim.Statistic;
import org.ellwand.claim.Target;

/** A rule in one English line: {@code mean attenuation, flood, 125 Hz to 8 kHz, 90 to 100 dB SPL: 15 to 21 dB}. */
public final class RuleText {
    private RuleText() {}

    public static String of(Rule rule) {
        List<String> parts = new ArrayList<>();
        parts.add(head(rule));
        rule.between()
                .ifPresent(b -> parts.add(
                        b.first() + (rule.ratio() ? " against " : " less ") + b.second() + " (" + b.condition() + ")"));
        rule.where().forEach((name, choice) -> parts.add(condition(name, choice)));
        rule.bands().ifPresent(b -> parts.add(bands(b)));
        rule.resolution().ifPresent(r -> parts.add(r.text() + " bands"));
        rule.stimulus().ifPresent(parts::add);
        rule.level().ifPresent(l -> parts.add(level(l)));
        rule.reference().ifPresent(r -> parts.add("relative to " + reference(r)));
        rule.target().ifPresent(t -> parts.add("against " + target(t)));
        rule.ears().ifPresent(p -> parts.add(population(p, "ear")));
        rule.units().ifPresent(p -> parts.add(population(p, "unit")));
        rule.method().forEach((name, value) -> parts.add(name + " " + value));
        return String.join(", ", parts) + ": " + interval(rule.limit());
    }

    private static String head(Rule rule) {
        String statistic = rule.statistic().map(RuleText::statistic).orElse("");
        String weighting = rule.weighting().map(w -> w + "-weighted ").orElse("");
        String of = rule.of().map(o -> " (" + o + ")").orElse("");
        String frame = rule.quantity().equals("output level")
                ? rule.referredToField() ? " referred to the field" : " at the eardrum"
                : "";
        String head = weighting + statistic + rule.quantity() + of + frame;
        return rule.statistic().filter(s -> s == Statistic.EVERY_BAND).isPresent()
                ? weighting + rule.quantity() + of + frame + " in every band"
                : head;
    }

    /** {@code mean }, {@code spread of }. */
    private static String statistic(Statistic statistic) {
        boolean noun = statistic == Statistic.SPREAD || statistic == Statistic.SLOPE;
        return statistic.text() + (noun ? " of " : " ");
    }

    private static String condition(String name, Choice choice) {
        if (choice instanceof Choice.OneOf some) {
            String names = String.join(" and ", some.names());
            return name.equals("setting") ? names : name + " " + names;
        }
        return "all " + name + "s";
    }

    static String bands(BandChoice choice) {
        if (choice instanceof BandChoice.Range range) {
            Interval hz = range.hz();
            if (!hz.hasUpper()) {
                return "from " + Numbers.frequency(hz.lower());
            }
            return hz.hasLower()
                    ? Numbers.frequency(hz.lower()) + " to " + Numbers.frequency(hz.upper())
                    : "up to " + Numbers.frequency(hz.upper());
        }
        return "all bands measured";
    }

    static String level(LevelChoice choice) {
        return choice instanceof LevelChoice.Range range ? interval(range.level()) : "all levels";
    }

    private static String reference(Reference reference) {
        if (reference instanceof Reference.MeanOf mean) {
            return "its mean over " + bands(new BandChoice.Range(mean.hz()));
        }
        return Numbers.frequency(((Reference.At) reference).frequencyHz());
    }

    private static String target(Target target) {
        return target instanceof Target.Sheet sheet ? sheet.file() : "the open ear";
    }

    private static String population(Population population, String of) {
        if (population instanceof Population.Share share) {
            return Numbers.plain(share.percent()) + " % of " + of + "s";
        }
        return population instanceof Population.Mean ? "mean over " + of + "s" : "each " + of;
    }

    /** {@code 15 to 21 dB}, {@code at least 15 dB}, {@code below 90 dB SPL}. */
    static String interval(Interval interval) {
        String unit = interval.unit() == Unit.NONE ? "" : " " + interval.unit().symbol();
        if (!interval.hasUpper()) {
            return (interval.lowerOpen() ? "above " : "at least ") + Numbers.plain(clean(interval.lower())) + unit;
        }
        if (!interval.hasLower()) {
            return (interval.upperOpen() ? "below " : "at most ") + Numbers.plain(clean(interval.upper())) + unit;
        }
        return interval.lower() == interval.upper()
                ? Numbers.plain(clean(interval.lower())) + unit
                : Numbers.plain(clean(interval.lower())) + " to " + Numbers.plain(clean(interval.upper())) + unit;
    }

    /** Sums such as 0.1 + 0.2 are printed as people write them. */
    private static double clean(double value) {
        return Math.round(value * 1e9) / 1e9;
    }
}
