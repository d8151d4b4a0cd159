package org.ellwand.report;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.ellwand.amount.Amount;
import org.ellwand.amount.Interval;
import org.ellwand.measurement.Cause;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.Stimulus;

/** Small pieces of English that several parts of a report share. */
final class Phrases {
    private Phrases() {}

    /** {@code 15 to 21 dB}, {@code at least 15 dB}, {@code below 90 dB SPL}. */
    static String interval(Interval interval) {
        String lower = Numbers.plain(interval.hasLower() ? interval.lower() : 0);
        String upper = Numbers.plain(interval.hasUpper() ? interval.upper() : 0);
        String text = "any value";
        if (interval.hasLower() && interval.hasUpper()) {
            text = lower.equals(upper) ? lower : lower + " to " + upper;
        } else if (interval.hasLower()) {
            text = (interval.lowerOpen() ? "above " : "at least ") + lower;
        } else if (interval.hasUpper()) {
            text = (interval.upperOpen() ? "below " : "at most ") + upper;
        }
        return Numbers.withUnit(text, interval.unit());
    }

    static String amount(Amount amount) {
        return Numbers.withUnit(Numbers.fixed(amount.value(), amount.decimals()), amount.unit());
    }

    static String count(long number, String one, String several) {
        return number + " " + (number == 1 ? one : several);
    }

    /** {@code ear crew-01-left, setting flood}. */
    static String conditions(Conditions conditions) {
        return pairs(conditions.values());
    }

    static String pairs(Map<String, String> pairs) {
        return pairs.entrySet().stream()
                .map(pair -> pair.getKey() + " " + pair.getValue())
                .collect(Collectors.joining(", "));
    }

    /** {@code pink noise, 94 dB SPL}. */
    static String stimulus(Stimulus stimulus) {
        List<String> levels = stimulus.levels().stream().map(Phrases::amount).toList();
        return levels.isEmpty() ? stimulus.kind() : stimulus.kind() + ", " + String.join(", ", levels);
    }

    /** {@code 0.5 dB}, or {@code 0.4 dB below 3 kHz, 1 dB from 3 kHz to 6 kHz, 2.5 dB from 6 kHz}. */
    static String sizes(Cause cause) {
        return cause.sizes().stream().map(size -> size(cause, size)).collect(Collectors.joining(", "));
    }

    private static String size(Cause cause, Cause.Size size) {
        String text = Numbers.withUnit(Numbers.plain(size.size()), cause.unit());
        boolean from = size.fromHz() > 0;
        boolean to = size.toHz() != Double.POSITIVE_INFINITY;
        if (!from) {
            return to ? text + " below " + bound(size.toHz()) : text;
        }
        return text + " from " + bound(size.fromHz()) + (to ? " to " + bound(size.toHz()) : "");
    }

    /** A size may begin just behind the frequency where the one before it ends; people read that frequency. */
    private static String bound(double hz) {
        return Numbers.hertz(Math.round(hz * 1e6) / 1e6);
    }
}
