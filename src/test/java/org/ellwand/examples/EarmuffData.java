package org.ellwand.examples;

import java.util.Map;
import org.ellwand.demo.Bands;
import org.ellwand.demo.Compressor;
import org.ellwand.demo.Ear;
import org.ellwand.demo.PlugBody;

/**
 * Skerry Bell: a cup is a mass on the spring of its cushion; talk-through adds a path that is held near one level. Sizes:
 * common practice, no source.
 */
final class EarmuffData {
    private static final PlugBody CUP = new PlugBody(12, 200, 0.7);
    private static final Compressor TALK = new Compressor(14, 65, 20);
    private static final Ear SIMULATOR = new Ear("head simulator", "head simulator", 16, 2700, 0, 0);

    private EarmuffData() {}

    static Map<String, String> sheets(Errors errors) {
        return Map.of("bell-crew-01.csv", worn(errors), "bell-simulator.csv", simulator(errors));
    }

    private static String worn(Errors errors) {
        Rig rig = Rig.octaves(11, errors);
        for (int level : new int[] {55, 80}) {
            rig.field(Source.pink(level));
            rig.openEar(Ear.CREW_01, Source.pink(level));
        }
        for (int level : new int[] {55, 85, 95}) {
            worn(rig, Ear.CREW_01, "talk", Source.pink(level));
        }
        worn(rig, Ear.CREW_01, "off", Source.pink(95));
        return rig.sheet();
    }

    private static String simulator(Errors errors) {
        Rig rig = Rig.octaves(12, errors);
        rig.field(middle(100));
        rig.openEar(SIMULATOR, middle(100));
        for (int level : new int[] {100, 110, 115, 120}) {
            worn(rig, SIMULATOR, "talk", middle(level));
        }
        return rig.sheet();
    }

    /** A noise of middling pitch; its shape is invented. */
    private static Source middle(int levelDb) {
        return new Source("m-" + levelDb, levelDb, f -> 0);
    }

    private static void worn(Rig rig, Ear ear, String setting, Source sound) {
        rig.worn(Map.of("setting", setting), sound, f -> ear.openGainDb(f) + gainDb(setting, sound.levelDb(), f));
    }

    private static double gainDb(String setting, double levelDb, double f) {
        return setting.equals("off") ? CUP.gainDb(f) : Bands.energySumDb(CUP.gainDb(f), TALK.atDb(levelDb));
    }
}
