package org.ellwand.amount;

import java.util.Arrays;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Reads the phrases of claims and session files: {@code 18 dB}, {@code 18 ± 3 dB}, {@code 15 to 21 dB},
 * {@code at least 15 dB}, {@code below 90 dB SPL}. Numbers have a decimal point, an optional sign (also U+2212) and at most
 * nine digits.
 */
public final class Phrases {
    private static final String NUMBER = "[+-]?(?:\\d+(?:\\.\\d+)?|\\.\\d+)";
    private static final Pattern AMOUNT = Pattern.compile("(" + NUMBER + ")\\s*(.*)");
    private static final Pattern PLUS_MINUS = Pattern.compile("(.*?)\\s*(?:±|\\+/-|\\+-)\\s*(.*)");
    private static final Pattern RANGE = Pattern.compile("(.*?)\\s+to\\s+(.*)");
    private static final Pattern SIDED = Pattern.compile("(at least|at most|below|above)\\s+(.*)");
    private static final Pattern UNEQUAL = Pattern.compile("\\+\\s*([\\d.][^/]*?)\\s*/\\s*-\\s*([\\d.].*)");
    /** Two distances in another way. */
    private static final Pattern PAIR = Pattern.compile(".*/\\s*[+-].*");
    /** As a range is often printed: 15-21 dB, 15 – 21 dB. */
    private static final Pattern DASHED = Pattern.compile("(.*?\\d.*?)\\s*[-\u2010-\u2015]\\s*(\\d.*)");

    private static final int MOST_DIGITS = 9;

    private Phrases() {}

    /**
     * {@return an amount read from its phrase} As {@code 18 dB}, {@code 1.5 kHz}; a number alone has {@link Unit#NONE}.
     *
     * @param text the phrase
     * @throws PhraseException where it is not a number with a known unit
     */
    public static Amount amount(String text) throws PhraseException {
        Matcher matcher = AMOUNT.matcher(normal(text));
        if (!matcher.matches()) {
            throw new PhraseException("'" + text + "' is not a number with a unit, as '18 dB'");
        }
        return new Amount(number(matcher.group(1), text), unit(matcher.group(2), text), decimals(matcher.group(1)));
    }

    /**
     * {@return a range read from its phrase; a bare number is marked as such}
     *
     * @param text one of the interval phrases
     * @throws PhraseException where it is none of them, its ends are the wrong way round, or its units do not fit each
     *     other
     */
    public static IntervalPhrase interval(String text) throws PhraseException {
        String normal = normal(text);
        Matcher sided = SIDED.matcher(normal);
        if (sided.matches()) {
            return new IntervalPhrase(sided(sided.group(1), amount(sided.group(2))), Optional.empty());
        }
        Matcher plusMinus = PLUS_MINUS.matcher(normal);
        if (plusMinus.matches()) {
            return new IntervalPhrase(around(plusMinus.group(1), plusMinus.group(2), text), Optional.empty());
        }
        Matcher range = RANGE.matcher(normal);
        if (range.matches()) {
            return new IntervalPhrase(range(range.group(1), range.group(2), text), Optional.empty());
        }
        refuseDash(normal, text);
        if (!isAmount(normal)) {
            throw noInterval(text);
        }
        Amount bare = amount(text);
        return new IntervalPhrase(Interval.of(bare.value(), bare.value(), bare.unit()), Optional.of(bare));
    }

    private static PhraseException noInterval(String text) {
        return new PhraseException("'" + text + "' is not an interval: accepted are '18 dB', '18 dB ± 3 dB',"
                + " '15 to 21 dB', 'at least 15 dB', 'at most 3 %', 'below 90 dB SPL', 'above 90 dB SPL'");
    }

    private static void refuseDash(String normal, String text) throws PhraseException {
        Matcher dashed = DASHED.matcher(normal);
        if (dashed.matches() && isKnown(dashed.group(1))) {
            throw new PhraseException("'" + text + "': a range is written with 'to', as '" + dashed.group(1) + " to "
                    + dashed.group(2) + "'");
        }
    }

    private static boolean isKnown(String text) {
        Matcher matcher = AMOUNT.matcher(text);
        return matcher.matches()
                && (matcher.group(2).isEmpty() || Unit.spelled(matcher.group(2)).isPresent());
    }

    private static boolean isAmount(String text) {
        return AMOUNT.matcher(text).matches();
    }

    /**
     * {@return a tolerance read from its phrase} As {@code 3 dB}, {@code +3 dB / -2 dB}, {@code 10 %}, {@code
     * rounding}.
     *
     * @param text the phrase
     * @throws PhraseException where it is none of these, or negative
     */
    public static Tolerance tolerance(String text) throws PhraseException {
        String normal = normal(text);
        if (normal.equals("rounding")) {
            return new Tolerance.Rounding();
        }
        Matcher unequal = UNEQUAL.matcher(normal);
        if (unequal.matches()) {
            return unequal(unequal.group(1), unequal.group(2), text);
        }
        if (!isAmount(normal) || PAIR.matcher(normal).matches()) {
            throw new PhraseException(
                    "'" + text + "' is not a tolerance: accepted are '3 dB', '+3 dB / -2 dB', '10 %', 'rounding'");
        }
        Amount amount = amount(text);
        refuseNegative(amount.value(), text);
        return reaching(amount.value(), amount.value(), amount.unit());
    }

