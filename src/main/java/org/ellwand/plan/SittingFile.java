package org.ellwand.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Bands;
import org.ellwand.acoustics.Resolution;
import org.ellwand.amount.Amount;
import org.ellwand.input.FormulaSign;
import org.ellwand.measurement.Cause;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.Stimulus;
import org.ellwand.measurement.TypicalProbeTube;
import org.ellwand.measurement.Uncertainty;

/** A sitting as the session file and the empty sheet that an audit reads once the levels are in. */
final class SittingFile {
    private final Sitting sitting;
    private final Optional<BenchEntries> besides;
    private final StringBuilder text = new StringBuilder();

    private SittingFile(Sitting sitting, Optional<BenchEntries> besides) {
        this.sitting = sitting;
        this.besides = besides;
    }

    /** @param besides what is read in the same session besides its curves */
    static String yaml(Sitting sitting, Optional<BenchEntries> besides) {
        return new SittingFile(sitting, besides).yaml();
    }

    private String yaml() {
        line("# To be completed at the bench: the date, and the levels in " + sitting.file() + ".csv"
                + (besides.isPresent() ? "; whatever says " + BenchEntries.FILL + ", and the other sheets." : "."));
        line("session: " + Text.quoted(sitting.id()));
        line("# measured: 2026-01-31");
        sitting.like().flatMap(Session::rig).ifPresent(rig -> line("rig: " + Text.quoted(rig)));
        sitting.like().flatMap(Session::place).ifPresent(place -> line("place: " + Text.quoted(place)));
        line("product: " + Text.quoted(sitting.product()));
        sitting.defaults().forEach((name, value) -> line(name + ": " + Text.quoted(value)));
        line("resolution: " + sitting.resolution().text());
        line("levels in: " + sitting.levelsIn().symbol());
        line("stimuli:");
        stimuli().values().forEach(sound -> line("  " + BenchFile.stimulus(sound)));
        line("open ear: scaled               # read at quiet levels only, to spare the ear");
        line("settings switched: in place    # or 'between insertions': then number the insertions anew");
        conditions();
        uncertainty();
        line("data:");
        line("  - {file: " + Text.quoted(sitting.file() + ".csv") + ", layout: rows}");
        besides.ifPresent(bench -> {
            bench.harmonics.forEach(one -> line("  - " + one));
            text.append(BenchFile.readings(bench));
        });
        return text.toString();
    }

    private Map<String, Stimulus> stimuli() {
        Map<String, Stimulus> stimuli = new LinkedHashMap<>();
        sitting.stimuli().forEach(sound -> stimuli.put(sound.id(), sound));
        besides.ifPresent(bench -> bench.stimuli.forEach(stimuli::putIfAbsent));
        return stimuli;
    }

    private void conditions() {
        SortedSet<String> declared = sitting.declaredConditions();
        besides.ifPresent(bench -> declared.addAll(bench.declared()));
        if (!declared.isEmpty()) {
            line("conditions: [" + declared.stream().map(Text::quoted).collect(Collectors.joining(", ")) + "]");
        }
    }

    /** A sound as a session file has it. */
    static String line(Stimulus sound) {
        return Text.quoted(sound.id()) + ": {" + sound(sound) + "}";
    }

    private static String sound(Stimulus sound) {
        String levels = sound.levels().stream().map(SittingFile::amount).collect(Collectors.joining(", "));
        String level = levels.isEmpty() ? "" : ", level: " + (sound.levels().size() == 1 ? levels : "[" + levels + "]");
        String peak = sound.peak().map(amount -> ", peak: " + amount(amount)).orElse("");
        return "kind: " + Text.quoted(sound.kind()) + level + peak;
    }

    private static String amount(Amount amount) {
        return Text.number(amount.value(), amount.decimals()) + " "
                + amount.unit().symbol();
    }

