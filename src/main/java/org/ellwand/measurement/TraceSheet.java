package org.ellwand.measurement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ellwand.amount.Dimension;
import org.ellwand.amount.Unit;
import org.jspecify.annotations.Nullable;

/** A sheet of levels against time. The time's unit stands in its header: nothing else would tell s from ms. */
final class TraceSheet implements SheetUser {
    private final SheetForm form;
    private final List<Double> timeS = new ArrayList<>();
    private final List<Double> levelDb = new ArrayList<>();
    private @Nullable ValueColumn times;
    private @Nullable ValueColumn levels;
    private double factor;
    private Optional<Unit> unit;

    TraceSheet(SheetForm form) {
        this.form = form;
        this.unit = form.valueUnit();
    }

    @Override
    public boolean header(List<SheetColumn> header, int line, SheetNumbers numbers) {
        int before = form.problems().size();
        for (SheetColumn column : header) {
            if (column.key().equals("time") && times == null) {
                time(column, line, numbers);
            } else if (column.key().equals("level") && levels == null) {
                level(column, line);
                levels = form.values(column, numbers);
            } else {
                form.report(line, "column '" + column.header() + "' is not one of time, level, each once");
            }
        }
        if (form.problems().size() == before && (times == null || levels == null)) {
            form.report(line, "there is no column '" + (times == null ? "time" : "level") + "' in the header");
        }
        return form.problems().size() == before;
    }

    private void time(SheetColumn column, int line, SheetNumbers numbers) {
        Optional<Unit> unit = column.unit().filter(u -> u.dimension() == Dimension.TIME);
        factor = unit.map(Unit::factor).orElse(0.0);
        times = new ValueColumn(column, numbers, "a time", form.file(), form.problems());
        if (unit.isEmpty()) {
            form.report(line, "column '" + column.header() + "' needs its unit, as in 'time (s)' or 'time (ms)'");
        }
    }

    /** Where neither session nor step name the unit of the levels, the header does. */
    private void level(SheetColumn column, int line) {
        form.isValueUnitRight(column, line);
        if (form.valueUnit().isEmpty()) {
            unit = column.unit().filter(Unit::isLevel);
            if (unit.isEmpty()) {
                form.report(
                        line,
                        "column '" + column.header() + "' needs its unit, as in 'level (dB SPL)': neither"
                                + " 'levels in' nor a step names it");
            }
        }
    }

    @Override
    public void row(SheetRow row) {
        if (times == null || levels == null) {
            throw new IllegalStateException("a row before its header");
        }
        int before = form.problems().size();
        double time = times.read(row) * factor;
        double level = levels.read(row);
        if (form.problems().size() > before) {
            return;
        }
        if (Double.isNaN(time) || Double.isNaN(level)) {
            form.report(row.line(), "a cell is empty; a trace has a time and a level in every row");
        } else if (!timeS.isEmpty() && time <= timeS.get(timeS.size() - 1)) {
            form.report(row.line(), "'" + row.text(times.column().index()) + "': the time does not rise");
        } else {
            timeS.add(time);
            levelDb.add(level);
        }
    }

    /** The unit of the levels; absent where that is a problem. */
    Optional<Unit> unit() {
        return unit;
    }

    List<Double> timeS() {
        return List.copyOf(timeS);
    }

    List<Double> levelDb() {
        return List.copyOf(levelDb);
    }
}
