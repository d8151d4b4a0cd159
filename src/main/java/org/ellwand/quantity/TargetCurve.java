package org.ellwand.quantity;

import java.util.Map;
import java.util.TreeMap;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Resolution;
import org.ellwand.acoustics.Spectrum;

/**
 * A target in the bands that are judged. A finer one is summed as energies, like what was measured; one that stands at the
 * centres of the wider bands only holds their levels already, for its fine bands could not have been left out.
 */
final class TargetCurve {
    private static final double SAME_HZ = 1e-9;

    private TargetCurve() {}

    /** The target in a resolution, or as it is where that is finer. */
    static Spectrum in(Resolution resolution, Spectrum target) {
        if (!resolution.isCoarserThan(target.resolution())) {
            return target;
        }
        return target.bands().stream().allMatch(band -> isCentre(band, resolution))
                ? renamed(target, resolution)
                : target.sumTo(resolution);
    }

    private static boolean isCentre(Band band, Resolution resolution) {
        return Math.abs(band.exactHz() / band.within(resolution).exactHz() - 1) < SAME_HZ;
    }

    private static Spectrum renamed(Spectrum target, Resolution resolution) {
        Map<Band, Spectrum.Level> levels = new TreeMap<>();
        target.levels().forEach((band, level) -> levels.put(band.within(resolution), level));
        return new Spectrum(resolution, levels);
    }
}
