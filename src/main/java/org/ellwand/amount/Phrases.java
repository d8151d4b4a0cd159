package org.ellwand.amount;

/** Reads the phrases of claims and session files. Signatures first; the grammar is in {@code claims/README.md}. */
public final class Phrases {
    private Phrases() {}

    /** {@code 18 dB}, {@code 1.5 kHz}: one number and its unit (a bare number has {@link Unit#NONE}). */
    public static Amount amount(String text) throws PhraseException {
        throw new PhraseException("not read: " + text);
    }

    /** {@code 18 dB}, {@code 18 ± 3 dB}, {@code 15 to 21 dB}, {@code at least 15 dB}, {@code below 90 dB SPL}. */
    public static IntervalPhrase interval(String text) throws PhraseException {
        throw new PhraseException("not read: " + text);
    }

    /** {@code 3 dB}, {@code +3 dB / -2 dB}, {@code 10 %}, {@code rounding}. */
    public static Tolerance tolerance(String text) throws PhraseException {
        throw new PhraseException("not read: " + text);
    }
}
