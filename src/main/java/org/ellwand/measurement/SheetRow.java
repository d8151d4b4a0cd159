package org.ellwand.measurement;

import de.siegmar.fastcsv.reader.CsvCallbackHandler;
import de.siegmar.fastcsv.reader.RecordType;
import java.util.Arrays;

/**
 * The row at hand, its cells trimmed. One object serves all rows of a sheet, so that millions of them cost nothing; most cells
 * say the same as the one above, and it knows those.
 */
final class SheetRow extends CsvCallbackHandler<SheetRow> {
    private static final int USUAL_CELLS = 16;

    private final int linesAbove;
    private SheetCell[] cells = {};
    private int size;
    private int line;
    private boolean quotes;
    private boolean kept;
    private RecordType type = RecordType.DATA;

    /** @param linesAbove lines of the file that the parser does not see */
    SheetRow(int linesAbove) {
        this.linesAbove = linesAbove;
        this.line = linesAbove;
    }

    /** The 1-based line of the file where the row begins. */
    int line() {
        return line;
    }

    int size() {
        return size;
    }

    /** Whether any row so far had a cell in quotes, which may hold line ends. */
    boolean hasQuotes() {
        return quotes;
    }

    boolean isEmpty(int cell) {
        return cells[cell].length() == 0;
    }

    boolean isBlank() {
        for (int cell = 0; cell < size; cell++) {
            if (!isEmpty(cell)) {
                return false;
            }
        }
        return true;
    }

    /** Whether the cells that were kept say what they said then; one that changed to and fro meanwhile counts as changed. */
    boolean isKept() {
        return kept;
    }

    /** What those cells say is remembered; no others may have been kept before. */
    void keep(int[] those) {
        for (int cell : those) {
            cells[cell].keep();
        }
        kept = true;
    }

    String text(int cell) {
        return cells[cell].toString();
    }

    SheetCell cell(int cell) {
        return cells[cell];
    }

    @Override
    protected RecordType getRecordType() {
        return type;
    }

    @Override
    protected int getFieldCount() {
        return size;
    }

    @Override
    protected void beginRecord(long startingLineNumber) {
        line = linesAbove + Math.toIntExact(startingLineNumber);
        size = 0;
        type = RecordType.DATA;
    }

    @Override
    protected void addField(char[] buffer, int offset, int count, boolean quoted) {
        quotes |= quoted;
        int from = offset;
        int to = offset + count;
        while (from < to && isSpace(buffer[from])) {
            from++;
        }
        while (from < to && isSpace(buffer[to - 1])) {
            to--;
        }
        if (size == cells.length) {
            widen();
        }
        kept &= !cells[size++].set(buffer, from, to - from);
    }

    /** Spreadsheets also write no-break spaces. */
    private static boolean isSpace(char c) {
        return c <= ' ' || (c > '~' && (c == '\u00A0' || c == '\u202F'));
    }

    private void widen() {
        cells = Arrays.copyOf(cells, 2 * size + USUAL_CELLS);
        for (int cell = size; cell < cells.length; cell++) {
            cells[cell] = new SheetCell();
        }
    }

    @Override
    protected void setComment(char[] buffer, int offset, int count) {
        type = RecordType.COMMENT;
    }

    @Override
    protected void setEmpty() {
        type = RecordType.EMPTY;
    }

    @Override
    protected SheetRow buildRecord() {
        return this;
    }
}
