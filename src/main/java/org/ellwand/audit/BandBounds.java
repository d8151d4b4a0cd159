package org.ellwand.audit;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Bound;
import org.ellwand.acoustics.Resolution;
import org.ellwand.acoustics.Spectrum;
import org.ellwand.measurement.CurveReading;
import org.ellwand.quantity.CurvePart;

/**
 * What is left of the number of a band where levels in place only bound the true ones. A bound turns round with the sign that
 * the level has in the number; what a curve is relative to has the other sign.
 */
final class BandBounds {
    private final List<Spectrum> bounding;
    private final List<CurvePart> parts;
    private final Resolution resolution;

    /**
     * The bounds of a subject.
     *
     * @param parts what the number is the sum of
     * @param resolution that it is judged in
     */
    BandBounds(Subject subject, List<CurvePart> parts, Resolution resolution) {
        this.parts = parts;
        this.resolution = resolution;
        bounding = subject.cells().stream()
                .flatMap(cell -> cell.insertions().stream())
                .flatMap(insertion -> insertion.takes().stream())
                .map(take -> CurveReading.of(take).spectrum())
                .filter(spectrum -> !spectrum.isMeasured())
                .toList();
    }

    /** The bound of a band; empty where one level bounds the number from above and another from below. */
    Optional<Bound> of(Band band) {
        Set<Bound> bounds = EnumSet.noneOf(Bound.class);
        for (CurvePart part : parts) {
            List<Band> reference = part.referenceBands(resolution);
            // Relative to itself it is nothing, whatever the level.
            if (!reference.equals(List.of(band))) {
                double factor = part.sign() * part.inPlace();
                bounds.add(times(factor, level(band)));
                reference.forEach(other -> bounds.add(times(-factor, level(other))));
            }
        }
        bounds.remove(Bound.MEASURED);
        return bounds.size() > 1
                ? Optional.empty()
                : Optional.of(bounds.stream().findFirst().orElse(Bound.MEASURED));
    }

    private static Bound times(double factor, Bound bound) {
        return factor == 0 ? Bound.MEASURED : factor < 0 ? bound.negated() : bound;
    }

    /** What readings in place leave of the level. */
    private Bound level(Band band) {
        return bounding.stream()
                .flatMap(spectrum -> spectrum.levels().entrySet().stream())
                .filter(e -> e.getKey().within(resolution).equals(band))
                .map(e -> e.getValue().bound())
                .filter(bound -> bound != Bound.MEASURED)
                .findFirst()
                .orElse(Bound.MEASURED);
    }
}
