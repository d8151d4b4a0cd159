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
    private static final int USUAL_LENGTH = 16;

    private final int linesAbove;
    private char[][] chars = new char[USUAL_CELLS][USUAL_LENGTH];
    private int[] lengths = new int[USUAL_CELLS];
    private boolean[] changed = new boolean[USUAL_CELLS];
    private int size;
    private int line;
    private boolean quotes;
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
        return lengths[cell] == 0;
    }

    boolean isBlank() {
        for (int cell = 0; cell < size; cell++) {
            if (!isEmpty(cell)) {
                return false;
            }
        }
        return true;
    }

    /** Whether cells say what they said when they were kept; one that changed to and fro meanwhile counts as changed. */
    boolean isKept(int[] cells) {
        for (int cell : cells) {
            if (changed[cell]) {
                return false;
            }
        }
        return true;
    }

    /** What those cells say is remembered. */
    void keep(int[] cells) {
        for (int cell : cells) {
            changed[cell] = false;
        }
    }

    String text(int cell) {
        return new String(chars[cell], 0, lengths[cell]);
    }

    /** The characters of a cell, up to its length. */
    char[] chars(int cell) {
        return chars[cell];
    }

    int length(int cell) {
        return lengths[cell];
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
        append(buffer, from, to - from);
    }

    /** Spreadsheets also write no-break spaces. */
    private static boolean isSpace(char c) {
        return c <= ' ' || c == '\u00A0' || c == '\u202F';
    }

    private void append(char[] buffer, int from, int count) {
        if (size == lengths.length) {
            widen();
        }
        int cell = size++;
        if (changed[cell] || !isAsAbove(cell, buffer, from, count)) {
            changed[cell] = true;
            if (count > chars[cell].length) {
                chars[cell] = new char[2 * count];
            }
            System.arraycopy(buffer, from, chars[cell], 0, count);
            lengths[cell] = count;
        }
    }

    /** Cells are short: comparing them here is quicker than asking to have arrays compared. */
    private boolean isAsAbove(int cell, char[] buffer, int from, int count) {
        if (lengths[cell] != count) {
            return false;
        }
        char[] above = chars[cell];
        for (int i = count - 1; i >= 0; i--) {
            if (above[i] != buffer[from + i]) {
                return false;
            }
        }
        return true;
    }

    private void widen() {
        chars = Arrays.copyOf(chars, 2 * size);
        Arrays.fill(chars, size, 2 * size, new char[0]);
        lengths = Arrays.copyOf(lengths, 2 * size);
        changed = Arrays.copyOf(changed, 2 * size);
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
