package org.ellwand.examples;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import org.ellwand.demo.Bands;
import org.ellwand.demo.Ear;
import org.ellwand.demo.PlugBody;

/** What is not worn, or speaks for its wearer: loudspeaker, microphone, headset, meter. Sizes: common practice, no source. */
final class BenchData {
    private BenchData() {}

    static Map<String, String> sheets(Errors errors) {
        Map<String, String> sheets = new LinkedHashMap<>();
        sheets.put("foghorn-1m.csv", loudspeaker(errors));
        sheets.put("limpet-1m.csv", microphone(errors));
        sheets.put("limpet-tones.csv", tones());
        sheets.put("bosun-crew-01.csv", headset(errors));
        sheets.put("bosun-simulator.csv", sent(errors));
        sheets.put("gauge-room.csv", meter(errors));
        return sheets;
    }

    /** Fades below 45 Hz and a little at 20 kHz; 15 degrees aside more so. */
    private static String loudspeaker(Errors errors) {
        Rig rig = Rig.thirds(-14, 13, 8, 51, errors);
        DoubleUnaryOperator ahead = f -> Targets.highPassDb(f, 45)
                + 0.8 * Math.sin(4 * Bands.octaves(f, 900))
                - 1.2 * Bands.bell(f, 20_000, 0.5);
        rig.worn(Map.of("direction", "ahead"), Source.pink(90), ahead);
        rig.worn(
                Map.of("direction", "15 degrees"),
                Source.pink(90),
                f -> ahead.applyAsDouble(f) - 3.5 * Bands.bell(f, 20_000, 0.7));
        return rig.sheet();
    }

    /** Hears least of what is behind near 1 kHz; hisses, and rumbles below 50 Hz. */
    private static String microphone(Errors errors) {
        Rig rig = Rig.thirds(-17, 13, -15, 52, errors);
        DoubleUnaryOperator ahead =
                f -> Targets.highPassDb(f, 15) + Bands.bell(f, 10_000, 0.5) - 5.5 * Bands.bell(f, 20_000, 0.3);
        rig.worn(Map.of("direction", "ahead"), Source.pink(80), ahead);
        rig.worn(
                Map.of("direction", "behind"),
                Source.pink(80),
                f -> ahead.applyAsDouble(f) - 14 - 9 * Bands.bell(f, 1000, 0.6));
        rig.worn(Map.of(), Source.HUSH, f -> 12 * Bands.bell(f, 25, 0.7));
        return rig.sheet();
    }

    private static String tones() {
        Harmonics harmonics = new Harmonics(140, 0.006);
        return "stimulus,order,level (dB SPL)\n" + harmonics.rows("tone-140", 140, 140);
    }

    private static String headset(Errors errors) {
        PlugBody cushion = new PlugBody(9, 300, 0.7);
        Source office = Source.speech("office-70", 70);
        Rig rig = Rig.octaves(53, errors);
        rig.openEar(Ear.CREW_01, office);
        rig.worn(Map.of("setting", "worn"), office, f -> Ear.CREW_01.openGainDb(f) + cushion.gainDb(f));
        return rig.sheet();
    }

    /** The signal sent, as a level; and what the line brings to the eardrum of the simulator. */
    private static String sent(Errors errors) {
        Source office = Source.speech("office-65", 65);
        Source voice = Source.speech("voice-60", 60);
        Rig rig = Rig.thirds(-6, 6, 0, 54, errors);
        rig.worn(Map.of("setting", "through"), office, f -> 0);
        rig.worn(Map.of("setting", "hush"), office, f -> -14.5 + Math.sin(4 * Bands.octaves(f, 1000)));
        rig.worn(Map.of("setting", "loudest"), Source.tones("line-tone", 110), f -> 4.5 * Bands.bell(f, 2500, 0.8));
        rig.worn(Map.of("setting", "table", "distance", "0.5 m"), voice, f -> 0);
        rig.worn(Map.of("setting", "table", "distance", "3 m"), voice, f -> -20 * Math.log10(6) + 7.5);
        return rig.sheet();
    }

    /** The telephone reads 0.8 dB more than the meter beside it. */
    private static String meter(Errors errors) {
        Rig rig = Rig.thirds(-12, 9, 8, 55, errors);
        for (int level : new int[] {75, 85, 95, 105}) {
            rig.worn(Map.of("device", "Skerry Gauge"), Source.pink(level), f -> 0.8);
            rig.worn(Map.of("device", "reference meter"), Source.pink(level), f -> 0);
        }
        return rig.sheet();
    }
}
