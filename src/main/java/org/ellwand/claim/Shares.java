package org.ellwand.claim;

import org.ellwand.amount.Amount;
import org.ellwand.amount.PhraseException;
import org.ellwand.amount.Phrases;
import org.ellwand.amount.Unit;

/** Phrases that must be a share. */
final class Shares {
    private Shares() {}

    /** A share above 0 % and below 100 %. */
    static double percent(String text) throws PhraseException {
        Amount amount = Phrases.amount(text);
        if (amount.unit() != Unit.PERCENT || amount.value() <= 0 || amount.value() >= 100) {
            throw new PhraseException("'" + text + "' is not a share above 0 % and below 100 %, as '90 %'");
        }
        return amount.value();
    }

    /** How sure a verdict must be, as a fraction. */
    static double confidence(String text) throws PhraseException {
        Amount amount = Phrases.amount(text);
        if (amount.unit() != Unit.PERCENT || amount.value() <= 50 || amount.value() >= 100) {
            throw new PhraseException("'" + text + "' is not a confidence: above 50 % and below 100 %, as '95 %'");
        }
        return amount.value() / 100;
    }
}
