package org.ellwand.claim;

import java.util.EnumSet;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.ellwand.amount.Amount;
import org.ellwand.amount.Dimension;
import org.ellwand.amount.Interval;
import org.ellwand.amount.IntervalPhrase;
import org.ellwand.amount.Phrases;
import org.ellwand.amount.Tolerance;
import org.ellwand.amount.Unit;

/** Reads the limit of a rule: its interval, in a unit that fits the quantity. */
final class LimitReader {
    private static final NavigableMap<String, String> SENSES =
            new TreeMap<>(Map.of("at least", "at least", "at most", "at most"));

    private final QuantityForm form;
    private final RuleWords words;

    LimitReader(QuantityForm form, RuleWords words) {
        this.form = form;
        this.words = words;
    }

    Optional<Interval> read() {
        return words.phrase(RuleKey.LIMIT, Phrases::interval)
                .flatMap(this::completed)
                .filter(phrase -> fits(phrase.interval().unit()))
                .flatMap(this::meant)
                .map(interval -> isRatio() ? plainNumber(interval) : interval);
    }

    /** A bare dB that stands for a level gets the weighting that {@code limit weighting} names. */
    private Optional<IntervalPhrase> completed(IntervalPhrase phrase) {
        Set<Unit> wanted = units();
        if (phrase.interval().unit() != Unit.DB || wanted.isEmpty() || wanted.contains(Unit.DB) || isRatio()) {
            return Optional.of(phrase);
        }
        if (wanted.stream().noneMatch(Unit::isLevel)) {
            return Optional.of(phrase);
        }
        if (!words.given().has(RuleKey.LIMIT_WEIGHTING)) {
            words.problem(
                    RuleKey.LIMIT,
                    "'limit': '" + written() + "' does not name its weighting and so is not a level: write "
                            + listed(wanted) + ", or add 'limit weighting'");
            return Optional.empty();
        }
        return words.choice(RuleKey.LIMIT_WEIGHTING, Levels.UNITS).map(unit -> in(phrase, unit));
    }

    private static IntervalPhrase in(IntervalPhrase phrase, Unit unit) {
        return new IntervalPhrase(
                Levels.inUnit(phrase.interval(), unit),
                phrase.bare().map(a -> new Amount(a.value(), unit, a.decimals())));
    }

    private boolean fits(Unit unit) {
        Set<Unit> wanted = units();
        boolean fits = isRatio()
                ? unit == Unit.NONE || unit == Unit.PERCENT
                : wanted.isEmpty() || wanted.stream().anyMatch(w -> w.dimension() == unit.dimension());
        if (!fits) {
            words.problem(RuleKey.LIMIT, "'limit': " + misfit(unit, wanted));
        }
        return fits;
    }

    private String misfit(Unit unit, Set<Unit> wanted) {
        String has = unit == Unit.NONE ? "has no unit" : "is in " + unit.symbol();
        if (isRatio()) {
            return "'" + written() + "' " + has + ": a ratio is a plain number or a share in %";
        }
        Optional<String> weighting = words.given().glance(RuleKey.WEIGHTING);
        String because = isOverallLevel() && weighting.isPresent() ? " with 'weighting: " + weighting.get() + "'" : "";
        return "'" + written() + "' " + has + ": " + what() + because + " is in " + listed(wanted);
    }

    private String what() {
        Optional<Statistic> compared = statistic().filter(Statistic::comparesBands);
        if (compared.isPresent()) {
            return "a " + compared.get().text();
        }
        return words.given().has(RuleKey.BETWEEN) ? "a difference of " + form.name() : form.name();
    }

    /** What a bare number means. */
    private Optional<Interval> meant(IntervalPhrase phrase) {
        if (phrase.bare().isEmpty()) {
            return Optional.of(phrase.interval());
        }
        Amount nominal = phrase.bare().get();
        Optional<String> sense =
                words.given().has(RuleKey.SENSE) ? words.choice(RuleKey.SENSE, SENSES) : Optional.of("");
        Optional<Interval> range = words.given().has(RuleKey.TOLERANCE)
                ? words.phrase(RuleKey.TOLERANCE, Phrases::tolerance).flatMap(t -> around(t, nominal))
                : Optional.of(phrase.interval());
        if (!words.given().has(RuleKey.SENSE) && !words.given().has(RuleKey.TOLERANCE)) {
            words.problem(
                    RuleKey.LIMIT,
                    "'limit': '" + written() + "' is a bare number: say how it is meant, with 'tolerance' or 'sense'"
                            + " (at least, at most) or both");
            return Optional.empty();
        }
        return sense.flatMap(s -> range.map(r -> oneSided(s, r)));
    }

