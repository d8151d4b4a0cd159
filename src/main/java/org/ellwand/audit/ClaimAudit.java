package org.ellwand.audit;

import java.util.List;
import java.util.Optional;
import org.ellwand.claim.Claim;
import org.ellwand.words.Remark;
import org.ellwand.words.Sentences;

/**
 * A claim and what became of it.
 *
 * @param claim the sentence with its rules
 * @param plain the rule as ruled; absent for a claim without a rule
 * @param otherwise other fair rules for the same sentence, in the order of the file
 * @param remarks about the claim as a whole ("same under all 3 rules")
 */
public record ClaimAudit(Claim claim, Optional<Judgement> plain, List<Judgement> otherwise, List<Remark> remarks) {
    /** {@return the verdict under the plain rule; untested where the claim has none} */
    public Verdict verdict() {
        return plain.map(Judgement::verdict).orElse(Verdict.UNTESTED);
    }

    /** {@return the remarks in English} */
    public List<String> notes() {
        return Remark.texts(remarks);
    }

    /** {@return why the verdict is not firm; absent for pass and fail} */
    public Optional<String> reason() {
        return reason(Sentences.english());
    }

    /**
     * {@return the same in these sentences, but for the user's own words}
     *
     * @param sentences what reasons say
     */
    public Optional<String> reason(Sentences sentences) {
        return plain.isPresent() ? plain.get().reason(sentences) : claim.untestedBecause();
    }
}
