package org.ellwand.demo;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.ellwand.acoustics.Band;

/** A sheet with one band a row, comma and decimal point. */
final class RowSheet {
    private static final List<String> CONDITIONS = List.of("device", "fit", "setting", "stimulus", "insertion", "take");

    private RowSheet() {}

    static String write(List<Curve> curves) {
        return curves.stream()
                .map(RowSheet::rows)
                .collect(Collectors.joining("", String.join(",", CONDITIONS) + ",frequency (Hz),level (dB SPL)\n", ""));
    }

    private static String rows(Curve curve) {
        String conditions = CONDITIONS.stream()
                .map(name -> curve.conditions().getOrDefault(name, ""))
                .collect(Collectors.joining(","));
        StringBuilder rows = new StringBuilder();
        for (int i = 0; i < Bands.ALL.size(); i++) {
            rows.append(conditions).append(',').append(frequency(Bands.ALL.get(i)));
            rows.append(String.format(
                    Locale.ROOT, ",%.2f%n".replace("%n", "\n"), curve.levelsDb().get(i)));
        }
        return rows.toString();
    }

    static String frequency(Band band) {
        return String.format(Locale.ROOT, "%.0f", band.nominalHz());
    }
}
