package org.ellwand.quantity;

import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Resolution;
import org.ellwand.amount.Interval;
import org.ellwand.claim.BandChoice;

/** The bands that a rule speaks of. */
public final class Bandwidth {
    private static final double LOWEST_HZ = 1;
    private static final double HIGHEST_HZ = 200_000;

    private Bandwidth() {}

    /** The bands whose nominal mid-band frequency lies in a range, ends included. */
    static List<Band> bands(Interval hz, Resolution resolution) {
        int first = Band.nearest(resolution, Math.max(hz.lower(), LOWEST_HZ)).index() - 1;
        int last = Band.nearest(resolution, Math.min(hz.upper(), HIGHEST_HZ)).index() + 1;
        return IntStream.rangeClosed(first, last)
                .mapToObj(i -> new Band(resolution, i))
                .filter(b -> hz.contains(b.nominalHz()))
                .toList();
    }

    /**
     * The bands of a choice. Where it is open on a side, and for {@code all}, what was measured is what is meant.
     *
     * @param choice what the rule speaks of
     * @param resolution of the bands
     * @param measured every band that any reading concerned has
     * @return lowest first
     */
    public static List<Band> bands(BandChoice choice, Resolution resolution, SortedSet<Band> measured) {
        if (choice instanceof BandChoice.Range range) {
            Interval hz = range.hz();
            if (hz.hasLower() && hz.hasUpper()) {
                return bands(hz, resolution);
            }
            SortedSet<Band> bands = new TreeSet<>(measured);
            bands.removeIf(b -> !hz.contains(b.nominalHz()));
            return List.copyOf(bands);
        }
        return List.copyOf(measured);
    }
}
