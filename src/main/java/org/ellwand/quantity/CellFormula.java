package org.ellwand.quantity;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Resolution;
import org.ellwand.measurement.Reading;
import org.ellwand.pairing.Cell;

/**
 * A spectral quantity of one cell.
 *
 * @param cell readings in place, and their open ear
 * @param quiet the same in quiet; absent where no part needs it
 * @param parts the signed curves that are summed
 */
public record CellFormula(Cell cell, Optional<Cell> quiet, List<CurvePart> parts) implements Formula {
    @Override
    public Computation computation(Task task, ReadingIndex index) {
        return new SpectralComputation(task, roles(task.resolution()), parts, index);
    }

    @Override
    public List<Band> having(List<Band> bands, Resolution resolution) {
        Roles roles = roles(resolution);
        return parts.stream().allMatch(part -> hasReference(roles, part, resolution))
                ? bands.stream()
                        .filter(band -> parts.stream().allMatch(part -> roles.have(band, part)))
                        .toList()
                : List.of();
    }

    private static boolean hasReference(Roles roles, CurvePart part, Resolution resolution) {
        return part.reference().stream()
                .flatMap(r -> SpectralComputation.referenceBands(r, resolution).stream())
                .allMatch(b -> roles.have(b, part));
    }

    @Override
    public List<Band> anyBands(Resolution resolution) {
        Roles roles = roles(resolution);
        return List.copyOf(roles.inPlace().anyBands());
    }

    @Override
    public boolean hasBandsOf(Formula other) {
        return other instanceof CellFormula that
                && quiet.isEmpty()
                && that.quiet.isEmpty()
                && parts.equals(that.parts)
                && Curve.haveSameBands(takes(cell), takes(that.cell))
                && Curve.haveSameBands(cell.openEar(), that.cell.openEar())
                && Curve.haveSameBands(cell.field(), that.cell.field());
    }

    private static List<Reading> takes(Cell cell) {
        List<Reading> takes = new ArrayList<>();
        cell.insertions().forEach(insertion -> takes.addAll(insertion.takes()));
        return takes;
    }

    private Roles roles(Resolution resolution) {
        return Roles.of(cell, quiet, resolution);
    }

    /**
     * Mean levels of a cell's readings in place, or of its open ear as shifted, in dB.
     *
     * @param cell whose readings are averaged
     * @param openEar whether its open ear is meant, not what is in place
     * @param resolution of the bands
     * @param bands where one of them is not there, nothing is returned
     * @return one level a band, in dB; empty where a band is missing
     */
    public static List<Double> meanLevels(Cell cell, boolean openEar, Resolution resolution, List<Band> bands) {
        ReadingIndex index = new ReadingIndex();
        Roles roles = Roles.of(cell, Optional.empty(), resolution);
        Curve curve = openEar ? roles.openEar() : roles.inPlace();
        if (!bands.stream().allMatch(curve::has)) {
            return List.of();
        }
        double[] mean = new double[bands.size()];
        Curve.Located located = curve.at(bands, index);
        located.addTo(mean, 1, index.levelsDb());
        return Arrays.stream(mean).boxed().toList();
    }
}
