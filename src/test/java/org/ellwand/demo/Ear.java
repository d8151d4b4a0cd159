package org.ellwand.demo;

/**
 * An invented ear. Gain of the open ear over the field: two resonances, each a bell on the octave scale, the canal's near
 * 2.7 kHz with about 17 dB and the concha's near 4.5 kHz with a few dB on top. Size and place of the first: the average
 * adult ear after E. A. G. Shaw (1974), from memory; width, and how ears differ: common practice, no source.
 *
 * @param slitMm height of the slit that a badly sealing tip leaves in this ear, mm
 * @param plugDb how much more than the average ear a plug attenuates here, dB
 */
public record Ear(String name, String head, double canalDb, double canalHz, double slitMm, double plugDb) {
    public static final Ear CREW_01 = new Ear("crew-01-left", "crew-01", 16.0, 2700, 0.180, 0.4);
    public static final Ear CREW_02 = new Ear("crew-02-right", "crew-02", 14.2, 2950, 0.185, -0.3);

    public double openGainDb(double frequencyHz) {
        return canalDb * Bands.bell(frequencyHz, canalHz, 0.5) + 4 * Bands.bell(frequencyHz, 4500, 0.4);
    }
}
