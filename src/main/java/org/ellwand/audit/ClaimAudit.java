package org.ellwand.audit;

import java.util.List;
import java.util.Optional;
import org.ellwand.claim.Claim;
import org.ellwand.words.Remark;
import org.ellwand.words.Sentences;

/**
 * A claim and what became of it.
 *
 * @param plain the rule as ruled; absent for a claim without a rule
 * @param otherwise other fair rules for the same sentence, in the order of the file
 * @param remarks about the claim as a whole ("same under all 3 rules")
 */
public record ClaimAudit(Claim claim, Optional<Judgement> plain, List<Judgement> otherwise, List<Remark> remarks) {
    public Verdict verdict() {
        return plain.map(Judgement::verdict).orElse(Verdict.UNTESTED);
    }

    /** The remarks in English. */
    public List<String> notes() {
        return Remark.texts(remarks);
    }

    /** Why the verdict is not firm; absent for pass and fail. */
    public Optional<String> reason() {
        return reason(Sentences.english());
    }

    /** The same in these sentences, but for the user's own words. */
    public Optional<String> reason(Sentences sentences) {
        return plain.isPresent() ? plain.get().reason(sentences) : claim.untestedBecause();
    }
}
