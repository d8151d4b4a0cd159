package org.ellwand.claim;

import org.ellwand.amount.Amount;
import org.ellwand.amount.Dimension;
import org.ellwand.amount.Interval;
import org.ellwand.amount.PhraseException;
import org.ellwand.amount.Phrases;
import org.ellwand.amount.Unit;

/** Phrases that must be about frequencies. */
final class Frequencies {
    private Frequencies() {}

    /** An interval, in Hz. */
    static Interval interval(String text) throws PhraseException {
        if (text.chars().noneMatch(Character::isDigit)) {
            throw new PhraseException("'" + text
                    + "' is no interval of frequencies: accepted are '125 Hz to 8 kHz', '1 kHz', 'at least 2 kHz'");
        }
        Interval interval = Phrases.interval(text).interval();
        refuseOther(interval.unit(), text);
        return interval.in(Unit.HZ);
    }

    /** One frequency, in Hz. */
    static double single(String text) throws PhraseException {
        Amount amount = Phrases.amount(text);
        refuseOther(amount.unit(), text);
        if (amount.value() <= 0) {
            throw new PhraseException("'" + text + "' is not a frequency: it is not above 0 Hz");
        }
        return amount.in(Unit.HZ);
    }

    private static void refuseOther(Unit unit, String text) throws PhraseException {
        if (unit.dimension() != Dimension.FREQUENCY) {
            throw new PhraseException("'" + text + "' is not in Hz or kHz");
        }
    }
}
