package org.ellwand.examples;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.ellwand.acoustics.Band;

/** Writes readings one band a row; columns are the conditions that occur. */
final class Sheet {
    private static final List<String> NAMES = List.of(
            "device",
            "fit",
            "setting",
            "side",
            "unit",
            "firmware",
            "hand",
            "washes",
            "direction",
            "distance",
            "stimulus",
            "insertion",
            "take");

    private Sheet() {}

    /**
     * One reading.
     *
     * @param levelsDb in the order of the bands
     */
    record Reading(Map<String, String> conditions, List<Double> levelsDb) {}

    static String write(List<Band> bands, List<Reading> readings) {
        List<String> names = NAMES.stream()
                .filter(n -> readings.stream().anyMatch(r -> r.conditions().containsKey(n)))
                .toList();
        return String.join(",", names)
                + ",frequency (Hz),level (dB SPL)\n"
                + readings.stream().map(r -> rows(r, names, bands)).collect(Collectors.joining());
    }

    private static String rows(Reading reading, List<String> names, List<Band> bands) {
        String conditions = names.stream()
                .map(n -> reading.conditions().getOrDefault(n, ""))
                .collect(Collectors.joining(","));
        StringBuilder rows = new StringBuilder();
        for (int i = 0; i < bands.size(); i++) {
            rows.append(conditions)
                    .append(',')
                    .append(hz(bands.get(i)))
                    .append(String.format(
                            Locale.ROOT, ",%.2f", reading.levelsDb().get(i)))
                    .append('\n');
        }
        return rows.toString();
    }

    /** 31.5 and 1000, not 1000.0. */
    static String hz(Band band) {
        return String.format(Locale.ROOT, "%.1f", band.nominalHz()).replaceAll("\\.0$", "");
    }
}
