package org.ellwand.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.ellwand.measurement.Stimulus;

/**
 * What no curve sheet holds: single figures, traces and harmonics, as a session file of its own with its empty sheets. What is to
 * be put in is written {@value BenchEntries#FILL}: until it is, the file is refused with its lines.
 */
final class BenchFile {
    private BenchFile() {}

    static String yaml(String product, BenchEntries entries) {
        StringBuilder text = new StringBuilder();
        line(
                text,
                "# To be completed at the bench: whatever says " + BenchEntries.FILL + ", and the sheets named here.");
        line(text, "session: " + Text.quoted(entries.id()));
        line(text, "product: " + Text.quoted(product));
        if (!entries.declared().isEmpty()) {
            line(text, "conditions: [" + quoted(entries.declared()) + "]");
        }
        if (!entries.harmonics.isEmpty()) {
            line(text, "levels in: dB SPL");
        }
        if (!entries.stimuli.isEmpty()) {
            line(text, "stimuli:");
            entries.stimuli.values().forEach(sound -> line(text, "  " + stimulus(sound)));
        }
        list(text, "uncertainty:                   # standard uncertainties, k = 1", causes(entries));
        list(text, "data:", entries.harmonics);
        text.append(readings(entries));
        return text.toString();
    }

    /** A sound with what is to be heeded of it. */
    static String stimulus(Stimulus sound) {
        boolean loud = Loudness.fieldDb(sound) > Loudness.MOST_ON_PEOPLE_DB;
        return SittingFile.line(sound) + (loud ? "   # on a fixture, not on people" : "");
    }

    /** Standard uncertainties to be stated; what drifts or is steady tells its spread by its repeats. */
    private static List<String> causes(BenchEntries entries) {
        List<String> causes = new ArrayList<>(timing(entries));
        if (!entries.harmonics.isEmpty()) {
            causes.add("{cause: reading, size: FILL dB, shared by: reading, across bands: independent}");
            causes.add("{cause: level of an insertion, size: FILL dB, shared by: insertion}");
        }
        return causes;
    }

    /** Those of times read off a step. Of levels a session with curves states its own, which hold for harmonics too. */
    static List<String> timing(BenchEntries entries) {
        return entries.steps.isEmpty()
                ? List.of()
                : List.of(
                        "{cause: timing, size: FILL ms, shared by: reading}",
                        "{cause: timing of an insertion, size: FILL ms, shared by: insertion}");
    }

    /** Traces and figures, which stand after everything else. */
    static String readings(BenchEntries entries) {
        StringBuilder text = new StringBuilder();
        if (!entries.programmes.isEmpty()) {
            line(text, "# The same stretch of the programme on the same clock, in place and with the open ear.");
        }
        list(text, "traces:", entries.traces());
        list(text, "figures:", entries.figures);
        return text.toString();
    }

    private static String quoted(List<String> names) {
        return names.stream().map(Text::quoted).collect(Collectors.joining(", "));
    }

    private static void list(StringBuilder text, String key, List<String> lines) {
        if (!lines.isEmpty()) {
            line(text, key);
            lines.forEach(one -> line(text, "  - " + one));
        }
    }

    private static void line(StringBuilder text, String content) {
        text.append(content).append('\n');
    }
}
