package org.ellwand.audit;

import java.util.List;
import org.ellwand.claim.Product;

/**
 * A product and what became of its maker's claims, in the order of the file.
 *
 * @param product what its claims file says
 * @param claims in the order of the file
 */
public record ProductAudit(Product product, List<ClaimAudit> claims) {
    /**
     * {@return how many claims came out so}
     *
     * @param verdict which
     */
    public long count(Verdict verdict) {
        return claims.stream().filter(claim -> claim.verdict() == verdict).count();
    }
}
