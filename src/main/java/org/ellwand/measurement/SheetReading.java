package org.ellwand.measurement;

import java.util.Arrays;
import java.util.stream.IntStream;

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

    /** Puts the numbers in the order of their bands. */
    void sort() {
        // Most sheets are in order already.
        for (int i = 1; i < size; i++) {
            for (int k = i; k > 0 && at[k] < at[k - 1]; k--) {
                swap(k, k - 1);
            }
        }
    }

    private void swap(int i, int k) {
        int band = at[i];
        at[i] = at[k];
        at[k] = band;
        double value = values[i];
        values[i] = values[k];
        values[k] = value;
        int inLine = lines[i];
        lines[i] = lines[k];
        lines[k] = inLine;
    }

    /** The bands that have a number. */
    int[] measured() {
        return IntStream.range(0, size)
                .filter(i -> Double.isFinite(values[i]))
                .map(i -> at[i])
                .toArray();
    }

    /** The numbers of those bands. */
    double[] measuredDb() {
        return Arrays.stream(values, 0, size).filter(Double::isFinite).toArray();
    }

    boolean hasNumbers() {
        return Arrays.stream(values, 0, size).anyMatch(Double::isFinite);
    }
}
