package org.ellwand.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.ellwand.check.Finding;

/**
 * Findings as pages list them: of one kind in one session the first few, and how many more there are. A tip that leaks in
 * every insertion is one thing to know, not thirty. All stand in {@code audit.json} and are printed by {@code inspect}.
 */
final class FindingList {
    private FindingList() {}

    private record Kind(String session, String check, Finding.Errs errs, Finding.Consequence consequence) {
        static Kind of(Finding finding) {
            return new Kind(finding.session(), finding.check(), finding.errs(), finding.consequence());
        }
    }

    /** @param each how many of a kind are listed */
    static List<Object> of(List<Finding> findings, int each, Function<Finding, Map<String, Object>> model) {
        Map<Kind, List<Finding>> kinds = new LinkedHashMap<>();
        findings.forEach(
                f -> kinds.computeIfAbsent(Kind.of(f), k -> new ArrayList<>()).add(f));
        List<Object> listed = new ArrayList<>();
        for (List<Finding> kind : kinds.values()) {
            int shown = Math.min(each, kind.size());
            for (int i = 0; i < shown; i++) {
                int more = i == shown - 1 ? kind.size() - shown : 0;
                Map<String, Object> one = new LinkedHashMap<>(model.apply(kind.get(i)));
                one.put("more", more);
                listed.add(one);
            }
        }
        return listed;
    }
}
