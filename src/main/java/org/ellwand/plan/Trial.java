package org.ellwand.plan;

import java.util.List;
import org.ellwand.audit.AuditOptions;
import org.ellwand.audit.Auditor;
import org.ellwand.audit.Judgement;
import org.ellwand.claim.Claim;
import org.ellwand.claim.Product;
import org.ellwand.input.InputException;
import org.ellwand.measurement.Session;

/**
 * What the judge would say of a single claim of a product from other sessions than those measured.
 *
 * @param repeats the sessions measured, and what more insertions would make of them
 */
record Trial(Product product, Repeats repeats) {
    private static final int DRAWS = 10_000;

    /** Were the values to stay, and the insertions so many. */
    Judgement with(Claim claim, int insertions) throws InputException {
        return judged(claim, repeats.with(insertions));
    }

    /** From these sessions. */
    Judgement from(Claim claim, List<Session> sessions) throws InputException {
        return judged(claim, Repeats.Inspected.of(sessions));
    }

    private Judgement judged(Claim claim, Repeats.Inspected from) throws InputException {
        return new Auditor(new AuditOptions(DRAWS))
                .audit(List.of(Alone.of(product, claim)), from.sessions(), from.inspection(), List.of())
                .products()
                .get(0)
                .claims()
                .get(0)
                .plain()
                .orElseThrow();
    }
}
