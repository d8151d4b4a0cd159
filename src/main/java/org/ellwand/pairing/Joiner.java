package org.ellwand.pairing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.ellwand.amount.Unit;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.Stimulus;
import org.ellwand.words.Remark;

/** Puts together the cells that one number is computed from. */
final class Joiner {
    private static final Set<String> SOUND = Set.of("stimulus");

    private static final List<Unit> WEIGHTINGS = List.of(Unit.DB_SPL, Unit.DB_A, Unit.DB_C);

    private Joiner() {}

    /** The cells of one kind of stimulus, each kind by itself, in the order of the cells. */
    static List<Joined> levels(List<Cell> cells) {
        Map<Conditions, List<Cell>> series = new LinkedHashMap<>();
        for (Cell cell : cells) {
            String kind = cell.stimulus().map(Stimulus::kind).orElse("");
            Conditions key = cell.conditions().without(SOUND).with("stimulus", kind);
            series.computeIfAbsent(key, k -> new ArrayList<>()).add(cell);
        }
        return series.entrySet().stream()
                .map(e -> new Joined(e.getKey(), e.getValue(), true))
                .toList();
    }

    /** Each cell measured in quiet, with the one of the lowest level that differs from it in the sound alone. */
    static List<Joined> quietAndLowest(List<Cell> quiet, List<Cell> sounding, Set<Remark> dropped) {
        List<Joined> joined = new ArrayList<>();
        for (Cell cell : quiet) {
            Conditions same = cell.conditions().without(SOUND);
            List<Cell> candidates = sounding.stream()
                    .filter(c -> c.conditions().without(SOUND).equals(same))
                    .toList();
            Optional<Cell> lowest = lowest(candidates);
            if (lowest.isEmpty()) {
                dropped.add(
                        candidates.isEmpty()
                                ? Remark.of("no-gain-for-noise")
                                        .with("session", cell.session().id())
                                : unlike(candidates));
            }
            lowest.ifPresent(low -> joined.add(new Joined(same, List.of(referred(cell, low), low))));
        }
        return joined;
    }

    /** What was measured in quiet needs no open ear of its own: the gain's serves both. */
    private static Cell referred(Cell quiet, Cell low) {
        return new Cell(
                quiet.session(),
                quiet.conditions(),
                quiet.insertions(),
                quiet.values(),
                low.openEar(),
                low.field(),
                low.openEarShiftDb(),
                quiet.notes());
    }

    /** The one of the lowest level, in a weighting that all of them state; nothing where they have none in common. */
    private static Optional<Cell> lowest(List<Cell> cells) {
        return WEIGHTINGS.stream()
                .filter(unit -> cells.stream().allMatch(c -> levelDb(c, unit).isPresent()))
                .findFirst()
                .flatMap(unit -> cells.stream()
                        .min(Comparator.comparingDouble(c -> levelDb(c, unit).orElse(0.0))))
                .or(() -> cells.size() == 1 ? Optional.of(cells.get(0)) : Optional.empty());
    }

    private static Optional<Double> levelDb(Cell cell, Unit unit) {
        return cell.stimulus().flatMap(s -> s.levelIn(unit));
    }

    /** dB SPL and dB(A) are never compared. */
    private static Remark unlike(List<Cell> cells) {
        String sounds = cells.stream()
                .flatMap(c -> c.stimulus().stream())
                .map(s -> s.id() + " ("
                        + s.levels().stream().map(a -> a.unit().symbol()).collect(Collectors.joining(", ")) + ")")
                .distinct()
                .sorted()
                .collect(Collectors.joining(", "));
        return Remark.of("levels-unlike")
                .with("session", cells.get(0).session().id())
                .with("sounds", sounds);
    }
}
