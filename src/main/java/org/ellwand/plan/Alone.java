package org.ellwand.plan;

import java.util.List;
import org.ellwand.claim.Claim;
import org.ellwand.claim.Product;
import org.ellwand.claim.Rule;

/** A product with one claim, read in the plain way only. */
final class Alone {
    private Alone() {}

    static Product of(Product product, Claim claim) {
        return product.withClaims(List.of(claim.alone(claim.rule())));
    }

    /** The claim about each ear and unit that was measured. */
    static Claim ofEach(Claim claim) {
        return claim.alone(claim.rule().map(Rule::ofEach));
    }
}
