package org.ellwand.examples;

import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import org.ellwand.demo.Bands;
import org.ellwand.demo.Compressor;
import org.ellwand.demo.Ear;
import org.ellwand.demo.PlugBody;

/**
 * Skerry Fathom in three ears: an electronic path of one gain a setting, coloured, beside what the body lets through. Sizes:
 * common practice, no source.
 */
final class EarplugData {
    private static final int[] OPEN_AT = {60, 80, 85, 90, 95};
    private static final String PORT = "BW-0021-P";
    private static final Ear CREW_03 = new Ear("crew-03-left", "crew-03", 15.4, 2600, 0.18, 0.1);
    private static final PlugBody BODY = new PlugBody(32, 1500, 0.7);
    private static final Compressor OPEN = new Compressor(0, 83.2, 10);

    private EarplugData() {}

    static Map<String, String> sheets(Errors errors) {
        return Map.of(
                "fathom-crew-01.csv", first(errors),
                "fathom-crew-02.csv", other(Ear.CREW_02, 2, errors),
                "fathom-crew-03.csv", other(CREW_03, 3, errors),
                "fathom-tones.csv", tones());
    }

    private static String other(Ear ear, long seed, Errors errors) {
        Rig rig = Rig.octaves(seed, errors);
        common(rig, ear);
        return rig.sheet();
    }

    private static void common(Rig rig, Ear ear) {
        for (int level : new int[] {60, 80}) {
            rig.field(Source.pink(level));
            rig.openEar(ear, Source.pink(level));
        }
        for (int level : OPEN_AT) {
            worn(rig, ear, "open", level);
        }
        worn(rig, ear, "full", 90);
        worn(rig, ear, "off", 90);
    }

    private static String first(Errors errors) {
        Ear ear = Ear.CREW_01;
        Rig rig = Rig.octaves(1, errors);
        common(rig, ear);
        worn(rig, ear, "lift", 60);
        worn(rig, ear, "full", 95);
        worn(rig, ear, "full", 100);
        starboard(rig, ear);
        quiet(rig);
        ownVoice(rig, ear);
        return rig.sheet();
    }

    private static void worn(Rig rig, Ear ear, String setting, int levelDb) {
        rig.worn(
                Map.of("setting", setting, "unit", PORT, "firmware", "2.0"),
                Source.pink(levelDb),
                f -> ear.openGainDb(f) + gainDb(setting, levelDb, f));
    }

    /** The other plug of the pair is 0.9 dB weaker. */
    private static void starboard(Rig rig, Ear ear) {
        for (int level : OPEN_AT) {
            rig.worn(
                    Map.of("setting", "open", "unit", "BW-0021-S", "firmware", "2.0"),
                    Source.pink(level),
                    f -> ear.openGainDb(f) + gainDb("open", level, f) - 0.9);
        }
    }

    /** Firmware 1.4 hisses 5.5 dB more; a cupped hand makes Lift whistle at 2 kHz. */
    private static void quiet(Rig rig) {
        Map<String, String> now = Map.of("setting", "open", "unit", PORT, "firmware", "2.0");
        rig.worn(now, Source.HUSH, f -> 15);
        rig.worn(Map.of("setting", "open", "unit", PORT, "firmware", "1.4"), Source.HUSH, f -> 20.5);
        whistle(rig, "away", f -> 22);
        whistle(rig, "cupped", f -> Math.abs(Bands.octaves(f, 2000)) < 0.1 ? 60 : 22);
    }

    private static void whistle(Rig rig, String hand, DoubleUnaryOperator noiseDb) {
        rig.worn(Map.of("setting", "lift", "unit", PORT, "firmware", "2.0", "hand", hand), Source.HUSH, noiseDb);
    }

    /** A closed ear raises one's own voice most near 250 Hz, common practice, no source. */
    private static void ownVoice(Rig rig, Ear ear) {
        Source voice = Source.speech("voice-72", 72);
        rig.openEar(ear, voice);
        rig.worn(
                Map.of("setting", "open", "unit", PORT, "firmware", "2.0"),
                voice,
                f -> ear.openGainDb(f) + 10.7 * Bands.bell(f, 250, 1));
    }

    private static double gainDb(String setting, double levelDb, double f) {
        double body = BODY.gainDb(f);
        double above4k = Math.max(0, Bands.octaves(f, 4000));
        return switch (setting) {
            case "open" ->
                Bands.energySumDb(body, OPEN.atDb(levelDb) + 0.5 * Math.sin(3 * Bands.octaves(f, 1000)) - 5 * above4k);
            case "lift" ->
                Bands.energySumDb(body, 5 + 2 * Bands.bell(f, 500, 0.7) - 3 * Math.max(0, Bands.octaves(f, 2000)));
            case "full" -> Bands.energySumDb(body, -23 - 10 * above4k);
            default -> body;
        };
    }

    private static String tones() {
        Harmonics harmonics = new Harmonics(115, 0.022);
        return "stimulus,order,level (dB SPL)\n"
                + harmonics.rows("tone-100", 100, 92)
                + harmonics.rows("tone-110", 110, 93)
                + harmonics.rows("tone-115", 115, 94);
    }
}
