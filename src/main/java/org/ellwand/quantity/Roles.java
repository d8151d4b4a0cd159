package org.ellwand.quantity;

import java.util.List;
import java.util.Optional;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Resolution;
import org.ellwand.measurement.Reading;
import org.ellwand.pairing.Cell;
import org.ellwand.pairing.Insertion;

/** The mean curves of a cell by the part they play. */
record Roles(Curve inPlace, Curve openEar, Curve field, Curve quiet) {
    /** @param quiet the same in quiet; absent where nothing needs it */
    static Roles of(Cell cell, Optional<Cell> quiet, Resolution resolution) {
        return new Roles(
                new Curve(takes(cell), resolution, 0),
                new Curve(group(cell.openEar()), resolution, cell.openEarShiftDb()),
                new Curve(group(cell.field()), resolution, cell.openEarShiftDb()),
                new Curve(quiet.map(Roles::takes).orElse(List.of()), resolution, 0));
    }

    private static List<List<Reading>> takes(Cell cell) {
        return cell.insertions().stream().map(Insertion::takes).toList();
    }

    private static List<List<Reading>> group(List<Reading> takes) {
        return takes.isEmpty() ? List.of() : List.of(takes);
    }

    /** Whether a part has all it needs at a band. */
    boolean have(Band band, CurvePart part) {
        return (part.inPlace() == 0 || inPlace.has(band))
                && (part.openEar() == 0 || openEar.has(band))
                && (part.field() == 0 || field.has(band))
                && (part.quiet() == 0 || quiet.has(band))
                && part.constant()
                        .map(c -> TargetCurve.in(band.resolution(), c).at(band).isPresent())
                        .orElse(true);
    }
}
