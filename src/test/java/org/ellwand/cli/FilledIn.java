package org.ellwand.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The files of a plan, filled in as a bench would: flat curves of pink noise behind a product that takes some decibels off, a
 * room of 15 dB a band, a level that settles in 4 ms, harmonics 50 dB down, a tone and a programme that the product passes
 * unchanged but for a little scatter. All numbers are invented.
 */
final class FilledIn {
    private static final double ROOM_DB = 15;
    private static final Pattern SOUND = Pattern.compile("(?m)^  \"([^\"]+)\": \\{kind: .*?level: \\[?([0-9.]+) dB");

    private final Path plan;
    private final Path measurements;
    private final double attenuationDb;

    private FilledIn(Path plan, Path measurements, double attenuationDb) {
        this.plan = plan;
        this.measurements = measurements;
        this.attenuationDb = attenuationDb;
    }

    /** Copies every session file and sheet of {@code folder}'s plan into its measurements, with numbers. */
    static void in(Path folder, double attenuationDb) throws IOException {
        Path measurements = folder.resolve("measurements");
        Files.createDirectories(measurements);
        FilledIn filled = new FilledIn(folder.resolve("plan"), measurements, attenuationDb);
        try (Stream<Path> files = Files.list(filled.plan)) {
            for (Path file : files.filter(f -> f.toString().endsWith(".yaml")).toList()) {
                filled.session(file);
            }
        }
    }

    private void session(Path file) throws IOException {
        String text = Files.readString(file);
        Map<String, Double> levels = new HashMap<>();
        Matcher sounds = SOUND.matcher(text);
        while (sounds.find()) {
            levels.put(sounds.group(1), Double.valueOf(sounds.group(2)));
        }
        Files.writeString(measurements.resolve(file.getFileName()), numbers(text));
        Matcher sheets = Pattern.compile("file: \"([^\"]+)\"").matcher(text);
        while (sheets.find()) {
            String sheet = sheets.group(1);
            Files.writeString(measurements.resolve(sheet), sheet(sheet, Files.readString(plan.resolve(sheet)), levels));
        }
    }

    private static String numbers(String session) {
        return session.replaceAll("value: FILL([^,]*), uncertainty: FILL", "value: 10$1, uncertainty: 0.1")
                .replaceAll(
                        "(step-up.*)at: FILL s, from: FILL dB SPL, to: FILL", "$1at: 0.1 s, from: 55 dB SPL, to: 90")
                .replaceAll(
                        "(step-down.*)at: FILL s, from: FILL dB SPL, to: FILL", "$1at: 0.1 s, from: 90 dB SPL, to: 55")
                .replace("size: FILL ms", "size: 0.4 ms")
                .replace("size: FILL dB", "size: 0.3 dB")
                .replace("fundamental: FILL Hz", "fundamental: 500 Hz");
    }

    private String sheet(String name, String empty, Map<String, Double> levels) {
        List<String> rows = empty.lines().toList();
        StringBuilder sheet = new StringBuilder(rows.get(0)).append('\n');
        if (rows.get(0).startsWith("time")) {
            return sheet + trace(name);
        }
        for (String row : rows.subList(1, rows.size())) {
            sheet.append(row)
                    .append(String.format(Locale.ROOT, "%.2f", levelDb(rows.get(0), row, levels)))
                    .append('\n');
        }
        return sheet.toString();
    }

    private double levelDb(String header, String row, Map<String, Double> levels) {
        List<String> columns = List.of(header.split(",", -1));
        List<String> cells = List.of(row.split(",", -1));
        if (columns.get(0).equals("order")) {
            return cells.get(0).equals("1") ? 90 : 40;
        }
        if (columns.get(0).equals("head")) {
            return attenuationDb + cells.get(0).hashCode() % 3;
        }
        String sound = cells.get(columns.indexOf("stimulus"));
        double bandDb = levels.getOrDefault(sound, Double.NEGATIVE_INFINITY) - 13;
        double heardDb = cells.get(0).isEmpty() ? bandDb - attenuationDb : bandDb;
        return 10 * Math.log10(Math.pow(10, heardDb / 10) + Math.pow(10, ROOM_DB / 10));
    }

    private String trace(String name) {
        StringBuilder trace = new StringBuilder();
        double scatter = Math.floorMod(name.hashCode(), 100) / 1000.0;
        for (int ms = 0; ms <= 4000; ms += name.contains("step") ? 1 : 25) {
            double level;
            if (name.contains("step-up")) {
                level = ms < 100 ? 50 : ms < 104 ? 85 : 70;
            } else if (name.contains("step-down")) {
                level = ms < 100 ? 70 : ms < 104 ? 50 : 60;
            } else if (name.contains("programme")) {
                double programme = 75 + 6 * Math.sin(ms / 300.0);
                level = name.contains("open-ear")
                        ? programme
                        : programme - attenuationDb + scatter * Math.sin(ms / 200.0);
            } else {
                level = 80 + scatter * ms / 4000;
            }
            trace.append(String.format(Locale.ROOT, "%.3f,%.4f%n", ms / 1000.0, level));
        }
        return trace.toString();
    }
}
