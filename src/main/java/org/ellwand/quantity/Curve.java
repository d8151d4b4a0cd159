package org.ellwand.quantity;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.ellwand.acoustics.Band;
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

    /**
     * @param groups readings that count as one each: the takes of one insertion, or all takes of the open ear
     * @param resolution of the curve, not finer than that of the readings
     */
    Curve(List<List<Reading>> groups, Resolution resolution, double shiftDb) {
        groups.forEach(readings::addAll);
        weights = groups.stream()
                .flatMapToDouble(g -> g.stream().mapToDouble(r -> 1.0 / (g.size() * groups.size())))
                .toArray();
        this.resolution = resolution;
        this.shiftDb = shiftDb;
    }

    boolean has(Band band) {
        return !readings.isEmpty() && readings.stream().allMatch(r -> places(spectrum(r), band).length > 0);
    }

    /** Bands that at least one reading has. */
    SortedSet<Band> anyBands() {
        SortedSet<Band> bands = new TreeSet<>();
        for (Reading reading : readings) {
            Spectrum spectrum = spectrum(reading);
            for (Band band : spectrum.bandList()) {
                Band wide = band.within(resolution);
                if (places(spectrum, wide).length > 0) {
                    bands.add(wide);
                }
            }
        }
        return bands;
    }

    boolean sumsBands() {
        return readings.stream().anyMatch(r -> spectrum(r).resolution() != resolution);
    }

    private static Spectrum spectrum(Reading reading) {
        return CurveReading.of(reading).spectrum();
    }

    /** Where the parts of a band lie in a spectrum; nothing where one of them is missing. */
    private int[] places(Spectrum spectrum, Band band) {
        if (spectrum.resolution() == resolution) {
            int at = spectrum.indexOf(band);
            return at < 0 ? new int[0] : new int[] {at};
        }
        int wanted = spectrum.resolution().bandsPerOctave() / resolution.bandsPerOctave();
        int[] parts = new int[wanted];
        int found = 0;
        List<Band> fine = spectrum.bandList();
        for (int k = 0; k < fine.size(); k++) {
            if (fine.get(k).within(resolution).equals(band)) {
                parts[found++] = k;
            }
        }
        return found == wanted ? parts : new int[0];
    }

    /** This curve at some bands, all of them there, ready for arrays of levels. */
    Located at(List<Band> bands, ReadingIndex index) {
        return new Located(bands, index);
    }

    /** A curve whose numbers have been looked up. */
    final class Located {
        private final int[] positions;
        private final int[][][] at;

        private Located(List<Band> bands, ReadingIndex index) {
            positions = readings.stream().mapToInt(index::of).toArray();
            at = new int[positions.length][bands.size()][];
            for (int r = 0; r < positions.length; r++) {
                for (int b = 0; b < bands.size(); b++) {
                    at[r][b] = places(spectrum(readings.get(r)), bands.get(b));
                }
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
        return Math.log(sum) / PER_DB;
    }
}
