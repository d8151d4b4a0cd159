package org.ellwand.quantity;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collection;
import java.util.IdentityHashMap;
import java.util.List;
import org.ellwand.measurement.Reading;

/** Numbers the readings of a rule, and their bands, so that the inner loops can work on arrays. */
public final class ReadingIndex {
    private final IdentityHashMap<Reading, Integer> positions = new IdentityHashMap<>();
    private final List<Reading> readings = new ArrayList<>();
    private final Places places = new Places();

    /**
     * {@return the position of a reading; a reading not seen before gets the next one}
     *
     * @param reading told by identity, not by what it says
     */
    public int of(Reading reading) {
        Integer known = positions.get(reading);
        if (known != null) {
            return known;
        }
        readings.add(reading);
        positions.put(reading, readings.size() - 1);
        return readings.size() - 1;
    }

    /**
     * {@return the positions of some readings, ascending, each once}
     *
     * @param some readings; those not seen before get the next positions
     */
    public int[] positions(Collection<? extends Reading> some) {
        int[] found = new int[some.size()];
        int count = 0;
        for (Reading reading : some) {
            found[count++] = of(reading);
        }
        Arrays.sort(found);
        int kept = 0;
        for (int i = 0; i < count; i++) {
            if (i == 0 || found[i] != found[i - 1]) {
                found[kept++] = found[i];
            }
        }
        return Arrays.copyOf(found, kept);
    }

    /**
     * {@return the same as a set}
     *
     * @param some readings; those not seen before get the next positions
     */
    public BitSet set(Collection<? extends Reading> some) {
        BitSet set = new BitSet();
        some.forEach(reading -> set.set(of(reading)));
        return set;
    }

    /** Where bands lie in the spectra of its readings. */
    Places places() {
        return places;
    }

    /**
     * {@return the reading at a position}
     *
     * @param position one that was given out
     */
    public Reading at(int position) {
        return readings.get(position);
    }

    /** {@return the readings by position} */
    public List<Reading> readings() {
        return List.copyOf(readings);
    }

    /** {@return how many readings have a position} */
    public int size() {
        return readings.size();
    }

    /** {@return the unperturbed numbers of all readings by position, in the order of each; new arrays} */
    public double[][] levelsDb() {
        double[][] levels = new double[readings.size()][];
        for (int r = 0; r < levels.length; r++) {
            levels[r] = readings.get(r).numbers();
        }
        return levels;
    }
}
