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
    private int highest = Integer.MIN_VALUE;

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

    int lineOf(int i) {
        return lines[i];
    }

    /** Adds a number, NaN for an empty cell. Returns the line where the same band stood before, 0 where it did not. */
    int add(int band, double value, int inLine) {
        // Most sheets are in order already: a band above the last one is new.
        for (int i = 0; !ascending(band) && i < size; i++) {
            if (at[i] == band) {
                return lines[i];
            }
        }
        highest = Math.max(highest, band);
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

    /**
     * Takes in the numbers of other rows of the same reading.
     *
     * @return whether none of their bands was there before; else nothing is taken in
     */
    boolean takesIn(SheetReading part) {
        boolean apart = IntStream.range(0, part.size)
                .noneMatch(i -> IntStream.range(0, size).anyMatch(k -> at[k] == part.at[i]));
        for (int i = 0; apart && i < part.size; i++) {
            add(part.at[i], part.values[i], part.lines[i]);
        }
        return apart;
    }

    private boolean ascending(int band) {
        return band > highest;
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
        int[] bands = new int[size];
        int count = 0;
        for (int i = 0; i < size; i++) {
            if (Double.isFinite(values[i])) {
                bands[count++] = at[i];
            }
        }
        return Arrays.copyOf(bands, count);
    }

    /** The numbers of those bands. */
    double[] measuredDb() {
        double[] numbers = new double[size];
        int count = 0;
        for (int i = 0; i < size; i++) {
            if (Double.isFinite(values[i])) {
                numbers[count++] = values[i];
            }
        }
        return Arrays.copyOf(numbers, count);
    }

    boolean hasNumbers() {
        for (int i = 0; i < size; i++) {
            if (Double.isFinite(values[i])) {
                return true;
            }
        }
        return false;
    }
}
