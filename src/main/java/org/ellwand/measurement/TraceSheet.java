package org.ellwand.measurement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ellwand.amount.Dimension;
import org.ellwand.amount.Unit;
import org.jspecify.annotations.Nullable;

/**
 * A sheet of levels against time. A time whose header names no unit is in s, where the step of the sound bears it out: ms read as
 * s last long, or have their step among the first rows. Without a step nothing would tell s from ms.
 */
final class TraceSheet implements SheetUser {
    /** No trace of a step lasts longer. */
    private static final double LONGEST_BARE_S = 60;

    /** So many rows and more stand before a step. */
    private static final int FEWEST_BEFORE_STEP = 2;

    private final SheetForm form;
    private final List<Double> timeS = new ArrayList<>();
    private final List<Double> levelDb = new ArrayList<>();
    private @Nullable ValueColumn times;
    private @Nullable ValueColumn levels;
    private double factor;
    private int headerLine;
    private boolean bare;
    private Optional<Unit> unit;
    private final Optional<Step> step;

    /** @param step of the sound, where it has one */
    TraceSheet(SheetForm form, Optional<Step> step) {
        this.form = form;
        this.step = step;
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
        headerLine = line;
        bare = column.header().equalsIgnoreCase("time") && step.isPresent();
        factor = unit.orElse(Unit.SECOND).factor();
        times = new ValueColumn(column, numbers, "a time", form.file(), form.problems());
        if (unit.isEmpty() && !bare) {
            askForUnit(column);
        }
    }

    private void askForUnit(SheetColumn column) {
        form.report(headerLine, "column '" + column.header() + "' needs its unit, as in 'time (s)' or 'time (ms)'");
    }

    @Override
    public void end(SheetRow row) {
        if (bare && times != null && !timeS.isEmpty() && !isInSeconds(step.orElseThrow())) {
            askForUnit(times.column());
        }
    }

    private boolean isInSeconds(Step borneOutBy) {
        double atS = borneOutBy.at().in(Unit.SECOND);
        double lastingS = timeS.get(timeS.size() - 1) - timeS.get(0);
        return lastingS <= LONGEST_BARE_S && timeS.stream().filter(s -> s < atS).count() >= FEWEST_BEFORE_STEP;
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
