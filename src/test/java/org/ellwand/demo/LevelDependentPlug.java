package org.ellwand.demo;

import java.util.Map;

/**
 * Skerry Tide: microphone, amplifier and a small loudspeaker in a closed plug. The electronic path has one compressor per
 * setting and a fixed colour (a dip where the lost canal resonance is not quite given back, a fall towards 10 kHz);
 * electronic path, body and leak add up as energies. That the leak also drains the loudspeaker's low notes is left out.
 * Sizes: common practice, no source.
 */
final class LevelDependentPlug implements Device {
    private static final Map<String, Compressor> SETTINGS =
            Map.of("flood", new Compressor(-3, 68, 4), "ebb", new Compressor(0, 76, 2));
    private final PlugBody body = new PlugBody(32, 1500, 0.7);

    @Override
    public String name() {
        return "Skerry Tide";
    }

    @Override
    public double noiseDb(double frequencyHz) {
        return 18 + 8 * Bands.bell(frequencyHz, 3000, 1.5);
    }

    @Override
    public double gainDb(Ear ear, Fit fit, String setting, double levelDb, double frequencyHz) {
        double electronicDb = SETTINGS.get(setting).atDb(levelDb) + colourDb(frequencyHz);
        return Bands.energySumDb(electronicDb, body.gainDb(frequencyHz), fit.leakDb(ear, frequencyHz)) - ear.plugDb();
    }

    private static double colourDb(double frequencyHz) {
        return 1.5 * Bands.bell(frequencyHz, 1200, 0.9)
                - 3 * Bands.bell(frequencyHz, 3300, 0.4)
                - 5 * Bands.bell(frequencyHz, 10500, 0.6);
    }
}
