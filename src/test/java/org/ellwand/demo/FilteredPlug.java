package org.ellwand.demo;

/**
 * Skerry: a plug with a damped hole, wide or narrow. The hole attenuates alike at all frequencies but for a tilt per
 * octave; hole, body and leak add up as energies. The same at every level. Sizes: common practice, no source.
 */
final class FilteredPlug implements Device {
    private final PlugBody body = new PlugBody(31, 1600, 0.8);

    @Override
    public String name() {
        return "Skerry";
    }

    @Override
    public double noiseDb(double frequencyHz) {
        return Double.NEGATIVE_INFINITY;
    }

    @Override
    public double gainDb(Ear ear, Fit fit, String setting, double levelDb, double frequencyHz) {
        double seal =
                Bands.energySumDb(holeDb(setting, frequencyHz), body.gainDb(frequencyHz), fit.leakDb(ear, frequencyHz));
        return seal - ear.plugDb();
    }

    private static double holeDb(String setting, double frequencyHz) {
        double octaves = Bands.octaves(frequencyHz, 1000);
        return setting.equals("flood") ? -22.5 - 0.5 * octaves : -13 - 0.9 * octaves;
    }
}
