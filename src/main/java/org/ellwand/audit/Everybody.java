package org.ellwand.audit;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.ellwand.quantity.ReadingIndex;

/**
 * The readings of every person and product that a mean is over, by their positions; side by side where means are compared.
 *
 * @param sides of each, the readings of its members
 */
record Everybody(List<List<int[]>> sides) {
    static Everybody of(Subject subject, ReadingIndex index) {
        Map<Boolean, List<int[]>> sides = new TreeMap<>();
        for (Repeats repeats : subject.repeats()) {
            if (repeats.count() > 1) {
                boolean second = repeats.other().filter(Repeats.Other::isFirst).isPresent();
                List<int[]> side = sides.computeIfAbsent(second, k -> new ArrayList<>());
                repeats.members().forEach(m -> side.add(index.positions(m.readings())));
            }
        }
        return new Everybody(List.copyOf(sides.values()));
    }

    /** Whether every member of a side has one of some readings. */
    boolean shares(BitSet readings) {
        return sides.stream().anyMatch(side -> side.stream().allMatch(member -> isAny(member, readings)));
    }

    private static boolean isAny(int[] member, BitSet readings) {
        for (int reading : member) {
            if (readings.get(reading)) {
                return true;
            }
        }
        return false;
    }
}
