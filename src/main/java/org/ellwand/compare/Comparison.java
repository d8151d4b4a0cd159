package org.ellwand.compare;

import java.util.List;
import org.ellwand.audit.AuditRecord;

/**
 * Two audits side by side.
 *
 * @param products pairs of products with the claims that both have
 * @param sameNames sittings that were taken for one and the same by their name alone: no sheet of measurements is in both
 *     audits
 */
public record Comparison(List<OfProduct> products, List<String> sameNames) {
    /**
     * Copies what is listed.
     *
     * @param products in their order
     * @param sameNames sorted
     */
    public Comparison {
        products = List.copyOf(products);
        sameNames = List.copyOf(sameNames);
    }

    /**
     * A pair of products.
     *
     * @param first name of the product in the first audit
     * @param second name of the product in the second audit
     * @param confidence of the second audit: how sure a firm word must be
     * @param claims that both have, in the order of the second
     * @param onlyFirst claims that only the first has
     * @param onlySecond claims that only the second has
     */
    public record OfProduct(
            String first,
            String second,
            double confidence,
            List<ClaimComparison> claims,
            List<AuditRecord.OfClaim> onlyFirst,
            List<AuditRecord.OfClaim> onlySecond) {
        /**
         * Copies what is listed.
         *
         * @param first name of the product in the first audit
         * @param second name of the product in the second audit
         * @param confidence of a firm verdict, above 0.5 and below 1
         * @param claims in their order
         * @param onlyFirst claims that the second lacks
         * @param onlySecond claims that the first lacks
         */
        public OfProduct {
            claims = List.copyOf(claims);
            onlyFirst = List.copyOf(onlyFirst);
            onlySecond = List.copyOf(onlySecond);
        }
    }

    /** {@return whether any verdict got worse} */
    public boolean isWorse() {
        return products.stream().flatMap(p -> p.claims().stream()).anyMatch(c -> c.change() == Change.WORSE);
    }
}
