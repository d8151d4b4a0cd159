package org.ellwand.claim;

import java.util.Optional;
import org.ellwand.acoustics.Weighting;
import org.ellwand.amount.Amount;
import org.ellwand.amount.Dimension;
import org.ellwand.amount.Interval;
import org.ellwand.amount.IntervalPhrase;
import org.ellwand.amount.PhraseException;
import org.ellwand.amount.Phrases;
import org.ellwand.amount.Tolerance;
import org.ellwand.amount.Unit;

/** Reads a limit with its tolerance, sense and weighting. */
final class LimitReader {
    private final RuleSource source;
    private final QuantityForm form;
    private final Optional<Statistic> statistic;
    private final Optional<Weighting> weighting;

    LimitReader(RuleSource source, QuantityForm form, Optional<Statistic> statistic, Optional<Weighting> weighting) {
        this.source = source;
        this.form = form;
        this.statistic = statistic;
        this.weighting = weighting;
    }

    /** Whether a limit is nothing but a number, so that a tolerance or a sense has something to say. */
    static boolean isBare(String limit) {
        try {
            return Phrases.interval(limit).bare().isPresent();
        } catch (PhraseException e) {
            return false;
        }
    }

    Interval read() throws PhraseException {
        IntervalPhrase phrase = Phrases.interval(source.text(RuleKey.LIMIT).orElse(""));
        Unit unit = unit(phrase.interval().unit());
        Interval interval = phrase.bare().isPresent()
                ? around(new Amount(
                        phrase.bare().get().value(), unit, phrase.bare().get().decimals()))
                : in(phrase.interval(), unit);
        return isRatio() ? plainNumber(interval) : interval;
    }

    private static Interval in(Interval interval, Unit unit) {
        return new Interval(interval.lower(), interval.upper(), interval.lowerOpen(), interval.upperOpen(), unit);
    }

    private Interval around(Amount nominal) throws PhraseException {
        Optional<String> sense = source.text(RuleKey.SENSE);
        Optional<String> tolerance = source.text(RuleKey.TOLERANCE);
        if (sense.isEmpty() && tolerance.isEmpty()) {
            throw new PhraseException("a bare number does not say how it is meant: 'tolerance' or 'sense' (at least,"
                    + " at most) is needed");
        }
        Interval range = tolerance.isPresent()
                ? tolerate(tolerance.get(), nominal)
                : Interval.of(nominal.value(), nominal.value(), nominal.unit());
        return switch (sense.orElse("")) {
            case "at least" -> Interval.atLeast(range.lower(), nominal.unit());
            case "at most" -> Interval.atMost(range.upper(), nominal.unit());
            case "" -> range;
            default ->
                throw new PhraseException("'" + sense.get() + "' is not a sense: accepted are 'at least', 'at most'");
        };
    }

    private static Interval tolerate(String text, Amount nominal) throws PhraseException {
        Tolerance tolerance = Phrases.tolerance(text);
        try {
            return tolerance.around(nominal);
        } catch (IllegalArgumentException e) {
            throw new PhraseException("tolerance '" + text + "' does not fit a limit in "
                    + nominal.unit().symbol() + ": " + e.getMessage());
        }
    }

    private boolean isRatio() {
        return source.text(RuleKey.COMPARED_BY).filter("ratio"::equals).isPresent();
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

    /** The unit that is meant, or why the written one cannot be. */
    private Unit unit(Unit written) throws PhraseException {
        if (isRatio()) {
            refuse(written != Unit.NONE && written != Unit.PERCENT, written, "a ratio is a plain number or a %");
            return written;
        }
        Unit meant = written == Unit.DB && source.has(RuleKey.LIMIT_WEIGHTING) && isAbsolute() ? weighted() : written;
        if (form.dimension() == Dimension.NONE) {
            return meant;
        }
        if (statistic.equals(Optional.of(Statistic.SLOPE))) {
            refuse(meant != Unit.DB_PER_OCTAVE, meant, "a slope is in dB/octave");
        } else if (isAbsolute()) {
            refuseLevel(meant);
        } else {
            Dimension wanted = isLevel() ? Dimension.LEVEL_DIFFERENCE : form.dimension();
            refuse(meant.dimension() != wanted, meant, form.name() + " is in " + symbol(wanted));
        }
        return meant;
    }

    private boolean isLevel() {
        return form.dimension() == Dimension.LEVEL || form.dimension() == Dimension.LEVEL_A;
    }

    /** A level, and not a difference of levels. */
    private boolean isAbsolute() {
        boolean difference = source.has(RuleKey.BETWEEN)
                || statistic.equals(Optional.of(Statistic.SPREAD))
                || statistic.equals(Optional.of(Statistic.SLOPE));
        return isLevel() && !difference;
    }

    private void refuseLevel(Unit unit) throws PhraseException {
        if (unit == Unit.DB) {
            throw new PhraseException("'" + source.text(RuleKey.LIMIT).orElse("")
                    + "' is not a level: write dB SPL, dB(A) or dB(C), or say 'limit weighting'");
        }
        refuse(!unit.isLevel(), unit, form.name() + " is a level: dB SPL, dB(A) or dB(C)");
        if (form.dimension() == Dimension.LEVEL_A) {
            refuse(unit != Unit.DB_A, unit, form.name() + " is in dB(A)");
        } else if (!form.name().equals("onset level")) {
            Unit wanted = statistic.equals(Optional.of(Statistic.OVERALL))
                    ? unitOf(weighting.orElse(Weighting.Z))
                    : Unit.DB_SPL;
            refuse(unit != wanted, unit, "that contradicts the weighting: here it is " + wanted.symbol());
        }
    }

    private Unit weighted() throws PhraseException {
        return unitOf(RuleValues.weighting(source.text(RuleKey.LIMIT_WEIGHTING).orElse("")));
    }

    static Unit unitOf(Weighting weighting) {
        return switch (weighting) {
            case A -> Unit.DB_A;
            case C -> Unit.DB_C;
            case Z -> Unit.DB_SPL;
        };
    }

    private static String symbol(Dimension dimension) {
        return switch (dimension) {
            case LEVEL_DIFFERENCE -> "dB";
            case TIME -> "µs, ms, s, min or h";
            case SHARE -> "%";
            default -> dimension.name();
        };
    }

    private static void refuse(boolean wrong, Unit unit, String why) throws PhraseException {
        if (wrong) {
            String written = unit == Unit.NONE ? "a number without a unit" : "'" + unit.symbol() + "'";
            throw new PhraseException("limit in " + written + ": " + why);
        }
    }
}
