package org.ellwand.quantity;

import java.util.List;
import java.util.Optional;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Resolution;
import org.ellwand.acoustics.Spectrum;
import org.ellwand.claim.Reference;

/**
 * One signed curve: sign · (inPlace · P + openEar · O + field · F + quiet · Q + constant), less its own level at the reference.
 *
 * @param sign +1 or −1
 * @param inPlace factor of the mean curve with the product in place
 * @param openEar factor of the mean open-ear curve
 * @param field factor of the mean curve at the field microphone
 * @param quiet factor of the mean curve with the product in place in quiet
 * @param constant a curve that was not measured (a target), absent for none
 * @param reference what the curve is relative to, absent for nothing
 */
public record CurvePart(
        double sign,
        double inPlace,
        double openEar,
        double field,
        double quiet,
        Optional<Spectrum> constant,
        Optional<Reference> reference) {

    static CurvePart inPlace(double sign) {
        return new CurvePart(sign, 1, 0, 0, 0, Optional.empty(), Optional.empty());
    }

    static CurvePart openEar(double sign) {
        return new CurvePart(sign, 0, 1, 0, 0, Optional.empty(), Optional.empty());
    }

    /**
     * {@return the bands over whose mean the curve's own level is taken off; none where it is relative to nothing}
     *
     * @param resolution of the curve
     */
    public List<Band> referenceBands(Resolution resolution) {
        return reference
                .map(r -> SpectralComputation.referenceBands(r, resolution))
                .orElse(List.of());
    }
}
