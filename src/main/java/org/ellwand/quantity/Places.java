package org.ellwand.quantity;

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

    private List<Band> in = List.of();
    private List<Band> wanted = List.of();
    private int[][] found = {};

    /**
     * For each of some bands, where the bands of a spectrum lie that make it up; nothing where one of them is missing.
     *
     * @return not to be changed
     */
    int[][] of(List<Band> bands, Spectrum spectrum) {
        if (!isSame(spectrum.bandList(), in) || !isSame(bands, wanted)) {
            in = spectrum.bandList();
            wanted = bands;
            found = bands.stream().map(band -> of(band, spectrum)).toArray(int[][]::new);
        }
        return found;
    }

    /** One list; another one is looked up again, whatever it holds. */
    @SuppressWarnings("ReferenceEquality")
    private static boolean isSame(List<Band> one, List<Band> other) {
        return one == other;
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
