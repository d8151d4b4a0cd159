package org.ellwand.audit;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ellwand.claim.Rule;
import org.ellwand.words.Remark;

/** Makes judgements that have no numbers. */
final class Judgements {
    private Judgements() {}

    /** What was measured and left out, as remarks beside a verdict. */
    static List<Remark> notUsed(List<Remark> dropped) {
        return dropped.stream().map(d -> Remark.of("not-used").with("why", d)).toList();
    }

    static Judgement untested(Rule rule, Remark reason) {
        return untested(rule, reason, List.of());
    }

    static Judgement untested(Rule rule, Remark reason, List<Remark> notes) {
        return new Judgement(
                rule,
                RuleText.of(rule),
                Verdict.UNTESTED,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                List.of(reason),
                List.of(),
                notes);
    }
}
