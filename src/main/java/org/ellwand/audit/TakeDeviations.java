package org.ellwand.audit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.ellwand.quantity.ReadingIndex;

/** How far the takes of an open ear lie from their mean, by nominal frequency in Hz, in dB. */
final class TakeDeviations {
    private final ReadingIndex index;
    private final double[][] levelsDb;

    /** @param levelsDb unperturbed levels, by reading */
    TakeDeviations(ReadingIndex index, double[][] levelsDb) {
        this.index = index;
        this.levelsDb = levelsDb;
    }

    /** How far every take lies from the mean of all, by band. */
    List<Map<Double, Double>> of(List<Integer> takes) {
        Map<Double, Double> sums = new HashMap<>();
        Map<Double, Integer> counts = new HashMap<>();
        for (int t : takes) {
            for (int b = 0; b < levelsDb[t].length; b++) {
                sums.merge(index.at(t).nominalHz(b), levelsDb[t][b], Double::sum);
                counts.merge(index.at(t).nominalHz(b), 1, Integer::sum);
            }
        }
        List<Map<Double, Double>> deviations = new ArrayList<>();
        for (int t : takes) {
            Map<Double, Double> of = new HashMap<>();
            for (int b = 0; b < levelsDb[t].length; b++) {
                double band = index.at(t).nominalHz(b);
                of.put(band, levelsDb[t][b] - sums.getOrDefault(band, 0.0) / counts.getOrDefault(band, 1));
            }
            deviations.add(of);
        }
        return deviations;
    }

    /** The error of another reading grows by the background that was subtracted there. */
    Map<Double, Double> grown(Map<Double, Double> deviation, int reading) {
        Map<Double, Double> grown = new HashMap<>(deviation);
        for (int b = 0; b < levelsDb[reading].length; b++) {
            double growth = index.at(reading).growth(b);
            grown.computeIfPresent(index.at(reading).nominalHz(b), (band, error) -> growth * error);
        }
        return grown;
    }
}
