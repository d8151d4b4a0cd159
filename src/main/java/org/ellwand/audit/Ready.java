package org.ellwand.audit;

import java.util.List;
import java.util.Map;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Bound;
import org.ellwand.acoustics.Resolution;

/**
 * A subject with the bands it can be judged over.
 *
 * @param bands measured in every reading concerned
 * @param missing asked for and not there, or of no use
 * @param bounds bands whose number only bounds the quantity
 */
record Ready(Subject subject, Resolution resolution, List<Band> bands, List<Band> missing, Map<Band, Bound> bounds) {
    /** A subject whose number is of no band. */
    static Ready ofNumber(Subject subject) {
        return new Ready(subject, Resolution.OCTAVE, List.of(), List.of(), Map.of());
    }

    /** The same of another subject. */
    Ready of(Subject other) {
        return new Ready(other, resolution, bands, missing, bounds);
    }

    Bound bound(Band band) {
        return bounds.getOrDefault(band, Bound.MEASURED);
    }
}
