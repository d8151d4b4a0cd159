package org.ellwand.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.ellwand.audit.CellResult;
import org.ellwand.measurement.Conditions;

/**
 * The cells that a reading may have entered, looked up by the conditions that both name. What the sound is called is left
 * out: a cell may name the kind of it and the reading its id.
 */
final class CellLookup {
    private static final String STIMULUS = "stimulus";

    private final Map<Set<String>, List<Conditions>> byNames = new LinkedHashMap<>();
    private final Map<Names, Map<Conditions, List<Conditions>>> tables = new HashMap<>();

    /** The names of some cells, and those of them that a reading names too. */
    private record Names(Set<String> ofCell, Set<String> shared) {}

    CellLookup(List<CellResult> cells) {
        for (CellResult cell : cells) {
            byNames.computeIfAbsent(Set.copyOf(cell.conditions().values().keySet()), k -> new ArrayList<>())
                    .add(cell.conditions());
        }
    }

    /** Cells that agree with a reading in every condition that both name, the sound aside. */
    Stream<Conditions> like(Conditions reading) {
        return byNames.entrySet().stream().flatMap(cells -> like(reading, cells.getKey(), cells.getValue()));
    }

    private Stream<Conditions> like(Conditions reading, Set<String> names, List<Conditions> cells) {
        Set<String> shared = new TreeSet<>(names);
        shared.retainAll(reading.values().keySet());
        shared.remove(STIMULUS);
        Set<String> others = new TreeSet<>(names);
        others.removeAll(shared);
        Map<Conditions, List<Conditions>> found =
                tables.computeIfAbsent(new Names(names, shared), t -> table(cells, others));
        Map<String, String> own = new HashMap<>(reading.values());
        own.keySet().retainAll(shared);
        return found.getOrDefault(Conditions.of(own), List.of()).stream();
    }

    private static Map<Conditions, List<Conditions>> table(List<Conditions> cells, Set<String> without) {
        Map<Conditions, List<Conditions>> table = new HashMap<>();
        cells.forEach(cell -> table.computeIfAbsent(cell.without(without), k -> new ArrayList<>())
                .add(cell));
        return table;
    }
}
