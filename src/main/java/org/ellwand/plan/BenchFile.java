package org.ellwand.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.ellwand.claim.Rule;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.Stimulus;

/**
 * What no curve sheet holds: single figures, traces and harmonics, as a session file of its own with its empty sheets. What is to
 * be put in is written {@value BenchEntries#FILL}: until it is, the file is refused with its lines.
 */
final class BenchFile {
    private final String id;
    private final String product;
    private final BenchEntries entries;

    private BenchFile(Plan plan) {
        this.product = plan.product().product().name();
        this.id = "plan-" + Text.slug(product + " bench");
        Map<String, Stimulus> known =
                plan.worn().stream().findFirst().map(Session::stimuli).orElse(Map.of());
        Wearer wearer = plan.worn().stream()
                .flatMap(session -> Wearer.of(session, product).stream())
                .findFirst()
                .orElseGet(Wearer::unknown);
        this.entries = new BenchEntries(id, new Sounds(known), wearer);
        plan.outlooks().stream()
                .filter(Outlook::isOfBench)
                .forEach(outlook -> new Wanted(outlook.audited().claim(), outlook.insertions())
                        .rules()
                        .forEach(rule -> add(rule, outlook, plan)));
    }

    /** The files by name; none where nothing of the kind is open. */
    static SortedMap<String, String> files(Plan plan) {
        return new BenchFile(plan).done();
    }

    /** The programmes that the open ear is to hear. */
    static List<Stimulus> programmes(Plan plan) {
        return new BenchFile(plan)
                .entries.programmes.values().stream()
                        .filter(sound -> Loudness.fieldDb(sound) <= Loudness.MOST_ON_PEOPLE_DB)
                        .toList();
    }

    private void add(Rule rule, Outlook outlook, Plan plan) {
        for (SortedMap<String, String> conditions : Wanted.combinations(rule, product, plan.worn())) {
            switch (rule.quantity()) {
                case "figure" -> entries.figure(rule, conditions);
                case "attack time", "release time" -> entries.step(rule, conditions);
                case "harmonic distortion" -> entries.harmonics(rule, conditions);
                case "level drift" -> entries.drift(rule, conditions, outlook.insertions());
                case "gain steadiness" -> entries.programme(rule, conditions, outlook.insertions());
                default -> {
                    // A rating needs a panel, which has a file of its own.
                }
            }
        }
    }

    private SortedMap<String, String> done() {
        SortedMap<String, String> files = new TreeMap<>(entries.sheets);
        if (!files.isEmpty() || !entries.figures.isEmpty()) {
            files.put(id + ".yaml", yaml());
        }
        return files;
    }

    private String yaml() {
        StringBuilder text = new StringBuilder();
        line(
                text,
                "# To be completed at the bench: whatever says " + BenchEntries.FILL + ", and the sheets named here.");
        line(text, "session: " + Text.quoted(id));
        line(text, "product: " + Text.quoted(product));
        if (!entries.declared().isEmpty()) {
            line(text, "conditions: [" + quoted(entries.declared()) + "]");
        }
        if (!entries.harmonics.isEmpty()) {
            line(text, "levels in: dB SPL");
        }
        if (!entries.stimuli.isEmpty()) {
            line(text, "stimuli:");
            entries.stimuli.values().forEach(sound -> line(text, "  " + SittingFile.line(sound) + caution(sound)));
        }
        uncertainty(text);
        list(text, "data", entries.harmonics);
        List<String> traces = new ArrayList<>(entries.steps);
        traces.addAll(entries.steady);
        if (!entries.programmes.isEmpty()) {
            line(text, "# The same stretch of the programme on the same clock, in place and with the open ear.");
        }
        list(text, "traces", traces);
        list(text, "figures", entries.figures);
        return text.toString();
    }

    /** Of times read off a step, and of levels; what drifts or is steady tells its spread by its repeats. */
    private void uncertainty(StringBuilder text) {
        if (entries.steps.isEmpty() && entries.harmonics.isEmpty()) {
            return;
        }
        line(text, "uncertainty:                   # standard uncertainties, k = 1");
        if (!entries.steps.isEmpty()) {
            line(text, "  - {cause: timing, size: FILL ms, shared by: reading}");
            line(text, "  - {cause: timing of an insertion, size: FILL ms, shared by: insertion}");
        }
        if (!entries.harmonics.isEmpty()) {
            line(text, "  - {cause: reading, size: FILL dB, shared by: reading, across bands: independent}");
            line(text, "  - {cause: level of an insertion, size: FILL dB, shared by: insertion}");
        }
    }

    private static String caution(Stimulus sound) {
        return Loudness.fieldDb(sound) > Loudness.MOST_ON_PEOPLE_DB ? "   # on a fixture, not on people" : "";
    }

    private static String quoted(List<String> names) {
        return names.stream().map(Text::quoted).collect(Collectors.joining(", "));
    }

    private static void list(StringBuilder text, String key, List<String> lines) {
        if (!lines.isEmpty()) {
            line(text, key + ":");
            lines.forEach(one -> line(text, "  - " + one));
        }
    }

    private static void line(StringBuilder text, String content) {
        text.append(content).append('\n');
    }
}
