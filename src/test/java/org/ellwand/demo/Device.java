package org.ellwand.demo;

import java.util.List;

/** An invented product: insertion gain without any error of measurement. */
interface Device {
    String name();

    /** Level of its own noise in every band, dB SPL, which comes on top of the microphone's. */
    double noiseDb(double frequencyHz);

    /**
     * Insertion gain, dB.
     *
     * @param levelDb overall level of the sound in the field, dB SPL
     */
    double gainDb(Ear ear, Fit fit, String setting, double levelDb, double frequencyHz);

    /** Both products name their settings after the tide. */
    default List<String> settings() {
        return List.of("flood", "ebb");
    }
}
