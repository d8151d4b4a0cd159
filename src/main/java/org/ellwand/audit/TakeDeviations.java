package org.ellwand.audit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.ellwand.quantity.ReadingIndex;

/** How far the takes of an open ear lie from their mean, by nominal frequency in Hz, in dB. */
final class TakeDeviations {
    private final ReadingIndex index;
    private final List<List<Double>> hz;
    private final double[][] levelsDb;

    /**
     * @param hz frequency of each number, by reading
     * @param levelsDb unperturbed levels, by reading
     */
    TakeDeviations(ReadingIndex index, List<List<Double>> hz, double[][] levelsDb) {
        this.index = index;
        this.hz = hz;
        this.levelsDb = levelsDb;
    }

    /** How far every take lies from the mean of all, by band. */
    List<Map<Double, Double>> of(List<Integer> takes) {
        Map<Double, Double> sums = new HashMap<>();
        Map<Double, Integer> counts = new HashMap<>();
        for (int t : takes) {
            for (int b = 0; b < hz.get(t).size(); b++) {
                sums.merge(hz.get(t).get(b), levelsDb[t][b], Double::sum);
                counts.merge(hz.get(t).get(b), 1, Integer::sum);
            }
        }
        List<Map<Double, Double>> deviations = new ArrayList<>();
        for (int t : takes) {
            Map<Double, Double> of = new HashMap<>();
            for (int b = 0; b < hz.get(t).size(); b++) {
                double band = hz.get(t).get(b);
                of.put(band, levelsDb[t][b] - sums.getOrDefault(band, 0.0) / counts.getOrDefault(band, 1));
            }
            deviations.add(of);
        }
        return deviations;
    }

    /** The error of another reading grows by the background that was subtracted there. */
    Map<Double, Double> grown(Map<Double, Double> deviation, int reading) {
        Map<Double, Double> grown = new HashMap<>(deviation);
        for (int b = 0; b < hz.get(reading).size(); b++) {
            double growth = index.at(reading).growth(b);
            grown.computeIfPresent(hz.get(reading).get(b), (band, error) -> growth * error);
        }
        return grown;
    }
}
