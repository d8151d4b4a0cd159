package org.ellwand.quantity;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.ellwand.amount.Unit;
import org.ellwand.claim.Rule;
import org.ellwand.pairing.Cell;
import org.ellwand.pairing.Joined;
import org.ellwand.words.Remark;

/**
 * The cells of one kind of stimulus in order of their levels.
 *
 * @param cells lowest level first
 * @param level level of each, in the unit asked for
 */
record LevelSeries(List<Cell> cells, List<Double> level) {
    LevelSeries {
        cells = List.copyOf(cells);
        level = List.copyOf(level);
    }

    /** The cells whose level is known in a unit. */
    static LevelSeries of(Joined joined, Unit unit) {
        List<Cell> cells = new ArrayList<>(joined.cells());
        cells.removeIf(cell -> SeriesUnit.levelOf(cell, unit).isEmpty());
        cells.sort(Comparator.comparing(cell -> SeriesUnit.levelOf(cell, unit).orElseThrow()));
        List<Double> level = cells.stream()
                .map(cell -> SeriesUnit.levelOf(cell, unit).orElseThrow())
                .toList();
        return new LevelSeries(cells, level);
    }

    /** The cells of one number, in the unit that {@link SeriesUnit} tells of them. */
    static LevelSeries of(Joined joined, Rule rule) {
        return of(joined, SeriesUnit.of(joined, rule).orElseThrow());
    }

    /** Why cells are no series: nothing tells the unit of their levels, or they are too few; empty where they are one. */
    static Optional<Remark> unusable(Joined joined, Rule rule, int least) {
        return SeriesUnit.untold(joined, rule)
                .or(() -> tooShort(joined, SeriesUnit.of(joined, rule).orElseThrow(), least));
    }

    private static Optional<Remark> tooShort(Joined joined, Unit unit, int least) {
        long levels = levels(joined, unit);
        return levels >= least
                ? Optional.empty()
                : Optional.of(Remark.of("short-series")
                        .with("session", joined.first().session().id())
                        .with("levels", levels)
                        .with("unit", unit.symbol())
                        .with("least", least));
    }

    private static long levels(Joined joined, Unit unit) {
        return joined.cells().stream()
                .flatMap(cell -> SeriesUnit.levelOf(cell, unit).stream())
                .distinct()
                .count();
    }

    /** How few levels a number was looked for among; empty where there is no series. */
    static OptionalLong fewest(List<Cell> cells, Rule rule) {
        return SeriesUnit.series(cells).stream()
                .flatMap(series -> SeriesUnit.of(series, rule).map(unit -> levels(series, unit)).stream())
                .mapToLong(count -> count)
                .min();
    }

    /** Which sounds do not enter a series, for they state no level in its unit. */
    static List<Remark> leftOut(List<Cell> cells, Rule rule) {
        SortedMap<String, SortedSet<String>> sounds = new TreeMap<>();
        for (Joined series : SeriesUnit.series(cells)) {
            SeriesUnit.of(series, rule)
                    .ifPresent(unit -> series.cells().stream()
                            .filter(cell -> SeriesUnit.levelOf(cell, unit).isEmpty())
                            .forEach(cell -> sounds.computeIfAbsent(unit.symbol(), k -> new TreeSet<>())
                                    .add(cell.part("stimulus"))));
        }
        return sounds.entrySet().stream()
                .map(e -> Remark.of("series-left-out").with("unit", e.getKey()).with("sounds", e.getValue()))
                .toList();
    }

    /** The places of a series of the same length, each with its number of one band. */
    static double[] ofBand(double[] numbers, int band, int bands) {
        double[] series = new double[numbers.length / bands];
        for (int i = 0; i < series.length; i++) {
            series[i] = numbers[i * bands + band];
        }
        return series;
    }

    /** The levels as an array, for the inner loop. */
    double[] levels() {
        return level.stream().mapToDouble(d -> d).toArray();
    }

    /** How far a level can be told by the series. */
    Reach reach() {
        return new Reach(level.get(0), level.get(level.size() - 1));
    }
}
