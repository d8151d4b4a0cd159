package org.ellwand.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.ellwand.audit.CellResult;
import org.ellwand.measurement.Conditions;

/**
 * Tells the cells of a rule apart in as few words as possible: where head, ear and session change together, the ear
 * alone says which is which.
 */
final class CellNames {
    /** What a reader knows best comes first; any other condition follows by name. */
    private static final List<String> FIRST =
            List.of("setting", "fit", "firmware", "stimulus", "ear", "head", "side", "unit", "session");

    private final List<Conditions> cells;
    private final Set<String> differing = new TreeSet<>();
    private final List<String> telling = new ArrayList<>();

    CellNames(List<CellResult> cells) {
        this.cells = cells.stream().map(CellResult::conditions).toList();
        Set<String> names = new LinkedHashSet<>(FIRST);
        Set<String> others = new TreeSet<>();
        this.cells.forEach(cell -> others.addAll(cell.names()));
        names.addAll(others);
        names.stream().filter(this::differs).forEach(this::take);
    }

    private boolean differs(String name) {
        return cells.stream().map(cell -> cell.get(name)).distinct().count() > 1;
    }

    private void take(String name) {
        differing.add(name);
        long before = toldApart();
        telling.add(name);
        if (toldApart() == before) {
            telling.remove(name);
        }
    }

    private long toldApart() {
        return cells.stream()
                .map(cell -> telling.stream().map(cell::get).toList())
                .distinct()
                .count();
    }

    /** What tells this cell from the others: {@code pink-94}, {@code pink-94, left}; {@code measured} for the only one. */
    String shortName(CellResult cell) {
        String name = tellingName(cell);
        return name.isEmpty() ? "measured" : name;
    }

    /** The same, and empty for the only one. */
    String tellingName(CellResult cell) {
        return telling.stream()
                .flatMap(condition -> cell.conditions().get(condition).stream())
                .collect(Collectors.joining(", "));
    }

    /** What all cells have in common. */
    Conditions common() {
        return cells.isEmpty() ? Conditions.of(Map.of()) : cells.get(0).without(differing);
    }

    /** What tells the cells apart, with its values in order: {@code stimulus pink-65, pink-94}. */
    Map<String, List<String>> telling() {
        Map<String, List<String>> values = new LinkedHashMap<>();
        telling.forEach(name -> values.put(name, valuesOf(name)));
        return values;
    }

    private List<String> valuesOf(String name) {
        return cells.stream()
                .flatMap(cell -> cell.get(name).stream())
                .distinct()
                .sorted()
                .toList();
    }
}
