package org.ellwand.quantity;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Bound;
import org.ellwand.acoustics.Spectrum;
import org.ellwand.measurement.CurveReading;

/**
 * The subjects of a rating: the attenuation of each, the mean of its trials.
 *
 * @param subjects attenuation in dB by nominal frequency in Hz, by subject; only frequencies that every trial holds
 * @param trials of all subjects together
 */
public record Panel(SortedMap<String, SortedMap<Integer, Double>> subjects, int trials) {
    /**
     * {@return the panel of readings that hold attenuation, by subject}
     *
     * @param readings curves of attenuation, one or more for each subject
     */
    public static Panel of(Map<String, List<CurveReading>> readings) {
        List<SortedMap<Integer, Double>> all = readings.values().stream()
                .flatMap(List::stream)
                .map(Panel::measured)
                .toList();
        SortedSet<Integer> common = new TreeSet<>(all.get(0).keySet());
        all.forEach(trial -> common.retainAll(trial.keySet()));
        SortedMap<String, SortedMap<Integer, Double>> subjects = new TreeMap<>();
        readings.forEach((name, trials) -> subjects.put(name, mean(trials, common)));
        return new Panel(subjects, all.size());
    }

    /** A bound ("at least 40 dB") is no value to average. */
    private static SortedMap<Integer, Double> measured(CurveReading trial) {
        SortedMap<Integer, Double> byHz = new TreeMap<>();
        for (Map.Entry<Band, Spectrum.Level> entry : trial.spectrum().levels().entrySet()) {
            if (entry.getValue().bound() == Bound.MEASURED) {
                byHz.put(
                        (int) Math.round(entry.getKey().nominalHz()),
                        entry.getValue().levelDb());
            }
        }
        return byHz;
    }

    private static SortedMap<Integer, Double> mean(List<CurveReading> trials, Collection<Integer> frequenciesHz) {
        SortedMap<Integer, Double> mean = new TreeMap<>();
        for (Integer hz : frequenciesHz) {
            double sum = trials.stream().mapToDouble(t -> measured(t).get(hz)).sum();
            mean.put(hz, sum / trials.size());
        }
        return mean;
    }

    /** {@return the frequencies in Hz that every trial holds} */
    public SortedSet<Integer> frequenciesHz() {
        return new TreeSet<>(attenuationsDb().get(0).keySet());
    }

    /** This panel at some of its frequencies. */
    Panel only(Collection<Integer> wantedHz) {
        SortedMap<String, SortedMap<Integer, Double>> fewer = new TreeMap<>();
        subjects.forEach((name, values) -> {
            SortedMap<Integer, Double> kept = new TreeMap<>(values);
            kept.keySet().retainAll(wantedHz);
            fewer.put(name, kept);
        });
        return new Panel(fewer, trials);
    }

    List<SortedMap<Integer, Double>> attenuationsDb() {
        return new ArrayList<>(subjects.values());
    }
}
