package org.ellwand.measurement;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.ellwand.input.Nearest;
import org.ellwand.input.Place;
import org.jspecify.annotations.Nullable;

/** A sheet whose first column is the frequency; every other column is one reading, or is ignored. */
final class WideSheet implements SheetUser {
    private final SheetForm form;
    private final Map<String, WideColumn> wanted;
    private final List<ValueColumn> columns = new ArrayList<>();
    private final List<SheetCurve> curves = new ArrayList<>();
    private @Nullable AxisColumn axis;

    /**
     * What the session says of one column.
     *
     * @param place where it says so
     */
    record WideColumn(Map<String, String> conditions, Place place) {}

    WideSheet(SheetForm form, Map<String, WideColumn> wanted) {
        this.form = form;
        this.wanted = new LinkedHashMap<>(wanted);
    }

    @Override
    public boolean header(List<SheetColumn> header, int line, SheetNumbers numbers) {
        if (header.isEmpty()) {
            form.report(line, "the header names no column");
            return false;
        }
        boolean known =
                header.stream().skip(1).anyMatch(column -> nameOf(column).isPresent());
        if (!known && !wanted.isEmpty()) {
            form.report(line, noHeader());
            return false;
        }
        int before = form.problems().size();
        SheetColumn first = header.get(0);
        if (form.isAxisUnitRight(first, line)) {
            axis = form.axis(first, numbers);
        }
        Set<String> met = new TreeSet<>();
        for (SheetColumn column : header.subList(1, header.size())) {
            if (!form.ignores(column)) {
                add(column, line, numbers, met);
            }
        }
        wanted.forEach((name, said) -> {
            if (!met.contains(name)) {
                form.problems().add(said.place(), missing(name, header));
            }
        });
        return form.problems().size() == before;
    }

    /** What an instrument writes above the header, or another sheet. */
    private String noHeader() {
        return "this line is no header: it has none of the columns that the session lists, '"
                + String.join("', '", wanted.keySet())
                + "'; where the header stands further down, name its line beside the file, as 'header line: 8'";
    }

    private void add(SheetColumn column, int line, SheetNumbers numbers, Set<String> met) {
        Optional<String> name = nameOf(column);
        if (column.isBlank()) {
            form.report(line, "column " + (column.index() + 1) + " has no name");
        } else if (name.isEmpty()) {
            form.report(line, unlisted(column));
        } else if (!met.add(name.get())) {
            form.report(line, "column '" + name.get() + "' stands twice");
        } else if (form.isValueUnitRight(column, line)) {
            columns.add(form.values(column, numbers));
            Map<String, String> conditions = wanted.getOrDefault(name.get(), new WideColumn(Map.of(), Place.ofFile("")))
                    .conditions();
            curves.add(new SheetCurve(conditions, line, new SheetReading(new int[0], line)));
        }
    }

    /** The key of the session that means this column: by its whole header, else without its unit. */
    private Optional<String> nameOf(SheetColumn column) {
        Optional<String> whole = wantedAs(SheetColumn.key(column.header()));
        return whole.isPresent() ? whole : wantedAs(column.key());
    }

    private Optional<String> wantedAs(String key) {
        return wanted.keySet().stream()
                .filter(name -> SheetColumn.key(name).equals(key))
                .findFirst();
    }

    private String unlisted(SheetColumn column) {
        String name = "\"" + column.header().replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
        return "column " + name + " is neither listed nor ignored; beside the file write 'ignore: [" + name
                + "]', or under its 'columns' the line '" + name
                + ": {setting: …, stimulus: …}' with what it was measured under";
    }

    private static String missing(String name, List<SheetColumn> header) {
        List<String> names = header.stream().skip(1).map(SheetColumn::header).toList();
        return "no column is called '" + name + "'" + Nearest.hint(name, names);
    }

    @Override
    public void row(SheetRow row) {
        if (axis == null) {
            throw new IllegalStateException("a row before its header");
        }
        int position = axis.read(row);
        int before = 0;
        for (int i = 0; i < columns.size(); i++) {
            double value = columns.get(i).read(row);
            if (position != AxisColumn.NONE) {
                before = curves.get(i).numbers().add(position, value, row.line());
            }
        }
        if (before > 0) {
            form.reportTwice(row.line(), axis.axis().name(position), before);
        }
    }

    List<SheetCurve> curves() {
        return List.copyOf(curves);
    }
}
