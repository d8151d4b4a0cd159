package org.ellwand.audit;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * An audit as its record holds it: what may be read back of {@code audit.json}, also years later and without the folder.
 *
 * @param products in the order of the record
 * @param inputs the files that the audit rested on
 */
public record AuditRecord(List<OfProduct> products, List<Audit.Input> inputs) {
    /**
     * Copies what is listed.
     *
     * @param products in their order
     * @param inputs in their order
     */
    public AuditRecord {
        products = List.copyOf(products);
        inputs = List.copyOf(inputs);
    }

    /**
     * A product with its claims.
     *
     * @param name of the product
     * @param confidence of a firm verdict, above 0.5 and below 1
     * @param claims in the order of the record
     */
    public record OfProduct(String name, double confidence, List<OfClaim> claims) {
        /**
         * Copies what is listed.
         *
         * @param name of the product
         * @param confidence of a firm verdict, above 0.5 and below 1
         * @param claims in their order
         */
        public OfProduct {
            claims = List.copyOf(claims);
        }
    }

    /**
     * A claim with what its plain rule came to.
     *
     * @param id of the claim
     * @param edition id of the edition it stands in
     * @param topic what joins it to other editions' claims
     * @param words the maker's, or in other words where the source may not be quoted
     * @param verbatim whether they are the maker's own
     * @param rule the rule in one line; absent where the claim has none
     * @param unit of limit and values; empty for plain numbers
     * @param verdict under the plain rule
     * @param probability of the deciding point; absent where nothing tells it
     * @param value of the deciding cell
     * @param standardUncertainty unit of the limit; absent where nothing tells it
     * @param hz band of the deciding point; absent where it is a cell
     * @param cells in the order of the record
     */
    public record OfClaim(
            String id,
            String edition,
            String topic,
            Optional<String> words,
            boolean verbatim,
            Optional<String> rule,
            String unit,
            Verdict verdict,
            OptionalDouble probability,
            OptionalDouble value,
            OptionalDouble standardUncertainty,
            OptionalDouble hz,
            List<OfCell> cells) {
        /**
         * Copies what is listed.
         *
         * @param id of the claim
         * @param edition id of its edition
         * @param topic that joins it to claims of other editions
         * @param words the maker's, or in other words
         * @param verbatim whether the words are the maker's own
         * @param rule in one line; absent where there is none
         * @param unit of limit and values; empty for plain numbers
         * @param verdict under the plain rule
         * @param probability of the deciding point; absent where nothing tells it
         * @param value unit of the limit; absent where untested
         * @param standardUncertainty unit of the limit; absent where nothing tells it
         * @param hz band of the deciding point, in Hz; absent where it is a cell
         * @param cells in their order
         */
        public OfClaim {
            cells = List.copyOf(cells);
        }
    }

    /**
     * A cell of the plain rule.
     *
     * @param conditions by name
     * @param value unit of the limit; absent where untested
     * @param standardUncertainty unit of the limit; absent where nothing tells it
     * @param contributions what makes up the uncertainty
     * @param hz centres of the bands that were judged, as far as they are kept
     */
    public record OfCell(
            Map<String, String> conditions,
            OptionalDouble value,
            OptionalDouble standardUncertainty,
            List<Contribution> contributions,
            List<Double> hz) {
        /**
         * Copies what is listed.
         *
         * @param conditions by name
         * @param value unit of the limit; absent where untested
         * @param standardUncertainty unit of the limit; absent where nothing tells it
         * @param contributions what makes up the uncertainty
         * @param hz centres of the bands that were judged
         */
        public OfCell {
            hz = List.copyOf(hz);
            conditions = Map.copyOf(conditions);
            contributions = List.copyOf(contributions);
        }
    }
}
