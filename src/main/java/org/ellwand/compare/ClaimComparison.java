package org.ellwand.compare;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ellwand.audit.AuditRecord;

/**
 * A claim in both audits.
 *
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
    public ClaimComparison {
        cells = List.copyOf(cells);
    }

    /**
     * A cell in both audits.
     *
     * @param conditions what it has in both
     */
    public record OfCell(Map<String, String> conditions, double first, double second, Shift shift) {
        public OfCell {
            conditions = Map.copyOf(conditions);
        }
    }
}