    private static Tolerance reaching(double below, double above, Unit unit) {
        return unit == Unit.PERCENT ? new Tolerance.Relative(below, above) : new Tolerance.Absolute(below, above, unit);
    }

    private static Tolerance unequal(String above, String below, String text) throws PhraseException {
        Amount down = amount(below);
        Amount up = amount(above.matches(NUMBER) ? above + " " + down.unit().symbol() : above);
        return reaching(down.value(), inUnit(up, down.unit(), text), down.unit());
    }

    private static void refuseNegative(double value, String text) throws PhraseException {
        if (value < 0) {
            throw new PhraseException(
                    "'" + text + "' is negative: a tolerance is how far from the number a value may lie");
        }
    }

    private static Interval sided(String side, Amount end) {
        double value = end.value();
        return switch (side) {
            case "at least" -> Interval.atLeast(value, end.unit());
            case "at most" -> Interval.atMost(value, end.unit());
            case "above" -> new Interval(value, Double.POSITIVE_INFINITY, true, false, end.unit());
            default -> new Interval(Double.NEGATIVE_INFINITY, value, false, true, end.unit());
        };
    }

    /** The unit may stand once, behind: {@code 18 ± 3 dB}. A plain dB about a level is a difference. */
    private static Interval around(String centre, String half, String text) throws PhraseException {
        if (!isAmount(centre) || !isAmount(half)) {
            throw noInterval(text);
        }
        Amount distance = amount(half);
        Amount middle = amount(bare(centre) ? centre + " " + distance.unit().symbol() : centre);
        refuseNegative(distance.value(), text);
        Tolerance tolerance = distance.unit() == middle.unit() || distance.unit() == Unit.NONE
                ? new Tolerance.Absolute(distance.value(), distance.value(), middle.unit())
                : tolerance(half);
        try {
            return tolerance.around(middle);
        } catch (IllegalArgumentException e) {
            throw new PhraseException("'" + text + "' mixes units: " + e.getMessage());
        }
    }

    private static Interval range(String from, String to, String text) throws PhraseException {
        if (!isAmount(from) || !isAmount(to)) {
            throw noInterval(text);
        }
        Amount upper = amount(to);
        Amount lower = amount(bare(from) ? from + " " + upper.unit().symbol() : from);
        double low = inUnit(lower, upper.unit(), text);
        if (low > upper.value()) {
            throw new PhraseException("'" + text + "' runs downward: the lower end comes first");
        }
        return Interval.of(low, upper.value(), upper.unit());
    }

    private static boolean bare(String text) {
        return text.matches(NUMBER);
    }

    private static double inUnit(Amount amount, Unit unit, String text) throws PhraseException {
        if (amount.unit().dimension() != unit.dimension()) {
            throw new PhraseException(
                    "'" + text + "' mixes units: '" + amount.unit().symbol() + "' and '" + unit.symbol() + "'");
        }
        return amount.in(unit);
    }

    /** What is copied from a page has spaces that do not break. */
    private static String normal(String text) {
        return text.replace('\u00A0', ' ')
                .replace('\u202F', ' ')
                .strip()
                .replace('\u2212', '-')
                .replaceAll("\\s+", " ");
    }

    private static double number(String digits, String text) throws PhraseException {
        if (digits.chars().filter(Character::isDigit).count() > MOST_DIGITS) {
            throw new PhraseException("'" + text + "' has more than " + MOST_DIGITS + " digits");
        }
        return Double.parseDouble(digits);
    }

    private static int decimals(String digits) {
        int point = digits.indexOf('.');
        return point < 0 ? 0 : digits.length() - point - 1;
    }

    private static Unit unit(String spelling, String text) throws PhraseException {
        if (spelling.isEmpty()) {
            return Unit.NONE;
        }
        return Unit.spelled(spelling).orElseThrow(() -> new PhraseException("'" + text + "': " + wrong(spelling)));
    }

    private static String wrong(String spelling) {
        if (spelling.startsWith(",")) {
            return "numbers have a decimal point, not a comma";
        }
        String known = Arrays.stream(Unit.values())
                .filter(unit -> unit != Unit.NONE)
                .map(Unit::symbol)
                .collect(Collectors.joining(", "));
        String meant = Unit.resembling(spelling)
                .map(unit -> " (did you mean '" + unit.symbol() + "'?)")
                .orElse("");
        return "unknown unit '" + spelling + "'" + meant + ": accepted are " + known;
    }
}
