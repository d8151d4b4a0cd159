package org.ellwand.claim;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ellwand.acoustics.Exposure;
import org.ellwand.acoustics.ProtectionPerformance;
import org.ellwand.amount.Amount;
import org.ellwand.amount.Dimension;
import org.ellwand.amount.Interval;
import org.ellwand.amount.PhraseException;
import org.ellwand.amount.Phrases;
import org.ellwand.amount.Unit;

/** Reads the keys that say how a single quantity is to be computed, checks their form and keeps their text. */
final class MethodReader {
    static final String NRR_METHOD = "40 CFR 211.207";
    static final List<String> METHODS = List.of("ISO 4869-2:1994", "ISO 4869-2:2018", NRR_METHOD);
    static final List<String> RATINGS = List.of("SNR", "H", "M", "L", "NRR");

    /** Who relates levels and durations. */
    static final List<String> EXPOSURES = Exposure.texts();

    private final RuleWords words;

    MethodReader(RuleWords words) {
        this.words = words;
    }

    Map<String, String> read() {
        words.phrase(RuleKey.DROP, MethodReader::decibels);
        words.phrase(RuleKey.WITHIN, MethodReader::decibels);
        words.phrase(RuleKey.HARMONICS, MethodReader::harmonics);
        words.phrase(RuleKey.PERFORMANCE, MethodReader::performance);
        words.phrase(RuleKey.CRITERION, MethodReader::criterion);
        words.phrase(RuleKey.DURATION, MethodReader::duration);
        words.text(RuleKey.EXPOSURE)
                .filter(name -> !EXPOSURES.contains(name))
                .ifPresent(
                        name -> words.problem(RuleKey.EXPOSURE, RuleWords.refusal(RuleKey.EXPOSURE, name, EXPOSURES)));
        words.text(RuleKey.METHOD).ifPresent(this::method);
        return kept();
    }

    private Map<String, String> kept() {
        Map<String, String> kept = new LinkedHashMap<>();
        for (RuleKey key : List.of(
                RuleKey.METHOD,
                RuleKey.PERFORMANCE,
                RuleKey.DROP,
                RuleKey.WITHIN,
                RuleKey.HARMONICS,
                RuleKey.CRITERION,
                RuleKey.EXPOSURE,
                RuleKey.DURATION)) {
            words.given().glance(key).ifPresent(text -> kept.put(key.text(), text));
        }
        if (comparesLevelsOfSounds()) {
            words.choice(RuleKey.LIMIT_WEIGHTING, Levels.UNITS)
                    .flatMap(unit -> words.given().glance(RuleKey.LIMIT_WEIGHTING))
                    .ifPresent(text -> kept.put(RuleKey.LIMIT_WEIGHTING.text(), text));
        }
        return Collections.unmodifiableMap(kept);
    }

    /** Whether the limit is a difference of levels of test sounds, which is not the same in every weighting. */
    private boolean comparesLevelsOfSounds() {
        return words.given().has(RuleKey.BETWEEN)
                && (words.given().has(RuleKey.DROP) || words.given().has(RuleKey.CRITERION));
    }

    private void method(String method) {
        if (!METHODS.contains(method)) {
            words.problem(RuleKey.METHOD, RuleWords.refusal(RuleKey.METHOD, method, METHODS));
            return;
        }
        String of = words.given().glance(RuleKey.OF).orElse("");
        if (!RATINGS.contains(of)) {
            words.problem(RuleKey.OF, RuleWords.refusal(RuleKey.OF, of, RATINGS));
        } else if (of.equals("NRR") != method.equals(NRR_METHOD)) {
            words.problem(RuleKey.METHOD, "'method': " + of + " is not computed by " + method);
        }
        boolean performance = words.given().has(RuleKey.PERFORMANCE);
        if (method.equals(NRR_METHOD) && performance) {
            words.problem(RuleKey.PERFORMANCE, "'performance' is for ISO 4869-2: " + NRR_METHOD + " fixes its own");
        } else if (!method.equals(NRR_METHOD) && !performance) {
            words.problem(
                    RuleKey.METHOD,
                    "'method: " + method
                            + "' needs 'performance': the figure depends on the share of wearers protected");
        }
    }

    private static Amount decibels(String text) throws PhraseException {
        Amount amount = Phrases.amount(text);
        if (amount.unit() != Unit.DB || amount.value() <= 0) {
            throw new PhraseException("'" + text + "' is not an amount above 0 dB");
        }
        return amount;
    }

    private static Amount criterion(String text) throws PhraseException {
        Amount amount = Phrases.amount(text);
        if (amount.unit() != Unit.DB_A) {
            throw new PhraseException("'" + text + "' is not a level in dB(A)");
        }
        return amount;
    }

    private static Amount duration(String text) throws PhraseException {
        Amount amount = Phrases.amount(text);
        if (amount.unit().dimension() != Dimension.TIME || amount.value() <= 0) {
            throw new PhraseException("'" + text + "' is not a time above 0");
        }
        return amount;
    }

    private static Interval harmonics(String text) throws PhraseException {
        Interval orders = Phrases.interval(text).interval();
        boolean whole = orders.lower() == Math.rint(orders.lower()) && orders.upper() == Math.rint(orders.upper());
        if (orders.unit() != Unit.NONE || !whole || orders.lower() < 2 || !orders.hasUpper()) {
            throw new PhraseException("'" + text + "' is not a range of whole numbers from 2 on, as '2 to 5'");
        }
        return orders;
    }

    private static double performance(String text) throws PhraseException {
        Amount amount = Phrases.amount(text);
        boolean known = ProtectionPerformance.percents().stream().anyMatch(p -> p == amount.value());
        if (amount.unit() != Unit.PERCENT || !known) {
            throw new PhraseException(
                    "'" + text + "' has no factor in ISO 4869-2: accepted are " + RuleKey.PERFORMANCE.accepted());
        }
        return amount.value();
    }
}
