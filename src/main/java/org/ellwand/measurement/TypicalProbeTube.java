package org.ellwand.measurement;

import java.util.ArrayList;
import java.util.List;
import org.ellwand.amount.Unit;

/**
 * Standard uncertainties (k = 1, dB) of careful probe-tube work, for those who have no figures of their own. Common
 * practice, no source: reports say so.
 */
public final class TypicalProbeTube {
    /** Upper ends, included, of the frequency ranges that the columns below stand for, in Hz. */
    private static final double[] UP_TO_HZ = {250, 1000, 3150, 4000, 6300, Double.POSITIVE_INFINITY};

    private TypicalProbeTube() {}

    /** {@return the causes in dB, by frequency; from common practice, no source} */
    public static List<Cause> causes() {
        return List.of(
                cause("calibration", SharedBy.SESSION, false, 0.3, 0.3, 0.4, 0.5, 0.8, 1.0),
                cause("tube shift", SharedBy.INSERTION, false, 0, 0, 0.15, 0.35, 0.8, 1.5),
                cause("insertion", SharedBy.INSERTION, false, 3.0, 2.0, 1.8, 2.0, 2.5, 3.0),
                cause("head and loudspeaker position", SharedBy.READING, false, 0.3, 0.4, 0.7, 0.9, 1.2, 1.5),
                cause("averaging and rounding", SharedBy.READING, true, 0.4, 0.3, 0.3, 0.3, 0.3, 0.3),
                cause("ear", SharedBy.EAR, false, 4.0, 3.0, 3.0, 3.5, 4.0, 4.5),
                cause("unit", SharedBy.UNIT, false, 1.0, 0.7, 0.7, 1.0, 1.2, 1.5));
    }

    private static Cause cause(String name, SharedBy sharedBy, boolean independent, double... sizesDb) {
        List<Cause.Size> sizes = new ArrayList<>();
        double from = 0;
        for (int i = 0; i < sizesDb.length; i++) {
            // The upper end belongs to the range, so the next one begins just above it.
            double to = Math.nextUp(UP_TO_HZ[i]);
            sizes.add(new Cause.Size(from, to, sizesDb[i]));
            from = to;
        }
        return new Cause(name, sharedBy, independent, Unit.DB, sizes);
    }
}
