package org.ellwand.quantity;

import java.util.Optional;
import org.ellwand.acoustics.Weighting;
import org.ellwand.amount.Amount;
import org.ellwand.amount.Interval;
import org.ellwand.amount.PhraseException;
import org.ellwand.amount.Phrases;
import org.ellwand.amount.Unit;
import org.ellwand.claim.Rule;

/** The keys of a rule that say how a single quantity is computed; their form was checked when they were read. */
final class Settings {
    private Settings() {}

    static String text(Rule rule, String key) {
        String text = rule.method().get(key);
        if (text == null) {
            throw new IllegalStateException("'" + key + "' was not asked for");
        }
        return text;
    }

    static double decibels(Rule rule, String key) {
        return amount(rule, key, Unit.DB);
    }

    static double amount(Rule rule, String key, Unit unit) {
        try {
            Amount amount = Phrases.amount(text(rule, key));
            return amount.in(unit);
        } catch (PhraseException e) {
            throw new IllegalStateException(e);
        }
    }

    /** The unit that {@code limit weighting} says of numbers that are compared; empty where it is not said. */
    static Optional<Unit> limitWeighting(Rule rule) {
        return Optional.ofNullable(rule.method().get("limit weighting")).map(Settings::weighted);
    }

    private static Unit weighted(String weighting) {
        return switch (Weighting.valueOf(weighting)) {
            case Z -> Unit.DB_SPL;
            case A -> Unit.DB_A;
            case C -> Unit.DB_C;
        };
    }

    static Interval interval(Rule rule, String key) {
        try {
            return Phrases.interval(text(rule, key)).interval();
        } catch (PhraseException e) {
            throw new IllegalStateException(e);
        }
    }
}
