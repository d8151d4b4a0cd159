package org.ellwand.quantity;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Energy;
import org.ellwand.acoustics.Resolution;
import org.ellwand.acoustics.Spectrum;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Reading;

/**
 * The mean of readings, band by band: bands of a reading are first summed to the wanted resolution (10 lg Σ 10^(L/10)),
 * then the takes of a group, then the groups are averaged in dB, and a shift is added.
 *
 * <p>A band is there only where every reading has it. Linear in the levels unless bands are summed.
 */
final class Curve {
    private static final double PER_DB = Math.log(10) / 10;

    private final List<Reading> readings = new ArrayList<>();
    private final double[] weights;
    private final Resolution resolution;
    private final double shiftDb;

    /** The spectra of the readings, of neighbours with the same bands the first only. */
    private final List<Spectrum> unlike = new ArrayList<>();

    /**
     * @param groups readings that count as one each: the takes of one insertion, or all takes of the open ear
     * @param resolution of the curve, not finer than that of the readings
     */
    Curve(List<List<Reading>> groups, Resolution resolution, double shiftDb) {
        groups.forEach(readings::addAll);
        weights = new double[readings.size()];
        int next = 0;
        for (List<Reading> group : groups) {
            Arrays.fill(weights, next, next + group.size(), 1.0 / (group.size() * groups.size()));
            next += group.size();
        }
        this.resolution = resolution;
        this.shiftDb = shiftDb;
        for (int r = 0; r < readings.size(); r++) {
            if (r == 0 || !sameBands(readings.get(r), readings.get(r - 1))) {
                unlike.add(spectrum(readings.get(r)));
            }
        }
    }

    /** Readings of one sheet share the list of their bands; another list is looked at by itself, whatever it holds. */
    @SuppressWarnings("ReferenceEquality")
    private static boolean sameBands(Reading one, Reading other) {
        return spectrum(one).bandList() == spectrum(other).bandList();
    }

    /** Whether all of some readings, and of others, have one list of bands, or whether there are none of either. */
    static boolean haveSameBands(List<Reading> some, List<Reading> others) {
        boolean same = some.isEmpty() == others.isEmpty();
        for (int r = 0; same && r < some.size(); r++) {
            same = sameBands(some.get(r), some.get(0));
        }
        for (int r = 0; same && r < others.size(); r++) {
            same = sameBands(others.get(r), some.get(0));
        }
        return same;
    }

    boolean has(Band band) {
        return !readings.isEmpty() && unlike.stream().allMatch(s -> Places.of(band, s).length > 0);
    }

    /** Bands that at least one reading has. */
    SortedSet<Band> anyBands() {
        SortedSet<Band> bands = new TreeSet<>();
        for (Spectrum spectrum : unlike) {
            for (Band band : spectrum.bandList()) {
                Band wide = band.within(resolution);
                if (Places.of(wide, spectrum).length > 0) {
                    bands.add(wide);
                }
            }
        }
        return bands;
    }

    boolean sumsBands() {
        for (Spectrum spectrum : unlike) {
            if (spectrum.resolution() != resolution) {
                return true;
            }
        }
        return false;
    }

    private static Spectrum spectrum(Reading reading) {
        return CurveReading.of(reading).spectrum();
    }

    /** This curve at some bands, all of them there, ready for arrays of levels. */
    Located at(List<Band> bands, ReadingIndex index) {
        return new Located(bands, index);
    }

    /** Takes in how far a band of the curve moves with a level: reading, place in its spectrum, band of the curve, slope. */
    interface Slopes {
        void add(int reading, int at, int band, double slope);
    }

    /** A curve whose numbers have been looked up. */
    final class Located {
        private final int[] positions;
        private final int[][][] at;

        private Located(List<Band> bands, ReadingIndex index) {
            positions = new int[readings.size()];
            at = new int[positions.length][][];
            for (int r = 0; r < positions.length; r++) {
                positions[r] = index.of(readings.get(r));
                at[r] = index.places().of(bands, spectrum(readings.get(r)));
            }
        }

        /** Hands over {@code factor} times the slopes of the mean curve, of which no band is a sum. */
        void addSlopes(double factor, Slopes slopes) {
            for (int r = 0; r < positions.length; r++) {
                for (int b = 0; b < at[r].length; b++) {
                    slopes.add(positions[r], at[r][b][0], b, factor * weights[r]);
                }
            }
        }

        /** Hands over what the slopes follow from. */
        void addShape(Computation.Shape shape) {
            shape.number(positions.length);
            for (int r = 0; r < positions.length; r++) {
                shape.reading(positions[r]);
                shape.number(weights[r]);
                shape.same(at[r]);
            }
        }

        /** Positions of its readings. */
        IntStream readings() {
            return Arrays.stream(positions);
        }

        /** Adds {@code factor} times the mean curve. */
        void addTo(double[] target, double factor, double[][] levelsDb) {
            for (int r = 0; r < positions.length; r++) {
                double[] levels = levelsDb[positions[r]];
                double weight = factor * weights[r];
                for (int b = 0; b < target.length; b++) {
                    target[b] += weight * level(levels, at[r][b]);
                }
            }
            for (int b = 0; shiftDb != 0 && b < target.length; b++) {
                target[b] += factor * shiftDb;
            }
        }
    }

    private static double level(double[] levels, int[] at) {
        if (at.length == 1) {
            return levels[at[0]];
        }
        double sum = 0;
        for (int k : at) {
            sum += Math.exp(levels[k] * PER_DB);
        }
        double sumDb = Math.log(sum) / PER_DB;
        return Double.isFinite(sumDb)
                ? sumDb
                : Energy.sumDb(Arrays.stream(at).mapToDouble(k -> levels[k]).toArray());
    }
}
