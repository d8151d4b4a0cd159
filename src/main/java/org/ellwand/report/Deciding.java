package org.ellwand.report;

import java.util.Optional;
import java.util.function.Predicate;
import org.ellwand.audit.CellResult;
import org.ellwand.audit.Judgement;
import org.ellwand.audit.Point;
import org.ellwand.claim.Statistic;

/** Finds the cell whose value is the claim's. */
final class Deciding {
    private Deciding() {}

    static Optional<CellResult> cell(Judgement judgement) {
        return first(
                        judgement,
                        cell -> isItsValue(judgement, cell)
                                && cell.probability().equals(judgement.probability()))
                .or(() -> first(judgement, cell -> holdsPoint(judgement, cell)))
                .or(() -> first(judgement, cell -> isItsValue(judgement, cell)))
                .or(() -> judgement.cells().stream().findFirst());
    }

    /** The observed statistic of the deciding cell: of a median not the band that decides, but the middle one. */
    static double value(Judgement judgement) {
        double value = judgement.value().orElse(0);
        boolean median =
                judgement.rule().statistic().filter(s -> s == Statistic.MEDIAN).isPresent();
        return median ? cell(judgement).map(CellResult::value).orElse(value) : value;
    }

    private static Optional<CellResult> first(Judgement judgement, Predicate<CellResult> wanted) {
        return judgement.cells().stream().filter(wanted).findFirst();
    }

    private static boolean isItsValue(Judgement judgement, CellResult cell) {
        return judgement.value().isPresent()
                && cell.value() == judgement.value().getAsDouble();
    }

    private static boolean holdsPoint(Judgement judgement, CellResult cell) {
        return judgement.point().filter(point -> holds(cell, point)).isPresent();
    }

    private static boolean holds(CellResult cell, Point point) {
        return cell.bands().stream().anyMatch(band -> band.hz().equals(point.hz()) && band.value() == point.value());
    }
}
