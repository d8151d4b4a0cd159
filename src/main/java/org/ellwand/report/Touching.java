package org.ellwand.report;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.ellwand.amount.Dimension;
import org.ellwand.audit.CellResult;
import org.ellwand.audit.Judgement;
import org.ellwand.check.Finding;
import org.ellwand.claim.Rule;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.Reading;

/** Which findings about the data touch which cells. */
final class Touching {
    /** What errs alike in both of two levels does not touch their difference. */
    private static final Set<String> DIFFERENCES = Set.of("attenuation", "insertion gain");

    private static final Set<Dimension> LEVELS = Set.of(Dimension.LEVEL, Dimension.LEVEL_A, Dimension.LEVEL_C);

    /** What stands between two conditions of a reading. */
    private static final String NEXT = ", ";

    private Touching() {}

    static List<Finding> of(List<Finding> findings, Judgement judgement) {
        // What was worked out from a printed table has no reading that could be at fault.
        if (!judgement.rule().table().isEmpty()) {
            return List.of();
        }
        return findings.stream()
                .filter(finding -> finding.about() != Finding.About.ABSOLUTE_LEVELS
                        || !DIFFERENCES.contains(judgement.rule().quantity()))
                .filter(finding -> concernsFigure(finding, judgement.rule()))
                .filter(finding -> judgement.cells().stream().anyMatch(cell -> touches(finding, cell)))
                .toList();
    }

    /** Faults of curves touch no single figure, and those of a figure none but the rules about it. */
    private static boolean concernsFigure(Finding finding, Rule rule) {
        if (finding.about() == Finding.About.FIGURES) {
            return rule.of()
                    .filter(name -> (finding.reading() + ", ").contains("figure=" + name + ", "))
                    .isPresent();
        }
        boolean ofWholeSession = finding.reading().isEmpty()
                && LEVELS.contains(rule.limit().unit().dimension());
        return rule.of().isEmpty() || ofWholeSession;
    }

    static boolean touches(Finding finding, CellResult cell) {
        return cell.conditions().get("session").map(finding.session()::equals).orElse(true)
                && readingAgrees(finding.reading(), cell.conditions())
                && bandsAgree(finding, cell);
    }

    /** A finding's reading is written as its conditions: {@code setting=flood, stimulus=pink-94}. */
    private static boolean readingAgrees(String reading, Conditions cell) {
        for (String name : cell.names()) {
            if (!says(reading, name, cell.get(name).orElse("")) && !isOpenEar(name, reading)) {
                return false;
            }
        }
        return true;
    }

    /** Whether it says this of a condition, or nothing at all. */
    private static boolean says(String reading, String name, String value) {
        boolean named = false;
        for (int from = 0; from >= 0; from = after(reading, from)) {
            int equals = from + name.length();
            if (reading.startsWith(name, from) && reading.startsWith("=", equals)) {
                named = true;
                int end = equals + 1 + value.length();
                if (reading.startsWith(value, equals + 1)
                        && (end == reading.length() || reading.startsWith(NEXT, end))) {
                    return true;
                }
            }
        }
        return !named;
    }

    /** Where the condition after one begins; negative after the last. */
    private static int after(String reading, int from) {
        int end = reading.indexOf(NEXT, from);
        return end < 0 ? end : end + NEXT.length();
    }

    /** The open ear enters every cell of its session, whatever device the cell is of. */
    private static boolean isOpenEar(String name, String reading) {
        return name.equals("device") && says(reading, name, Reading.OPEN_EAR);
    }

    private static boolean bandsAgree(Finding finding, CellResult cell) {
        return finding.bands().isEmpty()
                || cell.bands().isEmpty()
                || cell.bands().stream().anyMatch(band -> speaksOf(finding, band.hz()));
    }

    static boolean speaksOf(Finding finding, OptionalDouble hz) {
        return hz.isPresent() && finding.bands().contains(hz.getAsDouble());
    }
}
