package org.ellwand.measurement;

import java.util.Optional;
import java.util.Set;
import org.ellwand.acoustics.Resolution;
import org.ellwand.amount.Dimension;
import org.ellwand.amount.Unit;
import org.ellwand.input.Place;

/**
 * What a sheet of curves is expected to hold.
 *
 * @param resolution of its bands; absent where the rows run over harmonic orders
 * @param value name of the column of numbers, where it has a fixed one
 * @param valueUnit unit of the numbers, absent where the session names none
 * @param conditions names that may head a column of conditions
 * @param ignored header cells of columns to leave out
 */
record SheetForm(
        String file,
        Optional<Resolution> resolution,
        String value,
        Optional<Unit> valueUnit,
        Set<String> conditions,
        Set<String> ignored,
        Found problems) {

    String axisName() {
        return resolution.isPresent() ? "frequency" : "order";
    }

    boolean ignores(SheetColumn column) {
        return ignored.stream()
                .map(SheetColumn::key)
                .anyMatch(key -> key.equals(SheetColumn.key(column.header())) || key.equals(column.key()));
    }

    AxisColumn axis(SheetColumn column, SheetNumbers numbers) {
        boolean kilo = column.unit().equals(Optional.of(Unit.KHZ));
        Axis axis =
                resolution.<Axis>map(r -> new FrequencyAxis(r, kilo ? 1000 : 1)).orElseGet(OrderAxis::new);
        return new AxisColumn(axis, column, numbers, file, problems);
    }

    ValueColumn values(SheetColumn column, SheetNumbers numbers) {
        String expected = "a level"
                + valueUnit.map(unit -> " in " + unit.symbol()).orElse("")
                + (resolution.isPresent() ? ", or an empty cell for a band that was not measured" : "");
        return new ValueColumn(column, numbers, expected, file, problems);
    }

    /** Whether the unit of the axis fits; reports it where not. */
    boolean isAxisUnitRight(SheetColumn column, int line) {
        boolean right = column.unit().isEmpty()
                || (resolution.isPresent() && column.unit().get().dimension() == Dimension.FREQUENCY);
        if (!right) {
            String expected = resolution.isPresent() ? "; expected Hz or kHz" : "; an order has no unit";
            report(line, "column '" + column.header() + "' is in " + symbol(column) + expected);
        }
        return right;
    }

    /** Whether the unit of a column of numbers fits; reports it where not. */
    boolean isValueUnitRight(SheetColumn column, int line) {
        boolean right =
                column.unit().isEmpty() || valueUnit.isEmpty() || column.unit().equals(valueUnit);
        if (!right) {
            String wanted = valueUnit.get() == Unit.DB
                    ? "; expected dB"
                    : ", but 'levels in' says " + valueUnit.get().symbol();
            report(line, "column '" + column.header() + "' is in " + symbol(column) + wanted);
        }
        return right;
    }

    private static String symbol(SheetColumn column) {
        return column.unit().map(Unit::symbol).orElse("");
    }

    void report(int line, String text) {
        problems.add(new Place(file, line, 0), text);
    }

    void reportTwice(int line, String what, int firstLine) {
        report(line, what + " stands twice in one reading, first in line " + firstLine);
    }
}
