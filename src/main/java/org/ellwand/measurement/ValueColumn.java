package org.ellwand.measurement;

import org.ellwand.input.Place;

/**
 * Reads a column of levels.
 *
 * @param expected what stands in it, for a message: {@code a level in dB SPL}
 */
record ValueColumn(SheetColumn column, SheetNumbers numbers, String expected, String file, Found problems) {
    /** In the unit of the column, dB, s or ms: beyond all that is measured, and far below what sums and figures can hold. */
    private static final double MOST = 1e9;

    /** The number of a row; NaN where the cell is empty or (reported) wrong. */
    double read(SheetRow row) {
        int cell = column.index();
        if (row.isEmpty(cell)) {
            return Double.NaN;
        }
        double number = numbers.read(row, cell);
        // So NaN, which comes with a fault, is caught as well.
        if (!(Math.abs(number) <= MOST)) {
            String fault = numbers.fault().isEmpty() ? "is larger than anything measured" : numbers.fault();
            problems.add(
                    new Place(file, row.line(), 0),
                    "column '" + column.header() + "': '" + row.text(cell) + "' " + fault + "; expected " + expected);
        }
        return number;
    }
}
