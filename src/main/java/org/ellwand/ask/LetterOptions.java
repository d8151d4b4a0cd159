package org.ellwand.ask;

import java.util.Optional;

/**
 * How a letter is wanted.
 *
 * @param dated the date it bears; absent: none
 * @param answerBy when an answer is asked for; absent: no date is set
 * @param from who signs; absent: a line is left for it
 */
public record LetterOptions(Optional<String> dated, Optional<String> answerBy, Optional<String> from) {}
