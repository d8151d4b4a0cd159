package org.ellwand.pairing;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ellwand.measurement.Conditions;

/**
 * What differs in one condition only: the first is held against the second.
 *
 * @param conditions what both have in common
 * @param first what stands first in {@code between}
 * @param second what it is compared with
 */
public record Pair(Conditions conditions, Joined first, Joined second) {
    static Pair of(Joined first, Joined second) {
        Set<String> differing = first.conditions().values().entrySet().stream()
                .filter(e -> !second.conditions().get(e.getKey()).equals(Optional.of(e.getValue())))
                .map(Map.Entry::getKey)
                .collect(Collectors.toSet());
        return new Pair(first.conditions().without(differing), first, second);
    }

    /** {@return the cells of the first, then those of the second} */
    public List<Cell> cells() {
        return Stream.concat(first.cells().stream(), second.cells().stream()).toList();
    }
}
