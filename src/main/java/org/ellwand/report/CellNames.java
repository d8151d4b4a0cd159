package org.ellwand.report;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.ellwand.audit.CellResult;
import org.ellwand.measurement.Conditions;

/** Tells the cells of a rule apart in as few words as possible. */
final class CellNames {
    private final List<Conditions> cells;
    private final Set<String> differing = new TreeSet<>();

    CellNames(List<CellResult> cells) {
        this.cells = cells.stream().map(CellResult::conditions).toList();
        Set<String> names = new TreeSet<>();
        this.cells.forEach(cell -> names.addAll(cell.values().keySet()));
        names.stream().filter(this::differs).forEach(differing::add);
    }

    private boolean differs(String name) {
        return cells.stream().map(cell -> cell.get(name)).distinct().count() > 1;
    }

    /** What this cell has and others have not: {@code pink-94}, {@code left, pink-94}; {@code measured} for the only one. */
    String shortName(CellResult cell) {
        String name = cell.conditions().values().entrySet().stream()
                .filter(condition -> differing.contains(condition.getKey()))
                .map(Map.Entry::getValue)
                .collect(Collectors.joining(", "));
        return name.isEmpty() ? "measured" : name;
    }

    /** What all cells have in common. */
    Conditions common() {
        return cells.isEmpty() ? Conditions.of(Map.of()) : cells.get(0).without(differing);
    }

    /** What differs, name by name with its values in order: {@code stimulus pink-65, pink-94}. */
    Map<String, List<String>> differing() {
        return differing.stream().collect(Collectors.toMap(name -> name, this::valuesOf, (a, b) -> a, TreeMap::new));
    }

    private List<String> valuesOf(String name) {
        return cells.stream()
                .flatMap(cell -> cell.get(name).stream())
                .distinct()
                .sorted()
                .toList();
    }
}
