package org.ellwand.audit;

import java.util.Arrays;
import java.util.BitSet;

/**
 * The numbers of readings that a draw moves, and how far. Of a lot the draw of a session moves millions of them, and so they
 * lie side by side in arrays.
 */
final class Entries {
    private int[] readings = new int[1];
    private int[] bands = new int[1];
    private double[] sizesDb = new double[1];
    private int size;

    /**
     * Adds a number of a reading.
     *
     * @param reading position in the index
     * @param band position in the reading's spectrum
     * @param sizeDb standard uncertainty, in dB
     * @return these entries
     */
    Entries add(int reading, int band, double sizeDb) {
        if (size == readings.length) {
            readings = Arrays.copyOf(readings, 2 * size);
            bands = Arrays.copyOf(bands, 2 * size);
            sizesDb = Arrays.copyOf(sizesDb, 2 * size);
        }
        readings[size] = reading;
        bands[size] = band;
        sizesDb[size++] = sizeDb;
        return this;
    }

    int size() {
        return size;
    }

    int reading(int entry) {
        return readings[entry];
    }

    int band(int entry) {
        return bands[entry];
    }

    double sizeDb(int entry) {
        return sizesDb[entry];
    }

    /** Positions of the readings. */
    BitSet readings() {
        BitSet set = new BitSet();
        for (int i = 0; i < size; i++) {
            set.set(readings[i]);
        }
        return set;
    }

    /** Whether all are of some readings. */
    boolean areOf(BitSet some) {
        return count(some) == size;
    }

    private int count(BitSet some) {
        int count = 0;
        for (int i = 0; i < size; i++) {
            count += some.get(readings[i]) ? 1 : 0;
        }
        return count;
    }

    /** Those of some readings; these themselves where that is all. */
    Entries of(BitSet some) {
        if (areOf(some)) {
            return this;
        }
        Entries part = new Entries();
        for (int i = 0; i < size; i++) {
            if (some.get(readings[i])) {
                part.add(readings[i], bands[i], sizesDb[i]);
            }
        }
        return part;
    }
}
