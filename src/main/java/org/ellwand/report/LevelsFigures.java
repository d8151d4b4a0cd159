package org.ellwand.report;

import java.util.ArrayList;
import java.util.Collection;
import java.util.DoubleSummaryStatistics;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.ellwand.amount.Unit;
import org.ellwand.audit.CellResult;
import org.ellwand.audit.Judgement;
import org.ellwand.audit.Point;
import org.ellwand.audit.ProductAudit;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.Session;

/**
 * Levels of the open ear and with the product in place, as the claims of a product were judged by them: one figure for each
 * setting and sound, all on the same axes.
 */
final class LevelsFigures {
    /** What tells ears apart; everything else tells figures apart. */
    private static final Set<String> WEARER = Set.of("ear", "head", "side", "unit", "session");

    private final List<CellResult> cells;
    private final CellNames names;

    private LevelsFigures(Collection<CellResult> cells) {
        this.cells = List.copyOf(cells);
        this.names = new CellNames(this.cells);
    }

    /** The shapes of the figures; none where no claim was judged by levels of both. */
    static List<Map<String, Object>> of(ProductAudit product, List<Session> sessions) {
        Map<Conditions, CellResult> cells = new LinkedHashMap<>();
        product.claims().stream()
                .flatMap(claim -> claim.plain().stream())
                .map(Judgement::cells)
                .flatMap(List::stream)
                .filter(LevelsFigures::hasBoth)
                .forEach(cell -> cells.merge(cell.conditions(), cell, LevelsFigures::finer));
        return cells.isEmpty() ? List.of() : new LevelsFigures(cells.values()).models(sessions);
    }

    private static boolean hasBoth(CellResult cell) {
        int bands = cell.bands().size();
        return bands > 1
                && cell.bands().stream().allMatch(band -> band.hz().isPresent())
                && cell.inPlaceDb().size() == bands
                && cell.openEarDb().size() == bands;
    }

    private static CellResult finer(CellResult one, CellResult other) {
        return other.bands().size() > one.bands().size() ? other : one;
    }

    private List<Map<String, Object>> models(List<Session> sessions) {
        Map<Conditions, List<CellResult>> groups = new LinkedHashMap<>();
        cells.forEach(cell -> groups.computeIfAbsent(cell.conditions().without(WEARER), common -> new ArrayList<>())
                .add(cell));
        Frame frame = frame();
        return groups.values().stream()
                .map(group -> new LevelsFigure(group, name(group.get(0), false), wearers(group), frame)
                        .model(unit(group.get(0), sessions)))
                .toList();
    }

    private static Unit unit(CellResult cell, List<Session> sessions) {
        return sessions.stream()
                .filter(session -> cell.conditions().get("session").equals(Optional.of(session.id())))
                .flatMap(session -> session.levelsIn().stream())
                .findFirst()
                .orElse(Unit.DB);
    }

    private Frame frame() {
        DoubleSummaryStatistics shown = new DoubleSummaryStatistics();
        cells.forEach(cell -> cell.inPlaceDb().forEach(shown::accept));
        cells.forEach(cell -> cell.openEarDb().forEach(shown::accept));
        List<Double> hz = cells.stream()
                .flatMap(cell -> cell.bands().stream())
                .map(Point::hz)
                .flatMap(frequency -> frequency.stream().boxed())
                .toList();
        return CurveScale.of(hz, shown, Sheet.namesPx(LevelsFigure.NAMES), Sheet.LOW_TOP);
    }

    private List<String> wearers(List<CellResult> group) {
        return group.stream()
                .map(cell -> name(cell, true))
                .filter(name -> !name.isEmpty())
                .distinct()
                .toList();
    }

    private String name(CellResult cell, boolean wearer) {
        return names.telling().keySet().stream()
                .filter(condition -> WEARER.contains(condition) == wearer)
                .flatMap(condition -> cell.conditions().get(condition).stream())
                .collect(Collectors.joining(", "));
    }
}
