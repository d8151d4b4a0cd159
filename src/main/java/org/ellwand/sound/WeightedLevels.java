package org.ellwand.sound;

import org.ellwand.acoustics.Weighting;

/**
 * Levels of a frequency-weighted sound in dB.
 *
 * @param weighting the frequency weighting
 * @param equivalentDb of the mean square over the whole time
 * @param maximumDb highest time-weighted level
 * @param peakDb of the largest sample
 * @param exceeded5Db time-weighted level that was exceeded for 5 % of the time, NaN where the sound is too short for
 *     it
 * @param exceeded10Db the same for 10 %
 * @param exceeded50Db the same for 50 %
 * @param exceeded90Db the same for 90 %
 * @param exceeded95Db the same for 95 %
 */
public record WeightedLevels(
        Weighting weighting,
        double equivalentDb,
        double maximumDb,
        double peakDb,
        double exceeded5Db,
        double exceeded10Db,
        double exceeded50Db,
        double exceeded90Db,
        double exceeded95Db) {

    /** All levels raised. */
    WeightedLevels raised(double byDb) {
        return new WeightedLevels(
                weighting,
                equivalentDb + byDb,
                maximumDb + byDb,
                peakDb + byDb,
                exceeded5Db + byDb,
                exceeded10Db + byDb,
                exceeded50Db + byDb,
                exceeded90Db + byDb,
                exceeded95Db + byDb);
    }
}
