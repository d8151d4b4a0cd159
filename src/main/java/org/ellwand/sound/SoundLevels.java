package org.ellwand.sound;

import java.util.List;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Weighting;

/**
 * What was measured of a sound, in dB re full scale or, raised by a calibration, re 20 µPa.
 *
 * @param durationS how long the sound lasts, in s
 * @param bands lowest first
 * @param levelDb one per band; −∞ where nothing was there
 * @param weighted one per weighting
 * @param check what the samples say of the recording
 */
public record SoundLevels(
        double durationS, List<Band> bands, List<Double> levelDb, List<WeightedLevels> weighted, SampleFaults check) {
    /** A band is measured from this product of bandwidth and time on: its level scatters by less than 2 dB under noise. */
    public static final double LEAST_PRODUCT = 5;

    private static final double PER_NEPER_DB = 10 / Math.log(10);

    /**
     * {@return the levels in one frequency weighting}
     *
     * @param weighting one of those that were measured
     * @throws java.util.NoSuchElementException where it was not measured
     */
    public WeightedLevels weighted(Weighting weighting) {
        return weighted.stream()
                .filter(levels -> levels.weighting() == weighting)
                .findFirst()
                .orElseThrow();
    }

    /**
     * {@return whether the recording is long enough for a band}
     *
     * @param band any band
     */
    public boolean isLongEnough(Band band) {
        return bandwidthHz(band) * durationS >= LEAST_PRODUCT;
    }

    /**
     * Standard deviation of a band's level in dB if the sound is noise: 10/ln 10 / √(B T), B T the product of bandwidth
     * and time. The mean square of normal noise over B T independent pairs of numbers scatters by 1/√(B T) of itself.
     *
     * @param band any band
     * @return in dB
     */
    public double scatterDb(Band band) {
        return PER_NEPER_DB / Math.sqrt(bandwidthHz(band) * durationS);
    }

    private static double bandwidthHz(Band band) {
        return band.upperEdgeHz() - band.lowerEdgeHz();
    }

    /**
     * {@return these levels raised, from full scale to a sound pressure}
     *
     * @param byDb the level of full scale in dB re 20 µPa
     */
    public SoundLevels raised(double byDb) {
        return new SoundLevels(
                durationS,
                bands,
                levelDb.stream().map(level -> level + byDb).toList(),
                weighted.stream().map(levels -> levels.raised(byDb)).toList(),
                check);
    }
}
