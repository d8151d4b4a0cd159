package org.ellwand.examples;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.apache.commons.rng.simple.RandomSource;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Resolution;
import org.ellwand.demo.Bands;
import org.ellwand.demo.Ear;

/**
 * One sitting: true levels and what goes wrong with them. Standard deviations in dB, each one normal draw: calibration
 * 0.4 a sitting, insertion 0.7 in an ear and 0.1 in a simulator, in all bands together, reading 0.25 a reading and band. The
 * microphone's floor adds as an energy. Sizes: common practice, no source; the session files declare them.
 */
final class Rig {
    static final double CALIBRATION_DB = 0.4;
    static final double IN_EAR_DB = 0.7;
    static final double ON_SIMULATOR_DB = 0.1;
    static final double READING_DB = 0.25;

    private final List<Band> bands;
    private final double floorDb;
    private final double size;
    private final double insertionDb;
    private final ZigguratSampler.NormalizedGaussian normal;
    private final double calibrationDb;
    private final Map<String, Double> insertions = new HashMap<>();
    private final List<Sheet.Reading> readings = new ArrayList<>();

    private Rig(List<Band> bands, double floorDb, long seed, double size, double insertionDb) {
        this.bands = bands;
        this.floorDb = floorDb;
        this.size = size;
        this.insertionDb = size * insertionDb;
        this.normal = ZigguratSampler.NormalizedGaussian.of(RandomSource.XO_SHI_RO_256_PP.create(seed));
        this.calibrationDb = size * CALIBRATION_DB * normal.sample();
    }

    /** Seven octaves, 125 Hz to 8 kHz, behind a probe tube. */
    static Rig octaves(long seed, Errors errors) {
        return new Rig(bands(Resolution.OCTAVE, -3, 3), 8, seed, errors.size(), IN_EAR_DB);
    }

    /** Third octaves on a simulator or in a free field, between two band numbers counted from 1 kHz. */
    static Rig thirds(int first, int last, double floorDb, long seed, Errors errors) {
        return new Rig(bands(Resolution.THIRD_OCTAVE, first, last), floorDb, seed, errors.size(), ON_SIMULATOR_DB);
    }

    private static List<Band> bands(Resolution resolution, int first, int last) {
        return IntStream.rangeClosed(first, last)
                .mapToObj(i -> new Band(resolution, i))
                .toList();
    }

    /** Two takes of the open ear under a sound. */
    void openEar(Ear ear, Source sound) {
        for (int take = 1; take <= 2; take++) {
            once(Map.of("device", "open ear", "take", "" + take), sound, ear::openGainDb);
        }
    }

    void field(Source sound) {
        once(Map.of("device", "field microphone"), sound, f -> 0);
    }

    /** Three insertions. */
    void worn(Map<String, String> conditions, Source sound, DoubleUnaryOperator gainDb) {
        for (int insertion = 1; insertion <= 3; insertion++) {
            Map<String, String> all = new LinkedHashMap<>(conditions);
            all.put("insertion", "" + insertion);
            String key = Stream.of("unit", "side", "fit", "washes")
                            .map(name -> conditions.getOrDefault(name, ""))
                            .collect(Collectors.joining("|"))
                    + insertion;
            double error = insertions.computeIfAbsent(key, k -> insertionDb * normal.sample());
            read(all, sound, gainDb, error);
        }
    }

    /** One reading that has no insertion. */
    void once(Map<String, String> conditions, Source sound, DoubleUnaryOperator gainDb) {
        read(conditions, sound, gainDb, 0);
    }

    /** Under {@link Source#HUSH} the gain stands for the level of the product's own noise. */
    private void read(Map<String, String> conditions, Source sound, DoubleUnaryOperator gainDb, double errorDb) {
        Map<String, String> all = new LinkedHashMap<>(conditions);
        all.put("stimulus", sound.id());
        List<Double> levels = bands.stream()
                .map(band -> level(band, sound, gainDb.applyAsDouble(band.exactHz()) + errorDb))
                .toList();
        readings.add(new Sheet.Reading(all, levels));
    }

    private double level(Band band, Source sound, double gainDb) {
        double soundDb = sound == Source.HUSH ? 0 : sound.bandDb(band, bands);
        return Bands.energySumDb(soundDb + gainDb, floorDb) + calibrationDb + size * READING_DB * normal.sample();
    }

    String sheet() {
        return Sheet.write(bands, readings);
    }
}
