package org.ellwand.quantity;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Resolution;
import org.ellwand.acoustics.Spectrum;

/**
 * Where bands lie in spectra. The readings of a lot share the list of their bands, and the cells of a rule the bands that
 * they are judged over: what was looked up last is kept. Belongs to one thread.
 */
final class Places {
    private static final int[] NOWHERE = {};

    /** Lots have few lists of bands; of more, those that came first are kept. */
    private static final int MOST = 16;

    private final List<Lookup> lookups = new ArrayList<>();

    /** Where some bands lie among others. */
    private static final class Lookup {
        private final List<Band> in;
        private final List<Band> wanted;
        private final int[][] found;

        Lookup(List<Band> in, List<Band> wanted, int[][] found) {
            this.in = in;
            this.wanted = wanted;
            this.found = found;
        }

        /** Of the same lists; of others, whatever they hold, it is none. */
        @SuppressWarnings("ReferenceEquality")
        boolean isOf(List<Band> bands, Spectrum spectrum) {
            return in == spectrum.bandList() && wanted == bands;
        }
    }

    /**
     * For each of some bands, where the bands of a spectrum lie that make it up; nothing where one of them is missing.
     *
     * @return not to be changed
     */
    int[][] of(List<Band> bands, Spectrum spectrum) {
        for (Lookup lookup : lookups) {
            if (lookup.isOf(bands, spectrum)) {
                return lookup.found;
            }
        }
        int[][] found = bands.stream().map(band -> of(band, spectrum)).toArray(int[][]::new);
        if (lookups.size() < MOST) {
            lookups.add(new Lookup(spectrum.bandList(), bands, found));
        }
        return found;
    }

    /** The same for one band. */
    static int[] of(Band band, Spectrum spectrum) {
        Resolution resolution = band.resolution();
        if (spectrum.resolution() == resolution) {
            int at = spectrum.indexOf(band);
            return at < 0 ? NOWHERE : new int[] {at};
        }
        int parts = spectrum.resolution().bandsPerOctave() / resolution.bandsPerOctave();
        int[] places = new int[parts];
        int count = 0;
        List<Band> fine = spectrum.bandList();
        for (int k = 0; k < fine.size(); k++) {
            if (fine.get(k).within(resolution).equals(band)) {
                places[count++] = k;
            }
        }
        return count == parts ? Arrays.copyOf(places, count) : NOWHERE;
    }
}
