package org.ellwand.demo;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** A sheet with one reading a column, as a spreadsheet set to decimal commas writes it. */
final class ColumnSheet {
    private static final List<String> NAMES = List.of("setting", "stimulus", "insertion", "take");

    private ColumnSheet() {}

    static String write(List<Curve> curves) {
        StringBuilder sheet = new StringBuilder("Frequency [Hz]");
        curves.forEach(curve -> sheet.append(';').append(heading(curve)));
        sheet.append('\n');
        for (int i = 0; i < Bands.ALL.size(); i++) {
            sheet.append(RowSheet.frequency(Bands.ALL.get(i)));
            int row = i;
            curves.forEach(curve -> sheet.append(';').append(level(curve, row)));
            sheet.append('\n');
        }
        return sheet.toString();
    }

    /** {@code flood pink-94 2}; {@code open ear pink-94 1}. */
    private static String heading(Curve curve) {
        String device = curve.conditions().containsKey("setting")
                ? ""
                : curve.conditions().get("device") + " ";
        return device
                + NAMES.stream()
                        .filter(curve.conditions()::containsKey)
                        .map(curve.conditions()::get)
                        .collect(Collectors.joining(" "));
    }

    private static String level(Curve curve, int row) {
        return String.format(Locale.ROOT, "%.2f", curve.levelsDb().get(row)).replace('.', ',');
    }
}