    private void uncertainty() {
        List<String> more = besides.map(BenchFile::timing).orElse(List.of());
        Uncertainty sizes = sitting.uncertainty().orElse(new Uncertainty.Declared(List.of(), true));
        if (!(sizes instanceof Uncertainty.Declared declared)) {
            line("uncertainty: unknown           # list the causes, or no verdict can be firm");
            return;
        }
        boolean typical = declared.typicalProbeTube() || declared.causes().isEmpty();
        if (typical && more.isEmpty()) {
            line("uncertainty: typical probe tube");
            return;
        }
        line(
                typical
                        ? "uncertainty:                   # those typical of a probe tube, and your own"
                        : "uncertainty:                   # those of the earlier sitting: are they still right?");
        (typical ? TypicalProbeTube.causes() : declared.causes()).forEach(cause -> line("  - " + cause(cause)));
        more.forEach(cause -> line("  - " + cause));
    }

    private String cause(Cause cause) {
        String unit = " " + cause.unit().symbol();
        String size = cause.sizes().size() == 1
                ? Text.number(cause.sizes().get(0).size(), 4).replaceFirst("\\.?0+$", "") + unit
                : "[" + String.join(", ", sizes(cause, unit)) + "]";
        return "{cause: " + Text.quoted(cause.name()) + ", size: " + size + ", shared by: "
                + cause.sharedBy().name().toLowerCase(Locale.ROOT)
                + (cause.independentAcrossBands() ? ", across bands: independent" : "") + "}";
    }

    private List<String> sizes(Cause cause, String unit) {
        List<String> parts = new ArrayList<>();
        for (Cause.Size size : cause.sizes()) {
            String number = Text.number(size.size(), 4).replaceFirst("\\.?0+$", "");
            parts.add("{bands: " + range(size) + ", size: " + number + unit + "}");
        }
        return parts;
    }

    private String range(Cause.Size size) {
        if (size.fromHz() == 0) {
            return "below " + between(size.toHz()) + " Hz";
        }
        return size.toHz() == Double.POSITIVE_INFINITY
                ? "above " + between(size.fromHz()) + " Hz"
                : between(size.fromHz()) + " to " + between(size.toHz()) + " Hz";
    }

    /** A frequency between the last band below a bound and the first one from it on, so that no band lies on it. */
    private String between(double hz) {
        Resolution resolution = sitting.resolution();
        SortedSet<Double> centres = new TreeSet<>();
        int last = Band.nearest(resolution, Bands.HIGHEST_HZ).index();
        for (int i = Band.nearest(resolution, Bands.LOWEST_HZ).index(); i <= last; i++) {
            centres.add(new Band(resolution, i).nominalHz());
        }
        SortedSet<Double> below = centres.headSet(hz);
        SortedSet<Double> from = centres.tailSet(hz);
        double low = below.isEmpty() ? hz : below.last();
        double high = from.isEmpty() ? hz : from.first();
        return Text.number(Math.sqrt(low * high), 1);
    }

    private void line(String content) {
        text.append(content).append('\n');
    }

    /** The sheet with every reading and band, the levels left empty. */
    static String sheet(Sitting sitting) {
        List<String> columns = columns(sitting);
        StringBuilder sheet =
                new StringBuilder(columns.stream().map(SittingFile::cell).collect(Collectors.joining(",")));
        sheet.append(",frequency (Hz),level (")
                .append(sitting.levelsIn().symbol())
                .append(")\n");
        List<String> frequencies = sitting.bands().stream()
                .map(band -> Text.number(band.nominalHz(), 2).replaceFirst("\\.?0+$", ""))
                .toList();
        for (PlannedReading reading : sitting.readings()) {
            String conditions =
                    columns.stream().map(column -> cell(reading.cell(column))).collect(Collectors.joining(","));
            frequencies.forEach(
                    hz -> sheet.append(conditions).append(',').append(hz).append(",\n"));
        }
        return sheet.toString();
    }

    private static List<String> columns(Sitting sitting) {
        SortedSet<String> varied = new TreeSet<>();
        sitting.readings().forEach(reading -> varied.addAll(reading.conditions().keySet()));
        varied.remove("device");
        List<String> columns = new ArrayList<>(List.of("device"));
        columns.addAll(varied);
        columns.addAll(List.of("stimulus", "insertion", "take"));
        return columns;
    }

    private static String cell(String name) {
        String text = FormulaSign.guarded(name);
        return text.matches("[^,;\"\\t\\r\\n]*") ? text : "\"" + text.replace("\"", "\"\"") + "\"";
    }
}
