package org.ellwand.compare;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.ellwand.audit.Audit;
import org.ellwand.audit.AuditRecord;

/**
 * Sittings that two audits call by the same name though no sheet of measurements is in both. They are taken for one sitting, so
 * that its calibration and open ear cancel; whether that is right the records do not tell.
 */
final class SameNames {
    private SameNames() {}

    /** The names, sorted; none where the audits rest on a sheet in common. */
    static List<String> of(AuditRecord first, AuditRecord second) {
        Set<String> sheets = sheets(first);
        Set<String> others = sheets(second);
        boolean apart =
                !sheets.isEmpty() && !others.isEmpty() && sheets.stream().noneMatch(others::contains);
        Set<String> names = apart ? sessions(first) : new TreeSet<>();
        names.retainAll(sessions(second));
        return List.copyOf(names);
    }

    /** What was measured, by its bytes: sheets and recordings, not what is said about them. */
    private static Set<String> sheets(AuditRecord record) {
        return record.inputs().stream()
                .filter(input -> input.file().startsWith("measurements/"))
                .filter(input -> !input.file().toLowerCase(Locale.ROOT).matches(".*\\.ya?ml"))
                .map(Audit.Input::sha256)
                .collect(Collectors.toCollection(HashSet::new));
    }

    private static Set<String> sessions(AuditRecord record) {
        return record.products().stream()
                .flatMap(product -> product.claims().stream())
                .flatMap(claim -> claim.cells().stream())
                .map(cell -> cell.conditions().getOrDefault("session", ""))
                .filter(name -> !name.isEmpty())
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
