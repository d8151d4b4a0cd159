package org.ellwand.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
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
import org.ellwand.words.Figures;
import org.ellwand.words.Remark;
import org.ellwand.words.Sentences;

/** A rule in one line: {@code mean attenuation, flood, 125 Hz to 8 kHz, 90 to 100 dB SPL: 15 to 21 dB}. */
public final class RuleText {
    private RuleText() {}

    /**
     * {@return the line in English}
     *
     * @param rule plain, or one of the others
     */
    public static String of(Rule rule) {
        return of(rule, Sentences.english());
    }

    /**
     * {@return the line in these sentences}
     *
     * @param rule plain, or one of the others
     * @param sentences what the parts of a rule say
     */
    public static String of(Rule rule, Sentences sentences) {
        return sentences
                .of(Remark.of("rule").with("parts", parts(rule)).with("limit", limit(rule.limit())))
                .strip();
    }

    /**
     * {@return what the limit is a limit of, which stands before the colon}
     *
     * @param rule plain, or one of the others
     * @param sentences in whose words
     */
    public static String subject(Rule rule, Sentences sentences) {
        return sentences.of(parts(rule)).strip();
    }

    private static Remark parts(Rule rule) {
        List<Remark> parts = new ArrayList<>();
        parts.add(head(rule));
        rule.between()
                .ifPresent(b -> parts.add(Remark.of(rule.ratio() ? "rule-against" : "rule-less")
                        .with("first", b.first())
                        .with("second", b.second())
                        .with("condition", b.condition())));
        rule.where().forEach((name, choice) -> parts.add(condition(name, choice)));
        rule.bands().map(RuleText::ofBands).ifPresent(parts::add);
        rule.resolution().ifPresent(r -> parts.add(Remark.of("rule-resolution").with("resolution", r.text())));
        rule.stimulus().ifPresent(s -> parts.add(Remark.of("rule-stimulus").with("stimulus", s)));
        rule.level().map(RuleText::ofLevel).ifPresent(parts::add);
        rule.reference().map(RuleText::reference).ifPresent(parts::add);
        rule.target().map(RuleText::target).ifPresent(parts::add);
        rule.ears().ifPresent(p -> parts.add(population(p, "ear")));
        rule.units().ifPresent(p -> parts.add(population(p, "unit")));
        rule.method()
                .forEach((name, value) ->
                        parts.add(Remark.of("rule-method").with("name", name).with("value", value)));
        return joined(parts, "rule-part-and-part");
    }

    private static Remark joined(List<Remark> parts, String with) {
        return parts.stream()
                .reduce((first, second) -> Remark.of(with).with("first", first).with("second", second))
                .orElseThrow();
    }

    private static Remark head(Rule rule) {
        Remark head = Remark.of(rule.statistic().map(RuleText::key).orElse("rule-number"))
                .with("quantity", rule.quantity());
        if (rule.weighting().isPresent()) {
            head = head.with(
                    "weighting",
                    Remark.of("rule-weighted")
                            .with("weighting", rule.weighting().get()));
        }
        if (rule.of().isPresent()) {
            head = head.with("of", Remark.of("rule-of").with("of", rule.of().get()));
        }
        return rule.quantity().equals("output level")
                ? head.with("frame", Remark.of(rule.referredToField() ? "rule-in-field" : "rule-at-eardrum"))
                : head;
    }

    private static String key(Statistic statistic) {
        return "rule-" + statistic.text().replace(' ', '-');
    }

    private static Remark condition(String name, Choice choice) {
        if (choice instanceof Choice.OneOf some) {
            List<Remark> names = some.names().stream()
                    .map(one -> Remark.of("rule-setting").with("names", one))
                    .toList();
            Remark joined = joined(names, "rule-name-and-name");
            return name.equals("setting")
                    ? joined
                    : Remark.of("rule-condition").with("name", name).with("names", joined);
        }
        return Remark.of("rule-all").with("name", name);
    }

    private static Remark ofBands(BandChoice choice) {
        if (choice instanceof BandChoice.Range range) {
            Interval hz = range.hz();
            Remark bands = Remark.of(bandsKey(hz));
            if (hz.hasLower()) {
                bands = bands.with("lower", Figures.frequency(hz.lower()));
            }
            return hz.hasUpper() ? bands.with("upper", Figures.frequency(hz.upper())) : bands;
        }
        return Remark.of("rule-all-bands");
    }

    private static String bandsKey(Interval hz) {
        if (hz.hasLower() && hz.hasUpper()) {
            return "rule-bands";
        }
        return hz.hasLower()
                ? hz.lowerOpen() ? "rule-bands-above" : "rule-bands-from"
                : hz.upperOpen() ? "rule-bands-below" : "rule-bands-up-to";
    }

    private static Remark ofLevel(LevelChoice choice) {
        return choice instanceof LevelChoice.Range range ? limit(range.level()) : Remark.of("rule-all-levels");
    }

    private static Remark reference(Reference reference) {
        if (reference instanceof Reference.MeanOf mean) {
            return Remark.of("rule-relative-to-mean").with("bands", ofBands(new BandChoice.Range(mean.hz())));
        }
        return Remark.of("rule-relative")
                .with("reference", Figures.frequency(((Reference.At) reference).frequencyHz()));
    }

    private static Remark target(Target target) {
        return target instanceof Target.Sheet sheet
                ? Remark.of("rule-against-sheet").with("file", sheet.file())
                : Remark.of("rule-against-open-ear");
    }

    private static Remark population(Population population, String of) {
        if (population instanceof Population.Share share) {
            return Remark.of("rule-share-of-" + of + "s").with("percent", Figures.plain(share.percent()));
        }
        return Remark.of(population instanceof Population.Mean ? "rule-mean-over-" + of + "s" : "rule-each-" + of);
    }

    /** {@code 15 to 21 dB}, {@code at least 15 dB}, {@code below 90 dB SPL}. */
    private static Remark limit(Interval interval) {
        String unit = interval.unit() == Unit.NONE ? "" : " " + interval.unit().symbol();
        Function<Double, String> end = value -> Figures.plain(clean(value)) + unit;
        if (!interval.hasUpper()) {
            return Remark.of(interval.lowerOpen() ? "limit-above" : "limit-at-least")
                    .with("lower", end.apply(interval.lower()));
        }
        if (!interval.hasLower()) {
            return Remark.of(interval.upperOpen() ? "limit-below" : "limit-at-most")
                    .with("upper", end.apply(interval.upper()));
        }
        return interval.lower() == interval.upper()
                ? Remark.of("limit-exactly").with("lower", end.apply(interval.lower()))
                : Remark.of("limit-between")
                        .with("lower", Figures.plain(clean(interval.lower())))
                        .with("upper", end.apply(interval.upper()));
    }

    /** Sums such as 0.1 + 0.2 are printed as people write them. */
    private static double clean(double value) {
        return Math.round(value * 1e9) / 1e9;
    }
}
