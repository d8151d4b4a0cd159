package org.ellwand.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.ellwand.check.Finding;
import org.ellwand.check.Inspection;
import org.ellwand.check.NotChecked;
import org.ellwand.measurement.Session;

/**
 * Findings as a terminal shows them: session by session, those alike together, the worst of them in full and of the others where they
 * were found.
 */
final class FindingsText {
    /** Of findings alike, so many places are named. */
    private static final int MOST_PLACES = 12;

    private final PrintWriter out;
    private final Inspection inspection;
    private final boolean all;

    /** @param all whether each finding is told in full */
    FindingsText(PrintWriter out, Inspection inspection, boolean all) {
        this.out = out;
        this.inspection = inspection;
        this.all = all;
    }

    void print(List<Session> sessions) {
        List<String> common = notCheckedInAny(sessions);
        sessions.forEach(session -> print(session, common));
        if (!common.isEmpty()) {
            line("in every session");
            common.forEach(what -> line("  " + what));
            out.println();
        }
    }

    private void print(Session session, List<String> common) {
        line("session " + session.id() + " (" + session.file() + ")");
        alike(session).forEach(this::tell);
        notChecked(session).stream().filter(what -> !common.contains(what)).forEach(what -> line("  " + what));
        out.println();
    }

    private List<String> notChecked(Session session) {
        return inspection.notChecked().stream()
                .filter(n -> n.session().equals(session.id()))
                .map(FindingsText::text)
                .toList();
    }

    private static String text(NotChecked not) {
        return "not checked, " + not.check() + ": " + not.because();
    }

    /** What could be checked in none of several sessions is told once. */
    private List<String> notCheckedInAny(List<Session> sessions) {
        if (sessions.size() < 2) {
            return List.of();
        }
        List<String> common = new ArrayList<>(notChecked(sessions.get(0)));
        sessions.forEach(session -> common.retainAll(notChecked(session)));
        return common;
    }

    private List<List<Finding>> alike(Session session) {
        Map<Object, List<Finding>> kinds = new LinkedHashMap<>();
        for (Finding finding : inspection.findings()) {
            if (finding.session().equals(session.id())) {
                Object kind = all
                        ? finding
                        : List.of(finding.check(), finding.remark().key(), finding.errs(), finding.consequence());
                kinds.computeIfAbsent(kind, k -> new ArrayList<>()).add(finding);
            }
        }
        return List.copyOf(kinds.values());
    }

    private void tell(List<Finding> alike) {
        Finding worst = alike.stream()
                .max(Comparator.comparingDouble(FindingsText::beyond))
                .orElseThrow();
        line("  " + worst.check() + ": " + worst.text());
        String where = worst.reading().replace("=", " ") + bands(worst);
        if (!where.isEmpty()) {
            line("    at " + where);
        }
        line("    " + worst.errs().text() + "; " + worst.consequence().text());
        List<Finding> others = new ArrayList<>(alike);
        others.remove(worst);
        if (!others.isEmpty()) {
            line("    also at " + places(worst, others));
        }
    }

    /** How far a figure lies beyond its threshold; of equals, the first is told. */
    private static double beyond(Finding finding) {
        return finding.measure().map(m -> Math.abs(m.figure() - m.threshold())).orElse(0.0);
    }

    /** Where others were found, by what tells them from the worst. */
    private static String places(Finding worst, List<Finding> others) {
        List<String> named = Arrays.asList(worst.reading().split(", ", -1));
        List<String> places = others.stream()
                .map(other -> Arrays.stream(other.reading().split(", ", -1))
                        .filter(part -> !named.contains(part))
                        .map(part -> part.replace("=", " "))
                        .collect(Collectors.joining(", ")))
                .map(place -> place.isEmpty() ? "other bands" : place)
                .distinct()
                .toList();
        String some = places.stream().limit(MOST_PLACES).collect(Collectors.joining("; "));
        return places.size() <= MOST_PLACES
                ? some
                : some + "; and " + (places.size() - MOST_PLACES) + " more, which --all lists";
    }

    private static String bands(Finding finding) {
        if (finding.bands().isEmpty()) {
            return "";
        }
        double lowest = finding.bands().get(0);
        double highest = finding.bands().get(finding.bands().size() - 1);
        String range = lowest == highest ? hertz(lowest) : hertz(lowest) + " to " + hertz(highest);
        return (finding.reading().isEmpty() ? "" : "; ") + range + " Hz ("
                + counted(finding.bands().size(), "band", "bands") + ")";
    }

    private static String hertz(double hz) {
        return hz == Math.rint(hz) ? Long.toString((long) hz) : Double.toString(hz);
    }

    static String counted(int count, String one, String many) {
        return count + " " + (count == 1 ? one : many);
    }

    /** What stands in a file is not to steer a terminal. */
    private void line(String text) {
        out.println(Plain.line(text));
    }
}
