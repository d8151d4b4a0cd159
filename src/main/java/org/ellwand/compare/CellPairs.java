package org.ellwand.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ellwand.audit.AuditRecord;

/** Pairs the cells of two audits that differ in passing things only: unit by unit, and of a lot by the mean over its units. */
final class CellPairs {
    /** Of a lot, the units that moved most. */
    private static final int MOST_UNITS = 12;

    private final Shifts shifts;
    private final boolean comparable;

    CellPairs(Shifts shifts, boolean comparable) {
        this.shifts = shifts;
        this.comparable = comparable;
    }

    /**
     * Adds what pairs up.
     *
     * @param conditions what all these cells have in common
     */
    void add(
            Map<String, String> conditions,
            List<AuditRecord.OfCell> first,
            List<AuditRecord.OfCell> second,
            List<ClaimComparison.OfCell> cells) {
        Optional<LotShift> lot = LotShift.of(first, second);
        lot.ifPresent(l -> cells.add(pair(conditions, l.firstMean(), l.secondMean(), Optional.of(l.units()))));
        List<ClaimComparison.OfCell> units = units(conditions, first, second);
        if (lot.isPresent()) {
            units.stream()
                    .sorted(Comparator.comparingDouble(c -> -Math.abs(c.shift().value())))
                    .limit(MOST_UNITS)
                    .forEach(cells::add);
        } else if (units.isEmpty() && isOneThing(first) && isOneThing(second)) {
            cells.add(pair(conditions, first.get(0), second.get(0), Optional.empty()));
        } else {
            cells.addAll(units);
        }
    }

    /** Whether there is no question which unit is meant. */
    private static boolean isOneThing(List<AuditRecord.OfCell> cells) {
        return cells.stream().map(CellPairs::unit).distinct().count() == 1;
    }

    private static Optional<String> unit(AuditRecord.OfCell cell) {
        return Optional.ofNullable(cell.conditions().get("unit"));
    }

    private List<ClaimComparison.OfCell> units(
            Map<String, String> conditions, List<AuditRecord.OfCell> first, List<AuditRecord.OfCell> second) {
        Map<Optional<String>, AuditRecord.OfCell> waiting = new LinkedHashMap<>();
        first.forEach(c -> waiting.putIfAbsent(unit(c), c));
        boolean several = waiting.size() > 1;
        List<ClaimComparison.OfCell> units = new ArrayList<>();
        for (AuditRecord.OfCell cell : second) {
            AuditRecord.OfCell other = waiting.remove(unit(cell));
            if (other != null) {
                Map<String, String> named = new LinkedHashMap<>(conditions);
                unit(cell).filter(u -> several).ifPresent(u -> named.put("unit", u));
                units.add(pair(named, other, cell, Optional.empty()));
            }
        }
        return units;
    }

    private ClaimComparison.OfCell pair(
            Map<String, String> conditions,
            AuditRecord.OfCell first,
            AuditRecord.OfCell second,
            Optional<ClaimComparison.Units> units) {
        return new ClaimComparison.OfCell(
                conditions,
                first.value().orElseThrow(),
                second.value().orElseThrow(),
                shifts.of(
                        first,
                        second,
                        (comparable || units.isPresent()) && first.hz().equals(second.hz())),
                units);
    }
}
