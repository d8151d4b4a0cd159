package org.ellwand.claim;

import java.util.List;
import java.util.Optional;
import org.ellwand.input.Place;

/**
 * One sentence of the maker's, quoted, with the rule the auditor made of it.
 *
 * @param id unique in its file
 * @param topic what joins this claim to other editions' claims; the id by default
 * @param quote the maker's words; not to be printed where the edition may not be quoted
 * @param paraphrase the auditor's words for a sentence that may not be quoted
 * @param rule how it is tested; absent where it cannot be
 * @param untestedBecause why there is no rule; present exactly where {@code rule} is absent
 * @param otherwise other fair rules for the same sentence, complete (the plain rule with its overrides), named
 * @param impression what the auditor perceived and did not measure
 * @param asked date of the auditor's question to the maker
 * @param waiver why a build may pass although the claim does not hold
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
    /** This sentence read in the plain way only, by this rule; nothing is waived. */
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

    /** The words that may be printed. */
    public String words() {
        return edition.mayBeQuoted() ? quote : paraphrase.orElse("");
    }
}
