package org.ellwand.check;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.ellwand.check.Finding.Consequence;

/**
 * Insertions whose settings were written down the wrong way round. They lie far from the others in both settings, which is no further
 * fault: what other checks say of that is left out, and the swap keeps their consequence.
 */
final class SwappedInsertions {
    private static final String SETTING = "setting=";
    private static final String INSERTION = "insertion=";

    /** What says that one insertion differs from others. */
    private static final Set<String> OF_ONE = Set.of(new TubeExcess().name(), new OddInsertion().name());

    /** What says that all of them differ. */
    private static final String OF_ALL = new FewInsertions().name();

    /** By the reading of the insertion, and of all insertions, as sets of conditions. */
    private final Set<Set<String>> insertions;

    private final Set<Set<String>> all;

    /** @param found of one session */
    SwappedInsertions(List<Finding> found) {
        insertions = found.stream()
                .filter(f -> f.remark().key().equals(SettingOrder.SWAPPED) && f.consequence() == Consequence.UNUSABLE)
                .map(f -> without(f, SETTING))
                .collect(Collectors.toSet());
        all = insertions.stream().map(parts -> without(parts, INSERTION)).collect(Collectors.toSet());
    }

    /** Whether a finding of the same session is but the swap, seen by another check. */
    boolean explain(Finding finding) {
        return OF_ONE.contains(finding.check())
                ? insertions.contains(without(finding, SETTING))
                : finding.check().equals(OF_ALL)
                        && finding.consequence() != Consequence.WIDENED
                        && all.contains(without(finding, SETTING));
    }

    private static Set<String> without(Finding finding, String condition) {
        return without(Set.of(finding.reading().split(", ", -1)), condition);
    }

    private static Set<String> without(Set<String> parts, String condition) {
        Set<String> fewer = new HashSet<>(parts);
        fewer.removeIf(part -> part.startsWith(condition));
        return fewer;
    }
}
