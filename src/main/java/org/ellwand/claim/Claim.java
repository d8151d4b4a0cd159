package org.ellwand.claim;

import java.util.List;
import java.util.Optional;
import org.ellwand.input.Place;

/**
 * One sentence of the maker's, quoted, with the rule the auditor made of it.
 *
 * @param id unique in its file
 * @param edition where the sentence was published
 * @param topic what joins this claim to other editions' claims; the id by default
 * @param quote the maker's words; not to be printed where the edition may not be quoted
 * @param paraphrase the auditor's words for a sentence that may not be quoted
 * @param rule how it is tested; absent where it cannot be
 * @param untestedBecause why there is no rule; present exactly where {@code rule} is absent
 * @param because why the auditor read it so
 * @param otherwise other fair rules for the same sentence, complete (the plain rule with its overrides), named
 * @param impression what the auditor perceived and did not measure
 * @param asked date of the auditor's question to the maker
 * @param reply the maker's answer to a question about it
 * @param waiver why a build may pass although the claim does not hold
 * @param place where it begins in the claims file
 */
public record Claim(
        String id,
        Edition edition,
        String topic,
        String quote,
        Optional<String> paraphrase,
        Optional<Rule> rule,
        Optional<String> untestedBecause,
        Optional<String> because,
        List<Rule> otherwise,
        Optional<String> impression,
        Optional<String> asked,
        Optional<Reply> reply,
        Optional<Waiver> waiver,
        Place place) {
    /**
     * {@return this sentence read in the plain way only, by this rule; nothing is waived}
     *
     * @param other the rule; empty for none
     */
    public Claim alone(Optional<Rule> other) {
        return new Claim(
                id,
                edition,
                topic,
                quote,
                paraphrase,
                other,
                untestedBecause,
                because,
                List.of(),
                impression,
                asked,
                reply,
                Optional.empty(),
                place);
    }

    /** {@return the words that may be printed: the quote, or the paraphrase where the edition may not be quoted} */
    public String words() {
        return edition.mayBeQuoted() ? quote : paraphrase.orElse("");
    }
}
