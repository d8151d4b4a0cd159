package org.ellwand.sound;

import org.ellwand.acoustics.Resolution;
import org.ellwand.acoustics.Weighting;

/**
 * What is to be measured of a recording.
 *
 * @param resolution of the bands
 * @param lowestHz bands with a mid-band frequency from here on
 * @param highestHz and up to here
 * @param timeConstantS of the time weighting
 * @param everyS how often the level is counted and told
 * @param traced weighting of the level that is told
 */
public record SoundAnalysis(
        Resolution resolution,
        double lowestHz,
        double highestHz,
        double timeConstantS,
        double everyS,
        Weighting traced) {
    /** Time constant F of IEC 61672-1, in s. */
    public static final double FAST_S = 0.125;

    /** Time constant S of IEC 61672-1, in s. */
    public static final double SLOW_S = 1;

    /**
     * {@return bands of a resolution from 20 Hz to 20 kHz, level A fast every 10 ms}
     *
     * @param resolution of the bands
     */
    public static SoundAnalysis of(Resolution resolution) {
        return new SoundAnalysis(resolution, 19.5, 20_400, FAST_S, 0.010, Weighting.A);
    }
}
