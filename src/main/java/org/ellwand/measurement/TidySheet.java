package org.ellwand.measurement;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.ellwand.input.FormulaSign;
import org.ellwand.input.Nearest;
import org.jspecify.annotations.Nullable;

/** A sheet with one number a row, its conditions in columns beside it. */
final class TidySheet implements SheetUser {
    private final SheetForm form;
    private final List<SheetColumn> conditions = new ArrayList<>();
    private final List<String> names = new ArrayList<>();
    private final List<CellTexts> texts = new ArrayList<>();
    private final SheetReadings readings = new SheetReadings();
    private @Nullable AxisColumn axis;
    private @Nullable ValueColumn values;
    private int[] key = {};
    private CellTexts[] ids = {};
    private int[] cells = {};
    private Optional<SheetNumbers> numbers = Optional.empty();
    private int lines;
    private boolean quotes;

    TidySheet(SheetForm form) {
        this.form = form;
    }

    @Override
    public boolean header(List<SheetColumn> columns, int line, SheetNumbers ofSheet) {
        numbers = Optional.of(ofSheet);
        int before = form.problems().size();
        if (columns.stream().noneMatch(this::isNumber)) {
            form.report(line, noHeader());
            return false;
        }
        Map<String, SheetColumn> byName = byName(columns, line);
        boolean misnamed = form.problems().size() > before;
        Optional<SheetColumn> axisColumn = needed(byName, form.axisName(), line, misnamed);
        Optional<SheetColumn> valueColumn = needed(byName, form.value(), line, misnamed);
        axisColumn.filter(column -> form.isAxisUnitRight(column, line)).ifPresent(c -> axis = form.axis(c, ofSheet));
        valueColumn
                .filter(column -> form.isValueUnitRight(column, line))
                .ifPresent(c -> values = form.values(c, ofSheet));
        byName.forEach((name, column) -> {
            if (form.conditions().contains(name)) {
                conditions.add(column);
                names.add(name);
                texts.add(new CellTexts());
            }
        });
        key = new int[conditions.size()];
        ids = texts.toArray(CellTexts[]::new);
        cells = conditions.stream().mapToInt(SheetColumn::index).toArray();
        return form.problems().size() == before;
    }

    private Map<String, SheetColumn> byName(List<SheetColumn> columns, int line) {
        Map<String, SheetColumn> byName = new TreeMap<>();
        for (SheetColumn column : columns) {
            if (!form.ignores(column)) {
                add(column, byName, line);
            }
        }
        return byName;
    }

    private void add(SheetColumn column, Map<String, SheetColumn> byName, int line) {
        Optional<String> name = nameOf(column);
        if (column.isBlank()) {
            form.report(line, "column " + (column.index() + 1) + " has no name");
        } else if (name.isEmpty()) {
            form.report(line, unknown(column));
        } else if (byName.putIfAbsent(name.get(), column) != null) {
            form.report(line, "column '" + name.get() + "' stands twice");
        }
    }

    private Optional<String> nameOf(SheetColumn column) {
        String whole = SheetColumn.key(column.header());
        Optional<String> condition = form.conditions().stream()
                .filter(name -> SheetColumn.key(name).equals(whole))
                .findFirst();
        return condition.isPresent() || !isNumber(column) ? condition : Optional.of(column.key());
    }

    private boolean isNumber(SheetColumn column) {
        return column.key().equals(form.axisName()) || column.key().equals(form.value());
    }

    /** What an instrument writes above the header, or a header in other words. */
    private String noHeader() {
        return "this line is no header: it has neither a column '" + form.axisName() + "' nor a column '" + form.value()
                + "'; where the header stands further down, name its line beside the file, as 'header line: 8'; cells"
                + " are separated by commas, semicolons or tabs; known columns are " + String.join(", ", known());
    }

    private String unknown(SheetColumn column) {
        for (String name : List.of(form.axisName(), form.value())) {
            if (column.isWithUnknownUnit(name)) {
                return "column '" + column.header() + "' has no known unit in its brackets";
            }
        }
        return "column '" + column.header() + "' is not known here" + Nearest.hint(column.key(), known())
                + "; known are " + String.join(", ", known()) + "; any other is listed under 'ignore'";
    }

    /** The two that every sheet has, and the conditions. */
    private Set<String> known() {
        Set<String> known = new LinkedHashSet<>(List.of(form.axisName(), form.value()));
        known.addAll(new TreeSet<>(form.conditions()));
        return known;
    }

    private Optional<SheetColumn> needed(Map<String, SheetColumn> byName, String name, int line, boolean misnamed) {
        Optional<SheetColumn> column = Optional.ofNullable(byName.get(name));
        if (column.isEmpty() && !misnamed) {
            form.report(line, "there is no column '" + name + "' in the header");
        }
        return column;
    }

    @Override
    public void row(SheetRow row) {
        if (axis == null || values == null) {
            throw new IllegalStateException("a row before its header");
        }
        int position = axis.read(row);
        double value = values.read(row);
        if (position == AxisColumn.NONE) {
            return;
        }
        boolean same = row.isKept() || isSameKey(row);
        SheetReading reading = same ? readings.last(key, row.line()) : readings.with(key, row.line());
        int before = reading.add(position, value, row.line());
        if (before > 0) {
            form.reportTwice(row.line(), axis.axis().name(position), before);
        }
    }

    @Override
    public void end(SheetRow row) {
        lines = row.line() - 1;
        quotes = row.hasQuotes();
    }

    /** How many line ends were read. */
    int lines() {
        return lines;
    }

    /** Whether any cell stood in quotes. */
    boolean hasQuotes() {
        return quotes;
    }

    /**
     * Takes in the next part of the same sheet.
     *
     * @param linesAbove by how much its lines lie further down
     * @return whether both go together: nothing stands twice, and decimal marks are the same
     */
    boolean join(TidySheet part, int linesAbove) {
        int[][] here = new int[key.length][];
        for (int i = 0; i < here.length; i++) {
            CellTexts own = texts.get(i);
            CellTexts others = part.texts.get(i);
            here[i] = IntStream.range(0, others.size())
                    .map(id -> own.id(others.text(id)))
                    .toArray();
        }
        boolean together = numbers.orElseThrow().join(part.numbers.orElseThrow());
        for (SheetReading reading : part.readings.all()) {
            for (int i = 0; i < key.length; i++) {
                key[i] = here[i][reading.key()[i]];
            }
            together &= readings.join(key, reading, linesAbove);
        }
        return together;
    }

    /** Whether the conditions are those of the row before; they are the key from now on. */
    private boolean isSameKey(SheetRow row) {
        boolean same = true;
        for (int i = 0; i < key.length; i++) {
            int id = ids[i].id(row.cell(cells[i]));
            same &= id == key[i];
            key[i] = id;
        }
        row.keep(cells);
        return same;
    }

    /** The curves, in the order in which they begin. */
    List<SheetCurve> curves() {
        int[] byName = IntStream.range(0, conditions.size())
                .boxed()
                .sorted(Comparator.comparing(names::get))
                .mapToInt(i -> i)
                .toArray();
        return readings.all().stream().map(reading -> curve(reading, byName)).toList();
    }

    private SheetCurve curve(SheetReading reading, int[] byName) {
        Map<String, String> cells = new LinkedHashMap<>();
        for (int i : byName) {
            if (reading.key()[i] != 0) {
                cells.put(names.get(i), FormulaSign.plain(texts.get(i).text(reading.key()[i])));
            }
        }
        return new SheetCurve(cells, reading.line(), reading);
    }
}
