package org.ellwand.measurement;

import java.util.Arrays;

/** The numbers of one reading as they are gathered from its rows; bands and orders are counted by an integer. */
final class SheetReading {
    private final int[] key;
    private final int line;
    private int[] at = new int[32];
    private double[] values = new double[32];
    private int[] lines = new int[32];
    private int size;

    /**
     * @param key numbers of the condition texts that the rows of the reading share
     * @param line where its first row stands
     */
    SheetReading(int[] key, int line) {
        this.key = key;
        this.line = line;
    }

    int[] key() {
        return key;
    }

    int line() {
        return line;
    }

    int size() {
        return size;
    }

    int at(int i) {
        return at[i];
    }

    double value(int i) {
        return values[i];
    }

    /** Adds a number, NaN for an empty cell. Returns the line where the same band stood before, 0 where it did not. */
    int add(int band, double value, int inLine) {
        for (int i = 0; i < size; i++) {
            if (at[i] == band) {
                return lines[i];
            }
        }
        if (size == at.length) {
            at = Arrays.copyOf(at, 2 * size);
            values = Arrays.copyOf(values, 2 * size);
            lines = Arrays.copyOf(lines, 2 * size);
        }
        at[size] = band;
        values[size] = value;
        lines[size++] = inLine;
        return 0;
    }

    boolean hasNumbers() {
        return Arrays.stream(values, 0, size).anyMatch(Double::isFinite);
    }
}
