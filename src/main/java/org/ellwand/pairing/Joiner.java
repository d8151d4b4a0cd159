package org.ellwand.pairing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ellwand.amount.Amount;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.Stimulus;
import org.ellwand.words.Remark;

/** Puts together the cells that one number is computed from. */
final class Joiner {
    private static final Set<String> SOUND = Set.of("stimulus");

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
                .map(e -> new Joined(e.getKey(), e.getValue()))
                .toList();
    }

    /** Each cell measured in quiet, with the one of the lowest level that differs from it in the sound alone. */
    static List<Joined> quietAndLowest(List<Cell> quiet, List<Cell> sounding, Set<Remark> dropped) {
        List<Joined> joined = new ArrayList<>();
        for (Cell cell : quiet) {
            Conditions same = cell.conditions().without(SOUND);
            Optional<Cell> lowest = sounding.stream()
                    .filter(c -> c.conditions().without(SOUND).equals(same))
                    .min(Comparator.comparingDouble(Joiner::level));
            if (lowest.isEmpty()) {
                dropped.add(Remark.of("no-gain-for-noise")
                        .with("session", cell.session().id()));
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

    /** The first level that the auditor gave; what has none comes last. */
    private static double level(Cell cell) {
        return cell.stimulus()
                .flatMap(s -> s.levels().stream().findFirst())
                .map(Amount::value)
                .orElse(Double.POSITIVE_INFINITY);
    }
}
