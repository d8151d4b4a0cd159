package org.ellwand.examples;

import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import org.ellwand.demo.Bands;
import org.ellwand.demo.Ear;
import org.ellwand.demo.PlugBody;

/** Skerry Lookout in an ear and in a coupler. Sizes: common practice, no source. */
final class HearingAidData {
    private static final Ear EAR = Ear.CREW_01;
    private static final PlugBody TIP = new PlugBody(24, 1500, 0.7);
    private static final Source TALK_50 = Source.speech("talk-50", 50);
    private static final Source TALK_65 = Source.speech("talk-65", 65);

    private HearingAidData() {}

    static Map<String, String> sheets(Errors errors) {
        return Map.of(
                "lookout-crew-01.csv", worn(errors),
                "lookout-coupler.csv", coupler(errors),
                "lookout-tones.csv", tones());
    }

    private static String worn(Errors errors) {
        Rig rig = Rig.octaves(31, errors);
        rig.openEar(EAR, TALK_50);
        rig.openEar(EAR, Source.pink(85));
        worn(rig, "full-on", TALK_50, HearingAidData::fullOnDb);
        worn(rig, "plain", TALK_50, HearingAidData::plainDb);
        worn(rig, "plain", TALK_65, HearingAidData::plainDb);
        worn(
                rig,
                "calm",
                TALK_65,
                f -> plainDb(f) - 6 - 2 * Math.max(0, Bands.octaves(f, 250)) / 3 - 9 * Bands.bell(f, 2000, 0.5));
        rig.worn(Map.of("setting", "plain"), Source.HUSH, f -> 14 + plainDb(f));
        beam(rig, "ahead", 0);
        beam(rig, "all round", -4.5);
        beam(rig, "behind", -9);
        worn(rig, "off", Source.pink(85), TIP::gainDb);
        worn(rig, "still", Source.pink(85), f -> TIP.gainDb(f) - 14 * Bands.bell(f, 250, 1));
        return rig.sheet();
    }

    private static void worn(Rig rig, String setting, Source sound, DoubleUnaryOperator gainDb) {
        rig.worn(Map.of("setting", setting), sound, f -> EAR.openGainDb(f) + gainDb.applyAsDouble(f));
    }

    private static void beam(Rig rig, String direction, double gainDb) {
        rig.worn(
                Map.of("setting", "beam", "direction", direction),
                Source.pink(65),
                f -> EAR.openGainDb(f) + plainDb(f) + gainDb);
    }

    private static double fullOnDb(double f) {
        double octaves = Bands.octaves(f, 1400);
        return 43.5 - 3.5 * octaves * octaves;
    }

    /** What the aid is tuned to, and misses by up to 2 dB, at 8 kHz by 6 dB. */
    private static double plainDb(double f) {
        return idealDb(f)
                + Math.sin(3 * Bands.octaves(f, 700))
                - 1.5 * Bands.bell(f, 4000, 0.4)
                - 6 * Bands.bell(f, 8000, 0.3);
    }

    private static double idealDb(double f) {
        double octaves = Bands.octaves(f, 2000);
        return 22 - octaves * octaves;
    }

    /** The level at the eardrum that the aid is tuned to. */
    static String target() {
        return Targets.octaves(f -> EAR.openGainDb(f) + idealDb(f) - 6 * Math.max(0, Bands.octaves(f, 500)));
    }

    private static String coupler(Errors errors) {
        Rig rig = Rig.thirds(-12, 12, 8, 32, errors);
        rig.worn(Map.of("setting", "full-on"), Source.tones("sweep-90", 90), f -> {
            double octaves = Bands.octaves(f, 1500);
            return 18 - 2 * octaves * octaves;
        });
        rig.worn(
                Map.of("setting", "plain"),
                Source.tones("sweep-60", 60),
                f -> 22 - 24 * Math.max(0, Bands.octaves(f, 6300)) - 6 * Math.max(0, Bands.octaves(160, f)));
        return rig.sheet();
    }

    private static String tones() {
        Harmonics harmonics = new Harmonics(90, 0.02);
        return "stimulus,order,level (dB SPL)\n"
                + harmonics.rows("tone-65", 65, 87)
                + harmonics.rows("tone-70", 70, 92)
                + harmonics.rows("tone-90", 90, 104);
    }
}
