package org.ellwand.compare;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ellwand.audit.AuditRecord;

/**
 * A claim in both audits.
 *
 * @param first the claim in the first audit
 * @param second the claim in the second audit
 * @param change of its verdict
 * @param sameWords whether quote and rule are the same
 * @param cells those that both audits have, by what they have in common
 * @param deciding the cell that decides the claim in the second audit, where both have it
 */
public record ClaimComparison(
        AuditRecord.OfClaim first,
        AuditRecord.OfClaim second,
        Change change,
        boolean sameWords,
        List<OfCell> cells,
        Optional<OfCell> deciding) {
    /**
     * Copies what is listed.
     *
     * @param first the claim in the first audit
     * @param second the claim in the second audit
     * @param change of the verdict
     * @param sameWords whether quote and rule are the same
     * @param cells in their order
     * @param deciding the cell that decides in the second; absent where the first has none like it
     */
    public ClaimComparison {
        cells = List.copyOf(cells);
    }

    /**
     * A cell in both audits.
     *
     * @param conditions what it has in both
     * @param first value in the first audit, unit of the limit
     * @param second value in the second audit, unit of the limit
     * @param shift second less first, with what is known of its error
     * @param units of which it is the mean; absent where it is no lot's
     */
    public record OfCell(
            Map<String, String> conditions, double first, double second, Shift shift, Optional<Units> units) {
        /**
         * Copies what is listed.
         *
         * @param conditions by name
         * @param first value in the first audit, unit of the limit
         * @param second value in the second audit, unit of the limit
         * @param shift second less first
         * @param units of which it is the mean; absent where it is no lot's
         */
        public OfCell {
            conditions = Map.copyOf(conditions);
        }
    }

    /**
     * The units of a lot.
     *
     * @param first how many in the first audit
     * @param second how many in the second
     * @param shared how many are in both
     */
    public record Units(int first, int second, int shared) {
        /** {@return whether they are the same ones} */
        public boolean areSame() {
            return shared == first && shared == second;
        }
    }
}
