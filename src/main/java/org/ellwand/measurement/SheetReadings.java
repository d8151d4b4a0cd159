package org.ellwand.measurement;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The readings of a sheet by the numbers of their condition texts, in the order in which they first appear. */
final class SheetReadings {
    private final List<SheetReading> readings = new ArrayList<>();
    private int[] slots = new int[64];
    private int last = -1;

    /** The reading that was asked for last, or, where there is none yet, the one with this key. */
    SheetReading last(int[] key, int line) {
        return last < 0 ? with(key, line) : readings.get(last);
    }

    /** The reading with this key; a new one begins in this line. The key is copied where it is kept. */
    SheetReading with(int[] key, int line) {
        last = find(key, line);
        return readings.get(last);
    }

    List<SheetReading> all() {
        return readings;
    }

    private int find(int[] key, int line) {
        int slot = slot(key);
        while (slots[slot] != 0) {
            if (Arrays.equals(readings.get(slots[slot] - 1).key(), key)) {
                return slots[slot] - 1;
            }
            slot = (slot + 1) & (slots.length - 1);
        }
        readings.add(new SheetReading(key.clone(), line));
        slots[slot] = readings.size();
        int index = readings.size() - 1;
        growWhenHalfFull();
        return index;
    }

    private int slot(int[] key) {
        // Numbers that count up differ in their last bits alone: each is spread over all.
        int hash = 0;
        for (int number : key) {
            hash = (hash ^ number) * 0x9E3779B9;
            hash ^= hash >>> 15;
        }
        return hash & (slots.length - 1);
    }

    private void growWhenHalfFull() {
        if (2 * readings.size() < slots.length) {
            return;
        }
        slots = new int[2 * slots.length];
        for (int i = 0; i < readings.size(); i++) {
            int slot = slot(readings.get(i).key());
            while (slots[slot] != 0) {
                slot = (slot + 1) & (slots.length - 1);
            }
            slots[slot] = i + 1;
        }
    }
}
