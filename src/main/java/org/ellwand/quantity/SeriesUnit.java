package org.ellwand.quantity;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.ellwand.amount.PhraseException;
import org.ellwand.amount.Phrases;
import org.ellwand.amount.Unit;
import org.ellwand.claim.Between;
import org.ellwand.claim.LevelChoice;
import org.ellwand.claim.Rule;
import org.ellwand.measurement.Stimulus;
import org.ellwand.pairing.Cell;
import org.ellwand.pairing.Joined;
import org.ellwand.words.Remark;

/**
 * The unit in which a series of levels is told. A limit that is a level names it. Where two numbers are compared the limit is a
 * difference in dB, which is not the same in every unit: from one sound to the next, dB SPL and dB(A) may grow by unlike
 * amounts. The rule says it then by {@code limit weighting} or in its levels; else it is the unit in which every sound of the
 * series states its level, and where several are and the difference hangs on which, there is none.
 */
final class SeriesUnit {
    private static final List<Unit> LEVELS = List.of(Unit.DB_SPL, Unit.DB_A, Unit.DB_C);

    /** Levels are written with at most nine digits: far below what they can differ by, far above what doubles round. */
    private static final double SAME_DB = 1e-6;

    private SeriesUnit() {}

    /** Empty where nothing tells it. */
    static Optional<Unit> of(Joined joined, Rule rule) {
        return named(rule).or(() -> {
            List<Unit> common = common(joined.cells());
            return isOneEnough(joined.cells(), common, rule) ? common.stream().findFirst() : Optional.empty();
        });
    }

    /** Why nothing tells the unit; empty where something does. */
    static Optional<Remark> untold(Joined joined, Rule rule) {
        if (of(joined, rule).isPresent()) {
            return Optional.empty();
        }
        List<Unit> common = common(joined.cells());
        Remark reason = Remark.of(common.isEmpty() ? "series-unlike" : "series-of-units")
                .with("session", joined.first().session().id());
        return Optional.of(
                common.isEmpty()
                        ? reason
                        : reason.with("units", common.stream().map(Unit::symbol).toList()));
    }

    /** In which units the numbers are that a rule compares; nothing where its limit is a level. */
    static List<Remark> notes(List<Cell> cells, Rule rule) {
        return rule.limit().unit().isLevel()
                ? List.of()
                : series(cells).stream()
                        .flatMap(series -> of(series, rule).stream())
                        .distinct()
                        .sorted()
                        .map(unit -> Remark.of("series-in").with("unit", unit.symbol()))
                        .toList();
    }

    /** The cells of one kind of sound that differ in nothing else, each series by itself. */
    static List<Joined> series(List<Cell> cells) {
        return cells.stream().collect(Collectors.groupingBy(SeriesUnit::kind)).values().stream()
                .map(series -> new Joined(series.get(0).conditions(), series))
                .toList();
    }

    private static List<Object> kind(Cell cell) {
        return List.of(
                cell.conditions().without(Set.of("stimulus")), cell.stimulus().map(Stimulus::kind));
    }

    private static Optional<Unit> named(Rule rule) {
        Unit ofLimit = rule.limit().unit();
        return ofLimit.isLevel()
                ? Optional.of(ofLimit)
                : Settings.limitWeighting(rule).or(() -> ofLevels(rule)).or(() -> ofComparedLevels(rule));
    }

    private static Optional<Unit> ofLevels(Rule rule) {
        return rule.level()
                .filter(LevelChoice.Range.class::isInstance)
                .map(choice -> ((LevelChoice.Range) choice).level().unit());
    }

    private static Optional<Unit> ofComparedLevels(Rule rule) {
        return rule.between()
                .filter(between -> between.condition().equals("level"))
                .flatMap(SeriesUnit::ofFirst)
                .filter(Unit::isLevel);
    }

    private static Optional<Unit> ofFirst(Between levels) {
        try {
            return Optional.of(Phrases.interval(levels.first()).interval().unit());
        } catch (PhraseException e) {
            return Optional.empty(); // Told where the readings of it are looked for.
        }
    }

    /** The units in which every sound states its level. */
    private static List<Unit> common(List<Cell> cells) {
        return LEVELS.stream()
                .filter(unit ->
                        cells.stream().allMatch(cell -> levelOf(cell, unit).isPresent()))
                .toList();
    }

    /** Whether it does not matter which of the units is taken: differences stay what they are where all sounds are as far apart in each. */
    private static boolean isOneEnough(List<Cell> cells, List<Unit> common, Rule rule) {
        return common.size() < 2
                || (!rule.ratio() && common.stream().allMatch(unit -> areAsFarApart(cells, common.get(0), unit)));
    }

    private static boolean areAsFarApart(List<Cell> cells, Unit first, Unit other) {
        double[] offsets = cells.stream()
                .mapToDouble(cell -> levelOf(cell, first).orElseThrow()
                        - levelOf(cell, other).orElseThrow())
                .toArray();
        for (double offset : offsets) {
            if (Math.abs(offset - offsets[0]) > SAME_DB) {
                return false;
            }
        }
        return true;
    }

    /** The level of a cell's sound in one unit, where it states one. */
    static Optional<Double> levelOf(Cell cell, Unit unit) {
        return cell.stimulus().flatMap(s -> s.levelIn(unit));
    }
}
