package org.ellwand.measurement;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ellwand.amount.Amount;
import org.ellwand.amount.Dimension;
import org.ellwand.input.Place;
import org.ellwand.input.YamlNode;

/**
 * One entry of {@code data}.
 *
 * @param headerLine 0 where it is the first line
 * @param ignored columns to leave out
 * @param columns what the session says of each column, only under {@link Layout#COLUMNS}
 * @param defaults conditions beside the file
 */
record DataEntry(
        DataFiles.DataFile file,
        Layout layout,
        int headerLine,
        Reading.Values values,
        Set<String> ignored,
        Map<String, WideSheet.WideColumn> columns,
        Optional<Amount> fundamental,
        Map<String, String> defaults,
        Place place) {

    /** How a sheet is laid out. */
    enum Layout {
        ROWS,
        COLUMNS,
        HARMONICS,
        ATTENUATION
    }

    static final Map<String, Layout> LAYOUTS = layoutWords();
    static final Map<String, Reading.Values> VALUES = valueWords();

    boolean isHarmonics() {
        return layout == Layout.HARMONICS;
    }

    /** Whether its numbers are levels, which need an open ear and a stimulus. */
    boolean isLevels() {
        return !isHarmonics() && values == Reading.Values.LEVELS;
    }

    private static Map<String, Layout> layoutWords() {
        Map<String, Layout> words = new LinkedHashMap<>();
        words.put("rows", Layout.ROWS);
        words.put("columns", Layout.COLUMNS);
        words.put("harmonics", Layout.HARMONICS);
        words.put("attenuation", Layout.ATTENUATION);
        return Collections.unmodifiableMap(words);
    }

    private static Map<String, Reading.Values> valueWords() {
        Map<String, Reading.Values> words = new LinkedHashMap<>();
        words.put("levels", Reading.Values.LEVELS);
        words.put("attenuation", Reading.Values.ATTENUATION);
        words.put("insertion gain", Reading.Values.INSERTION_GAIN);
        return Collections.unmodifiableMap(words);
    }

    /** Reads an entry; empty where something is wrong with it (reported). */
    static Optional<DataEntry> read(Keys keys, Set<String> conditions, DataFiles files) {
        int before = keys.problems().size();
        Optional<Layout> layout = keys.choice("layout", LAYOUTS);
        keys.need("file", "name the data file");
        keys.need("layout", "expected one of " + String.join(", ", LAYOUTS.keySet()));
        keys.onlyKnown("an entry of 'data'", ConditionNames.after(ownKeys(layout), conditions));
        Optional<DataFiles.DataFile> file = keys.text("file").flatMap(f -> files.find(f, keys.placeOf("file")));
        Reading.Values values = keys.choice("values", VALUES)
                .orElse(
                        layout.equals(Optional.of(Layout.ATTENUATION))
                                ? Reading.Values.SUBJECT_ATTENUATION
                                : Reading.Values.LEVELS);
        if (layout.equals(Optional.of(Layout.COLUMNS))) {
            keys.need("columns", "say what each column holds");
        }
        Map<String, WideSheet.WideColumn> columns = columns(keys, conditions);
        Optional<Amount> fundamental =
                keys.amount("fundamental", unit -> unit.dimension() == Dimension.FREQUENCY, "a frequency in Hz or kHz");
        int headerLine = keys.count("header line").orElse(0);
        Set<String> ignored = Set.copyOf(keys.texts("ignore"));
        Map<String, String> defaults = keys.conditions(conditions);
        if (keys.problems().size() > before || file.isEmpty() || layout.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new DataEntry(
                file.get(), layout.get(), headerLine, values, ignored, columns, fundamental, defaults, keys.place()));
    }

    static List<String> ownKeys(Optional<Layout> layout) {
        if (layout.isEmpty()) {
            return List.of("file", "layout", "header line", "ignore", "product", "values", "columns", "fundamental");
        }
        return switch (layout.get()) {
            case ROWS -> List.of("file", "layout", "header line", "ignore", "product", "values");
            case COLUMNS -> List.of("file", "layout", "header line", "ignore", "product", "values", "columns");
            case HARMONICS -> List.of("file", "layout", "header line", "ignore", "product", "fundamental");
            case ATTENUATION -> List.of("file", "layout", "header line", "ignore", "product");
        };
    }

    private static Map<String, WideSheet.WideColumn> columns(Keys keys, Set<String> conditions) {
        Map<String, WideSheet.WideColumn> columns = new LinkedHashMap<>();
        keys.mapping("columns").ifPresent(all -> {
            for (YamlNode.Entry entry : all.mapping().entries()) {
                Keys.of(entry.value(), "the column '" + entry.key() + "'", keys.problems())
                        .ifPresent(column -> {
                            column.onlyKnown("a column", conditions);
                            columns.put(
                                    entry.key(),
                                    new WideSheet.WideColumn(column.conditions(conditions), entry.keyPlace()));
                        });
            }
        });
        return columns;
    }
}
