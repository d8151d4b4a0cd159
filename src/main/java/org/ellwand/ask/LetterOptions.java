package org.ellwand.ask;

import java.util.Optional;
import org.ellwand.words.Sentences;

/**
 * How a letter is wanted.
 *
 * @param dated the date it bears; absent: none
 * @param answerBy when an answer is asked for; absent: no date is set
 * @param from who signs; absent: a line is left for it
 * @param sentences what rules and reasons are worded in
 */
public record LetterOptions(
        Optional<String> dated, Optional<String> answerBy, Optional<String> from, Sentences sentences) {
    /** {@return options without a date and without a signature, in English} */
    public static LetterOptions plain() {
        return new LetterOptions(Optional.empty(), Optional.empty(), Optional.empty(), Sentences.english());
    }
}
