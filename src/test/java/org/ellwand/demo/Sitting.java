package org.ellwand.demo;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.apache.commons.rng.simple.RandomSource;

/**
 * One sitting of one ear: the true levels and all that goes wrong with them. Standard deviations, dB, each one draw:
 *
 * <ul>
 *   <li>calibration 0.5, per sitting, in every level;
 *   <li>insertion 1.2 in all bands together, per insertion and tip: how deep and how tight it sits;
 *   <li>seal 0.6 below 450 Hz and 0.1 above, per insertion and tip;
 *   <li>tube placement 0.2 below 3 kHz, 0.5 up to 6 kHz, 1.2 above, per insertion and tip: the tube shifts as the plug goes
 *       in;
 *   <li>reading 0.3, per reading and band.
 * </ul>
 *
 * The microphone's floor adds to every level as an energy. Sizes are smaller than those of a busy clinic: common
 * practice, no source. Two settings of one insertion share its draws, so that they cancel in the difference.
 */
final class Sitting {
    private static final double CALIBRATION_DB = 0.5;
    private static final double READING_DB = 0.3;

    private final Ear ear;
    private final Device device;
    private final ZigguratSampler.NormalizedGaussian normal;
    private final double calibrationDb;
    private final Map<String, InsertionError> insertions = new HashMap<>();

    Sitting(Ear ear, Device device, long seed) {
        this.ear = ear;
        this.device = device;
        UniformRandomProvider random = RandomSource.XO_SHI_RO_256_PP.create(seed);
        this.normal = ZigguratSampler.NormalizedGaussian.of(random);
        this.calibrationDb = CALIBRATION_DB * normal.sample();
    }

    Device device() {
        return device;
    }

    Curve openEar(Sound sound, int take) {
        Map<String, String> conditions =
                Map.of("device", "open ear", "stimulus", sound.id(), "take", Integer.toString(take));
        return new Curve(conditions, levels(f -> inEar(f, sound.bandDb(f) + ear.openGainDb(f))));
    }

    Curve fieldMicrophone(Sound sound) {
        return new Curve(
                Map.of("device", "field microphone", "stimulus", sound.id()), levels(f -> inEar(f, sound.bandDb(f))));
    }

    Curve inPlace(Sound sound, Fit fit, String setting, int insertion) {
        InsertionError error = insertions.computeIfAbsent(
                fit.label() + insertion, key -> new InsertionError(normal.sample(), normal.sample(), normal.sample()));
        Map<String, String> conditions = Map.of(
                "device", device.name(),
                "fit", fit.label(),
                "setting", setting,
                "stimulus", sound.id(),
                "insertion", Integer.toString(insertion));
        return new Curve(conditions, levels(f -> behindPlug(f, sound, fit, setting, error)));
    }

    private double behindPlug(double frequencyHz, Sound sound, Fit fit, String setting, InsertionError error) {
        double gainDb = device.gainDb(ear, fit, setting, sound.levelDb(), frequencyHz);
        double signalDb = sound.bandDb(frequencyHz) + ear.openGainDb(frequencyHz) + gainDb + error.atDb(frequencyHz);
        return inEar(frequencyHz, Bands.energySumDb(signalDb, device.noiseDb(frequencyHz)));
    }

    /** With the floor of a probe microphone: higher at low frequencies. */
    private static double inEar(double frequencyHz, double levelDb) {
        return Bands.energySumDb(levelDb, 12 + 8 * Bands.bell(frequencyHz, 100, 1.5));
    }

    private List<Double> levels(DoubleUnaryOperator trueDb) {
        return Bands.ALL.stream()
                .map(band -> trueDb.applyAsDouble(band.exactHz()) + calibrationDb + READING_DB * normal.sample())
                .toList();
    }
}
