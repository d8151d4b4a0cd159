package org.ellwand.compare;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ellwand.audit.AuditRecord;

/**
 * By which conditions a cell of one audit is known again in another. Session, firmware, stimulus and device may differ between two audits
 * of the same thing; where both have the same ones they tell cells apart like any other condition. Units are paired by
 * themselves.
 *
 * @param passing conditions that are no part of what a cell is known by
 * @param unnamed conditions that need no naming, because all cells have the same
 */
record Lasting(Set<String> passing, Set<String> unnamed) {
    private static final String UNIT = "unit";
    private static final Set<String> MAY_DIFFER = Set.of("session", "firmware", "stimulus", "device");

    static Lasting of(AuditRecord.OfClaim first, AuditRecord.OfClaim second) {
        Set<String> passing = MAY_DIFFER.stream()
                .filter(name -> !values(first, name).equals(values(second, name)))
                .collect(Collectors.toCollection(TreeSet::new));
        passing.add(UNIT);
        Set<String> unnamed = MAY_DIFFER.stream()
                .filter(name -> Stream.of(first, second)
                                .flatMap(claim -> values(claim, name).stream())
                                .distinct()
                                .count()
                        < 2)
                .collect(Collectors.toCollection(TreeSet::new));
        return new Lasting(passing, unnamed);
    }

    private static Set<String> values(AuditRecord.OfClaim claim, String name) {
        return claim.cells().stream()
                .filter(cell -> cell.value().isPresent())
                .map(cell -> cell.conditions().getOrDefault(name, ""))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    Map<String, String> of(Map<String, String> conditions) {
        return without(conditions, passing);
    }

    /** What of it a reader is told. */
    Map<String, String> named(Map<String, String> lasting) {
        return without(lasting, unnamed);
    }

    private static Map<String, String> without(Map<String, String> conditions, Set<String> names) {
        Map<String, String> fewer = new LinkedHashMap<>(conditions);
        fewer.keySet().removeAll(names);
        return fewer;
    }
}