    private static Interval oneSided(String sense, Interval range) {
        return switch (sense) {
            case "at least" -> Interval.atLeast(range.lower(), range.unit());
            case "at most" -> Interval.atMost(range.upper(), range.unit());
            default -> range;
        };
    }

    private Optional<Interval> around(Tolerance tolerance, Amount nominal) {
        try {
            return Optional.of(tolerance.around(nominal));
        } catch (IllegalArgumentException e) {
            words.problem(
                    RuleKey.TOLERANCE,
                    "'tolerance': '" + words.given().glance(RuleKey.TOLERANCE).orElse("")
                            + "' does not fit a limit of '" + written() + "'");
            return Optional.empty();
        }
    }

    private static Interval plainNumber(Interval interval) {
        double scale = interval.unit() == Unit.PERCENT ? 100 : 1;
        return new Interval(
                interval.lower() / scale,
                interval.upper() / scale,
                interval.lowerOpen(),
                interval.upperOpen(),
                Unit.NONE);
    }

    private boolean isRatio() {
        return words.given().glance(RuleKey.COMPARED_BY).filter("ratio"::equals).isPresent();
    }

    private boolean isOverallLevel() {
        return form.dimension() == Dimension.LEVEL
                && form.needed().containsKey(RuleKey.REFERRED_TO.text())
                && statistic().equals(Optional.of(Statistic.OVERALL));
    }

    private Optional<Statistic> statistic() {
        return words.given().glance(RuleKey.STATISTIC).flatMap(Statistic::named);
    }

    /** The units a limit may be in; none where any will do. */
    private Set<Unit> units() {
        boolean difference = words.given().has(RuleKey.BETWEEN)
                || statistic().filter(Statistic::comparesBands).isPresent();
        boolean level = form.dimension() == Dimension.LEVEL || form.dimension() == Dimension.LEVEL_A;
        if (statistic().equals(Optional.of(Statistic.SLOPE))
                && form.needed().containsKey(RuleKey.STATISTIC.text())
                && !isOfStimulus()) {
            return EnumSet.of(Unit.DB_PER_OCTAVE);
        }
        if (level && difference && !(isOfStimulus() && !words.given().has(RuleKey.BETWEEN))) {
            return EnumSet.of(Unit.DB);
        }
        return level ? levelUnits() : ofDimension(form.dimension());
    }

    private Set<Unit> levelUnits() {
        if (isOfStimulus()) {
            return EnumSet.of(Unit.DB_SPL, Unit.DB_A, Unit.DB_C);
        }
        if (form.dimension() == Dimension.LEVEL_A) {
            return EnumSet.of(Unit.DB_A);
        }
        Optional<Unit> weighted =
                isOverallLevel() ? words.given().glance(RuleKey.WEIGHTING).map(Levels.UNITS::get) : Optional.empty();
        return EnumSet.of(weighted.orElse(Unit.DB_SPL));
    }

    /** Whether the limit is a level of the test sound, in whichever weighting that is given. */
    private boolean isOfStimulus() {
        return form.dimension() == Dimension.LEVEL
                && (form.needed().containsKey(RuleKey.DROP.text())
                        || form.needed().containsKey(RuleKey.CRITERION.text()));
    }

    private static Set<Unit> ofDimension(Dimension dimension) {
        Set<Unit> units = EnumSet.noneOf(Unit.class);
        for (Unit unit : Unit.values()) {
            if (unit.dimension() == dimension && unit != Unit.NONE) {
                units.add(unit);
            }
        }
        return units;
    }

    private String written() {
        return words.given().glance(RuleKey.LIMIT).orElse("");
    }

    private static String listed(Set<Unit> units) {
        return units.stream().map(Unit::symbol).collect(Collectors.joining(", "));
    }
}
