package org.ellwand.measurement;

import java.util.Arrays;
import org.ellwand.input.Place;

/** Reads the column that the rows run over. Every distinct text is read once. */
final class AxisColumn {
    /** No position: the cell holds none, and that has been reported. */
    static final int NONE = Integer.MIN_VALUE;

    private static final int UNREAD = Integer.MIN_VALUE + 1;

    private final Axis axis;
    private final SheetColumn column;
    private final SheetNumbers numbers;
    private final String file;
    private final Found problems;
    private final CellTexts texts = new CellTexts();
    private int[] positions = new int[0];

    AxisColumn(Axis axis, SheetColumn column, SheetNumbers numbers, String file, Found problems) {
        this.axis = axis;
        this.column = column;
        this.numbers = numbers;
        this.file = file;
        this.problems = problems;
    }

    Axis axis() {
        return axis;
    }

    /** The position of a row, or {@link #NONE}. */
    int read(SheetRow row) {
        int id = texts.id(row.cell(column.index()));
        if (id >= positions.length) {
            int known = positions.length;
            positions = Arrays.copyOf(positions, 2 * id + 16);
            Arrays.fill(positions, known, positions.length, UNREAD);
        }
        // What is wrong is said again in every row where it stands.
        if (positions[id] == UNREAD || positions[id] == NONE) {
            positions[id] = position(row);
        }
        return positions[id];
    }

    private int position(SheetRow row) {
        if (row.isEmpty(column.index())) {
            return report(row, "the cell is empty; expected a " + axis.column());
        }
        double number = numbers.read(row, column.index());
        if (!numbers.fault().isEmpty()) {
            return report(row, "'" + row.text(column.index()) + "' " + numbers.fault());
        }
        return axis.position(number)
                .orElseGet(() -> report(row, "'" + row.text(column.index()) + "': " + axis.expected(number)));
    }

    private int report(SheetRow row, String text) {
        problems.add(new Place(file, row.line(), 0), "column '" + column.header() + "': " + text);
        return NONE;
    }
}
