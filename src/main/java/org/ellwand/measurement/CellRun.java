package org.ellwand.measurement;

import java.util.Arrays;

/**
 * Cells side by side, which say much the same from row to row: told at one look whether all of them are as they were in the row
 * that was kept last.
 */
final class CellRun {
    private final int first;
    private final int last;
    private final int[] ends;
    private char[] chars = {};
    private int length = -1;

    /**
     * @param first of the cells
     * @param last of the cells
     */
    CellRun(int first, int last) {
        this.first = first;
        this.last = last;
        ends = new int[last - first + 1];
    }

    boolean isRepeated(SheetRow row) {
        int start = row.start(first);
        int end = row.end(last);
        boolean same = end - start == length && Arrays.equals(chars, 0, length, row.chars(), start, end);
        for (int c = 0; same && c < ends.length; c++) {
            same = ends[c] == row.end(first + c) - start;
        }
        return same;
    }

    void keep(SheetRow row) {
        int start = row.start(first);
        length = row.end(last) - start;
        if (length > chars.length) {
            chars = new char[2 * length];
        }
        System.arraycopy(row.chars(), start, chars, 0, length);
        for (int c = 0; c < ends.length; c++) {
            ends[c] = row.end(first + c) - start;
        }
    }
}
