package org.ellwand.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.ellwand.audit.CellResult;

/**
 * What the curves of a rule are called, and how they are shared out: where cells differ in several conditions, and are
 * many or have long names, each value of the first condition gets a figure of its own.
 */
final class CurveNames {
    private final List<String> telling;
    private final Optional<String> panels;

    private CurveNames(List<String> telling, Optional<String> panels) {
        this.telling = telling;
        this.panels = panels;
    }

    /** @param few so many curves stand in one figure in any case */
    static CurveNames of(List<CellResult> cells, int few) {
        CurveNames together = together(cells);
        List<String> telling = together.telling;
        boolean tooLong = cells.stream().anyMatch(cell -> !together.label(cell).equals(together.name(cell)));
        boolean shared = telling.size() > 1 && (cells.size() > few || tooLong);
        return shared ? new CurveNames(telling, Optional.of(telling.get(0))) : together;
    }

    /** In one figure, however many and long. */
    static CurveNames together(List<CellResult> cells) {
        return new CurveNames(List.copyOf(new CellNames(cells).telling().keySet()), Optional.empty());
    }

    /** The cells of each figure by what it is called; one with an empty name where they are not shared out. */
    Map<String, List<CellResult>> panels(List<CellResult> cells) {
        Map<String, List<CellResult>> shared = new LinkedHashMap<>();
        cells.forEach(cell ->
                shared.computeIfAbsent(panel(cell), name -> new ArrayList<>()).add(cell));
        return shared;
    }

    private String panel(CellResult cell) {
        return panels.flatMap(cell.conditions()::get).orElse("");
    }

    /** What tells a cell from those in the same figure; empty where there is but one. */
    String name(CellResult cell) {
        return name(cell, condition -> !panels.equals(Optional.of(condition)));
    }

    private String name(CellResult cell, Predicate<String> wanted) {
        return telling.stream()
                .filter(wanted)
                .flatMap(condition -> cell.conditions().get(condition).stream())
                .collect(Collectors.joining(", "));
    }

    String label(CellResult cell) {
        return Sheet.shortened(name(cell), CurveFigure.NAME_CHARACTERS);
    }

    /** What the names of these cells take at the right of a plot, px; nothing where one curve needs no name. */
    double roomPx(List<CellResult> cells) {
        boolean named = panels(cells).values().stream().anyMatch(panel -> panel.size() > 1);
        return Sheet.namesPx(named ? cells.stream().map(this::label).toList() : List.of());
    }
}
