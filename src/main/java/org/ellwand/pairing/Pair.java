package org.ellwand.pairing;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.ellwand.measurement.Conditions;

/**
 * Two cells that differ in one condition only: the first is held against the second.
 *
 * @param conditions what both have in common
 */
public record Pair(Conditions conditions, Cell first, Cell second) {

    /** Whether both hold the same set of insertions, so that what an insertion shares cancels. */
    public boolean sharesInsertions() {
        return keys(first).equals(keys(second));
    }

    /** The part of this pair that belongs to one insertion both share. */
    public Pair only(Insertion insertion) {
        Insertion other = second.insertions().stream()
                .filter(i -> i.key().equals(insertion.key()))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("not shared: " + insertion.key()));
        return new Pair(conditions, first.only(insertion), second.only(other));
    }

    private static Set<String> keys(Cell cell) {
        return cell.insertions().stream().map(Insertion::key).collect(Collectors.toCollection(HashSet::new));
    }

    static Conditions common(Cell first, Cell second) {
        Set<String> differing = first.conditions().values().entrySet().stream()
                .filter(e -> !second.conditions().get(e.getKey()).equals(Optional.of(e.getValue())))
                .map(Map.Entry::getKey)
                .collect(Collectors.toSet());
        return first.conditions().without(differing);
    }

    List<Cell> both() {
        return List.of(first, second);
    }
}
