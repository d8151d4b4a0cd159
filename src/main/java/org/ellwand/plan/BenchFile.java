package org.ellwand.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.ellwand.claim.Rule;

/**
 * What no curve sheet holds: single figures, traces of a step and harmonics, as a session file of its own with its empty sheets. What is to
 * be put in is written {@value #FILL}: until it is, the file is refused with its lines.
 */
final class BenchFile {
    static final String FILL = "FILL";

    private static final int FIRST_HARMONIC = 1;
    private static final int LAST_HARMONIC = 5;

    private final String id;
    private final String product;
    private final SortedMap<String, String> files = new TreeMap<>();
    private final List<String> traces = new ArrayList<>();
    private final List<String> harmonics = new ArrayList<>();
    private final List<String> figures = new ArrayList<>();

    private BenchFile(String product) {
        this.product = product;
        this.id = "plan-" + Text.slug(product + " bench");
    }

    /** The files by name; none where nothing of the kind is open. */
    static SortedMap<String, String> files(Plan plan) {
        BenchFile bench = new BenchFile(plan.product().product().name());
        plan.outlooks().stream()
                .filter(outlook -> outlook.advice() == Outlook.Advice.OTHER)
                .flatMap(outlook -> outlook.audited().claim().rule().stream())
                .forEach(bench::add);
        return bench.done();
    }

    private void add(Rule rule) {
        for (SortedMap<String, String> conditions : Wanted.combinations(rule, product, List.of())) {
            switch (rule.quantity()) {
                case "figure" -> figure(rule, conditions);
                case "attack time", "release time" -> trace(rule, conditions);
                case "harmonic distortion" -> harmonics(conditions);
                default -> {
                    // A rating needs a panel, and other traces a programme of their own: the advice says so.
                }
            }
        }
    }

    private void figure(Rule rule, SortedMap<String, String> conditions) {
        String unit = rule.limit().unit().symbol();
        String size = rule.limit().unit().isLevel() ? "dB" : unit;
        once(
                figures,
                "{of: " + Text.quoted(rule.of().orElse("")) + ", value: " + FILL + " " + unit + ", uncertainty: " + FILL
                        + " " + size + said(conditions) + "}");
    }

    private void trace(Rule rule, SortedMap<String, String> conditions) {
        String name = rule.quantity().equals("attack time") ? "step-up" : "step-down";
        String file = file(name, conditions);
        once(
                traces,
                "{file: " + Text.quoted(file) + said(conditions) + ", step: {at: " + FILL + " s, from: " + FILL
                        + " dB SPL, to: " + FILL + " dB SPL}}");
        files.put(file, "time (s),level (dB SPL)\n");
    }

    private void harmonics(SortedMap<String, String> conditions) {
        String file = file("harmonics", conditions);
        once(
                harmonics,
                "{file: " + Text.quoted(file) + ", layout: harmonics, fundamental: " + FILL + " Hz" + said(conditions)
                        + "}");
        StringBuilder sheet = new StringBuilder("order,level (dB SPL)\n");
        for (int order = FIRST_HARMONIC; order <= LAST_HARMONIC; order++) {
            sheet.append(order).append(",\n");
        }
        files.put(file, sheet.toString());
    }

    private static void once(List<String> lines, String line) {
        if (!lines.contains(line)) {
            lines.add(line);
        }
    }

    private String file(String what, SortedMap<String, String> conditions) {
        return id + "-" + Text.slug(what + " " + String.join(" ", conditions.values())) + ".csv";
    }

    private static String said(SortedMap<String, String> conditions) {
        return conditions.entrySet().stream()
                .map(one -> ", " + one.getKey() + ": " + Text.quoted(one.getValue()))
                .collect(Collectors.joining());
    }

    private SortedMap<String, String> done() {
        if (traces.isEmpty() && harmonics.isEmpty() && figures.isEmpty()) {
            return new TreeMap<>();
        }
        StringBuilder text = new StringBuilder();
        line(text, "# To be completed at the bench: whatever says " + FILL + ", and the sheets named here.");
        line(text, "session: " + Text.quoted(id));
        line(text, "product: " + Text.quoted(product));
        if (!traces.isEmpty() || !harmonics.isEmpty()) {
            if (!harmonics.isEmpty()) {
                line(text, "levels in: dB SPL");
            }
            line(text, "uncertainty:                   # standard uncertainties, k = 1");
            if (!traces.isEmpty()) {
                line(text, "  - {cause: timing, size: " + FILL + " ms, shared by: reading}");
                line(text, "  - {cause: timing of an insertion, size: " + FILL + " ms, shared by: insertion}");
            }
            if (!harmonics.isEmpty()) {
                line(
                        text,
                        "  - {cause: reading, size: " + FILL + " dB, shared by: reading, across bands: independent}");
                line(text, "  - {cause: level of an insertion, size: " + FILL + " dB, shared by: insertion}");
            }
        }
        list(text, "data", harmonics);
        list(text, "traces", traces);
        list(text, "figures", figures);
        files.put(id + ".yaml", text.toString());
        return files;
    }

    private static void list(StringBuilder text, String key, List<String> lines) {
        Optional.of(lines).filter(some -> !some.isEmpty()).ifPresent(some -> {
            line(text, key + ":");
            some.forEach(one -> line(text, "  - " + one));
        });
    }

    private static void line(StringBuilder text, String content) {
        text.append(content).append('\n');
    }
}
