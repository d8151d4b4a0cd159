package org.ellwand.acoustics;

import java.util.Collection;
import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ellwand.statistics.Sample;

/**
 * Attenuation of a panel of subjects by test frequency, as makers print it.
 *
 * @param byHz mean and standard deviation over the subjects in dB, by nominal frequency in Hz
 */
public record AttenuationTable(SortedMap<Integer, Sample> byHz) {
    /**
     * Keeps a copy of the table.
     *
     * @param byHz mean and standard deviation over the subjects in dB, by nominal frequency in Hz
     */
    public AttenuationTable {
        byHz = Collections.unmodifiableSortedMap(new TreeMap<>(byHz));
    }

    /**
     * {@return the table of at least two subjects, each given by its attenuation in dB at the same frequencies}
     *
     * @param subjects attenuation in dB by nominal frequency in Hz, one map for each; not empty
     */
    public static AttenuationTable ofSubjects(Collection<SortedMap<Integer, Double>> subjects) {
        SortedMap<Integer, Sample> byHz = new TreeMap<>();
        for (Integer hz : subjects.iterator().next().keySet()) {
            byHz.put(hz, Sample.of(subjects.stream().map(s -> s.get(hz)).toList()));
        }
        return new AttenuationTable(byHz);
    }

    /**
     * Assumed protection value APV = mean − α · deviation, in dB by frequency (ISO 4869-2, from memory).
     *
     * @param factor α of {@link ProtectionPerformance}
     * @return dB by nominal frequency in Hz
     */
    public SortedMap<Integer, Double> assumedProtectionDb(double factor) {
        SortedMap<Integer, Double> values = new TreeMap<>();
        byHz.forEach((hz, sample) -> values.put(hz, sample.mean() - factor * sample.deviation()));
        return values;
    }

    /** Mean and standard deviation at a frequency of the table. */
    Sample at(int hz) {
        Sample sample = byHz.get(hz);
        if (sample == null) {
            throw new IllegalArgumentException("the table has no " + hz + " Hz");
        }
        return sample;
    }
}
