package org.ellwand.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
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
    private final Map<Set<String>, List<Table>> tables = new HashMap<>();
    private Set<String> lastNames = Set.of();
    private List<Table> lastTables = List.of();

    /** Cells of the same names, by those of their conditions that some readings name too. */
    private record Table(Set<String> shared, Map<Conditions, List<Conditions>> cells) {
        Stream<Conditions> like(Conditions reading) {
            return cells.getOrDefault(reading.only(shared), List.of()).stream();
        }
    }

    CellLookup(List<CellResult> cells) {
        for (CellResult cell : cells) {
            byNames.computeIfAbsent(cell.conditions().names(), k -> new ArrayList<>())
                    .add(cell.conditions());
        }
    }

    /** Cells that agree with a reading in every condition that both name, the sound aside. */
    @SuppressWarnings("ReferenceEquality") // Readings of the same names mostly share the set of them.
    Stream<Conditions> like(Conditions reading) {
        if (reading.names() != lastNames) {
            lastNames = reading.names();
            lastTables = tables.computeIfAbsent(lastNames, this::tables);
        }
        return lastTables.stream().flatMap(table -> table.like(reading));
    }

    private List<Table> tables(Set<String> ofReading) {
        List<Table> all = new ArrayList<>();
        byNames.forEach((names, cells) -> {
            Set<String> shared = new TreeSet<>(names);
            shared.retainAll(ofReading);
            shared.remove(STIMULUS);
            Set<String> kept = Set.copyOf(shared);
            all.add(new Table(kept, cells.stream().collect(Collectors.groupingBy(cell -> cell.only(kept)))));
        });
        return all;
    }
}
