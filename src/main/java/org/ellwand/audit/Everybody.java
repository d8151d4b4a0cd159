package org.ellwand.audit;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import org.ellwand.measurement.Reading;

/**
 * The readings of every person and product that a mean is over, by their positions; side by side where means are compared.
 *
 * @param sides of each, the readings of its members
 */
record Everybody(List<List<Set<Integer>>> sides) {
    /** @param positions those of some readings */
    static Everybody of(Subject subject, Function<Set<Reading>, Set<Integer>> positions) {
        Map<Boolean, List<Set<Integer>>> sides = new TreeMap<>();
        subject.repeats().stream()
                .filter(r -> r.count() > 1)
                .forEach(r -> sides.computeIfAbsent(
                                r.other().filter(Repeats.Other::isFirst).isPresent(), k -> new ArrayList<>())
                        .addAll(r.members().stream()
                                .map(m -> positions.apply(m.readings()))
                                .toList()));
        return new Everybody(List.copyOf(sides.values()));
    }

    /** Whether every member of a side has one of some readings. */
    boolean shares(BitSet readings) {
        return sides.stream()
                .anyMatch(side -> side.stream().allMatch(m -> m.stream().anyMatch(readings::get)));
    }
}
