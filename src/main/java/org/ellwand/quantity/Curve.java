package org.ellwand.quantity;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Resolution;
import org.ellwand.measurement.Reading;

/**
 * The mean of readings, band by band: bands of a reading are first summed to the wanted resolution (10 lg Σ 10^(L/10)),
 * then the takes of a group, then the groups are averaged in dB, and a shift is added.
 *
 * <p>A band is there only where every reading has it. Linear in the levels unless bands are summed.
 */
final class Curve {
    private static final double PER_DB = Math.log(10) / 10;

    private final int[] readings;
    private final double[] weights;
    private final List<SortedMap<Band, int[]>> places;
    private final double shiftDb;
    private final boolean sums;

    /**
     * @param groups readings that count as one each: the takes of one insertion, or all takes of the open ear
     * @param resolution of the curve, not finer than that of the readings
     */
    Curve(List<List<Reading>> groups, Resolution resolution, double shiftDb, ReadingIndex index) {
        List<Reading> all = groups.stream().flatMap(List::stream).toList();
        readings = all.stream().mapToInt(index::of).toArray();
        weights = groups.stream()
                .flatMapToDouble(g -> g.stream().mapToDouble(r -> 1.0 / (g.size() * groups.size())))
                .toArray();
        places = all.stream().map(r -> places(r, resolution)).toList();
        sums = all.stream().anyMatch(r -> r.spectrum().resolution() != resolution);
        this.shiftDb = shiftDb;
    }

    private static SortedMap<Band, int[]> places(Reading reading, Resolution resolution) {
        List<Band> fine = reading.spectrum().bandList();
        SortedMap<Band, List<Integer>> members = new TreeMap<>();
        for (int k = 0; k < fine.size(); k++) {
            members.computeIfAbsent(fine.get(k).within(resolution), b -> new ArrayList<>())
                    .add(k);
        }
        int wanted = reading.spectrum().resolution().bandsPerOctave() / resolution.bandsPerOctave();
        SortedMap<Band, int[]> places = new TreeMap<>();
        for (Map.Entry<Band, List<Integer>> entry : members.entrySet()) {
            if (entry.getValue().size() == wanted) {
                places.put(
                        entry.getKey(),
                        entry.getValue().stream().mapToInt(i -> i).toArray());
            }
        }
        return places;
    }

    boolean has(Band band) {
        return readings.length > 0 && places.stream().allMatch(p -> p.containsKey(band));
    }

    /** Bands that at least one reading has. */
    List<Band> anyBands() {
        return places.stream()
                .flatMap(p -> p.keySet().stream())
                .distinct()
                .sorted()
                .toList();
    }

    boolean sumsBands() {
        return sums;
    }

    /** Where each of the bands lies in each reading; all of them must be there. */
    int[][][] locate(List<Band> bands) {
        int[][][] at = new int[readings.length][bands.size()][];
        for (int r = 0; r < readings.length; r++) {
            for (int b = 0; b < bands.size(); b++) {
                int[] place = places.get(r).get(bands.get(b));
                at[r][b] = place == null ? new int[0] : place;
            }
        }
        return at;
    }

    /** Adds {@code factor} times the mean curve at the located bands. */
    void addTo(double[] target, double factor, double[][] levelsDb, int[][][] at) {
        for (int r = 0; r < readings.length; r++) {
            double[] levels = levelsDb[readings[r]];
            double weight = factor * weights[r];
            for (int b = 0; b < target.length; b++) {
                target[b] += weight * level(levels, at[r][b]);
            }
        }
        if (shiftDb != 0) {
            for (int b = 0; b < target.length; b++) {
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

    @Override
    public String toString() {
        return "mean of readings " + Arrays.toString(readings);
    }
}
