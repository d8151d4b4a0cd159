package org.ellwand.measurement;

import de.siegmar.fastcsv.reader.CsvCallbackHandler;
import de.siegmar.fastcsv.reader.RecordType;
import java.util.Arrays;

/** The row at hand, its cells trimmed. One object serves all rows of a sheet, so that millions of them cost nothing. */
final class SheetRow extends CsvCallbackHandler<SheetRow> {
    private final int linesAbove;
    private char[] chars = new char[256];
    private int length;
    private int[] starts = new int[16];
    private int[] ends = new int[16];
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
        return starts[cell] == ends[cell];
    }

    boolean isBlank() {
        for (int cell = 0; cell < size; cell++) {
            if (!isEmpty(cell)) {
                return false;
            }
        }
        return true;
    }

    String text(int cell) {
        return new String(chars, starts[cell], ends[cell] - starts[cell]);
    }

    char[] chars() {
        return chars;
    }

    int start(int cell) {
        return starts[cell];
    }

    int end(int cell) {
        return ends[cell];
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
        length = 0;
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
        if (size == starts.length) {
            starts = Arrays.copyOf(starts, 2 * size);
            ends = Arrays.copyOf(ends, 2 * size);
        }
        if (length + count > chars.length) {
            chars = Arrays.copyOf(chars, 2 * (length + count));
        }
        System.arraycopy(buffer, from, chars, length, count);
        starts[size] = length;
        length += count;
        ends[size++] = length;
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
