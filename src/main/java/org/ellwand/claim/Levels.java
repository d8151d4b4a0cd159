package org.ellwand.claim;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ellwand.acoustics.Weighting;
import org.ellwand.amount.Interval;
import org.ellwand.amount.IntervalPhrase;
import org.ellwand.amount.PhraseException;
import org.ellwand.amount.Phrases;
import org.ellwand.amount.Unit;

/** Phrases that must be about the level of a test sound. */
final class Levels {
    /** What a weighting makes of a bare dB. */
    static final Map<String, Unit> UNITS = units();

    private static final double SINGLE_HALF_WIDTH_DB = 1;

    private Levels() {}

    private static Map<String, Unit> units() {
        SortedMap<String, Unit> units = new TreeMap<>();
        for (Weighting weighting : Weighting.values()) {
            units.put(weighting.name(), weighting.levelUnit());
        }
        return Collections.unmodifiableSortedMap(units);
    }

    /**
     * Levels of a test sound; a single one is widened to ± 1 dB, about what a calibrated sound source holds (common
     * practice, no source).
     *
     * @param weighting completes a bare dB
     */
    static Interval interval(String text, Optional<String> weighting) throws PhraseException {
        IntervalPhrase phrase = Phrases.interval(text);
        Interval level = inUnit(phrase.interval(), unit(phrase.interval().unit(), text, weighting));
        return phrase.bare().isEmpty()
                ? level
                : Interval.of(level.lower() - SINGLE_HALF_WIDTH_DB, level.upper() + SINGLE_HALF_WIDTH_DB, level.unit());
    }

    private static Unit unit(Unit written, String text, Optional<String> weighting) throws PhraseException {
        if (written.isLevel()) {
            return written;
        }
        if (written != Unit.DB) {
            throw new PhraseException("'" + text + "' is not a level: accepted are dB SPL, dB(A) and dB(C)");
        }
        return weighting
                .flatMap(w -> Optional.ofNullable(UNITS.get(w)))
                .orElseThrow(() -> new PhraseException("'" + text
                        + "' does not name its weighting and so is not a level: write dB SPL, dB(A) or dB(C), or add"
                        + " 'level weighting'"));
    }

    /** The same numbers in another unit. */
    static Interval inUnit(Interval interval, Unit unit) {
        return new Interval(interval.lower(), interval.upper(), interval.lowerOpen(), interval.upperOpen(), unit);
    }
}
