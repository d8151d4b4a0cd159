package org.ellwand.measurement;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The readings of a sheet by the numbers of their condition texts, in the order in which they first appear. */
final class SheetReadings {
    private final List<SheetReading> readings = new ArrayList<>();
    private int[] slots = new int[64];
    private int[] hashes = new int[64];
    private @Nullable SheetReading last;

    /** The reading that was asked for last, or, where there is none yet, the one with this key. */
    SheetReading last(int[] key, int line) {
        return last == null ? with(key, line) : last;
    }

    /** The reading with this key; a new one begins in this line. The key is copied where it is kept. */
    SheetReading with(int[] key, int line) {
        last = readings.get(find(key, line));
        return last;
    }

    /**
     * Takes in a reading of the next part of the same sheet.
     *
     * @param key the numbers of its condition texts here
     * @param linesAbove by how much its lines lie further down
     * @return whether none of its bands was there before
     */
    boolean join(int[] key, SheetReading part, int linesAbove) {
        SheetReading whole = with(key, part.line() + linesAbove);
        boolean once = true;
        for (int i = 0; i < part.size(); i++) {
            once &= whole.add(part.at(i), part.value(i), part.lineOf(i) + linesAbove) == 0;
        }
        return once;
    }

    List<SheetReading> all() {
        return readings;
    }

    private int find(int[] key, int line) {
        int hash = hash(key);
        int slot = hash & (slots.length - 1);
        while (slots[slot] != 0) {
            // Keys lie far apart in memory: only one with the same hash is worth a look.
            if (hashes[slot] == hash
                    && Arrays.equals(readings.get(slots[slot] - 1).key(), key)) {
                return slots[slot] - 1;
            }
            slot = (slot + 1) & (slots.length - 1);
        }
        readings.add(new SheetReading(key.clone(), line));
        slots[slot] = readings.size();
        hashes[slot] = hash;
        growWhenHalfFull();
        return readings.size() - 1;
    }

    private static int hash(int[] key) {
        // Numbers that count up differ in their last bits alone: each is spread over all.
        int hash = 0;
        for (int number : key) {
            hash = (hash ^ number) * 0x9E3779B9;
            hash ^= hash >>> 15;
        }
        return hash;
    }

    private void growWhenHalfFull() {
        if (2 * readings.size() < slots.length) {
            return;
        }
        int[] before = slots;
        int[] hashesBefore = hashes;
        slots = new int[2 * before.length];
        hashes = new int[slots.length];
        for (int s = 0; s < before.length; s++) {
            if (before[s] != 0) {
                int slot = hashesBefore[s] & (slots.length - 1);
                while (slots[slot] != 0) {
                    slot = (slot + 1) & (slots.length - 1);
                }
                slots[slot] = before[s];
                hashes[slot] = hashesBefore[s];
            }
        }
    }
}
