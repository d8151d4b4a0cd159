package org.ellwand.amount;

/** A phrase that does not say what it should; the message names the phrase, what is wrong and what is accepted. */
public final class PhraseException extends Exception {
    private static final long serialVersionUID = 1L;

    /**
     * A phrase that cannot be read.
     *
     * @param message the phrase, what is wrong with it and what is accepted
     */
    public PhraseException(String message) {
        super(message);
    }
}
