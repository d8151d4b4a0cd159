package org.ellwand.report;

import java.util.List;
import java.util.OptionalDouble;
import org.ellwand.audit.CellResult;
import org.ellwand.audit.Judgement;
import org.ellwand.check.Finding;
import org.ellwand.measurement.Conditions;

/** Which findings about the data touch which cells. */
final class Touching {
    private Touching() {}

    static List<Finding> of(List<Finding> findings, Judgement judgement) {
        return findings.stream()
                .filter(finding -> judgement.cells().stream().anyMatch(cell -> touches(finding, cell)))
                .toList();
    }

    static boolean touches(Finding finding, CellResult cell) {
        return agrees(cell.conditions(), "session", finding.session())
                && readingAgrees(finding.reading(), cell.conditions())
                && bandsAgree(finding, cell);
    }

    /** A finding's reading is written as its conditions: {@code setting=flood, stimulus=pink-94}. */
    private static boolean readingAgrees(String reading, Conditions cell) {
        for (String condition : reading.split(", ")) {
            int equals = condition.indexOf('=');
            String name = equals < 0 ? "" : condition.substring(0, equals);
            if (!agrees(cell, name, condition.substring(equals + 1))) {
                return false;
            }
        }
        return true;
    }

    private static boolean agrees(Conditions cell, String name, String value) {
        return cell.get(name).map(value::equals).orElse(true) || isOpenEar(name, value);
    }

    /** The open ear enters every cell of its session. */
    private static boolean isOpenEar(String name, String value) {
        return name.equals("device") && value.equals("open ear");
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
