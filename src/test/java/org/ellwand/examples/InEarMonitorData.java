package org.ellwand.examples;

import java.util.Map;
import org.ellwand.demo.Bands;
import org.ellwand.demo.Ear;
import org.ellwand.demo.PlugBody;

/** Skerry Shanty in an ear simulator and in an ear. Sizes: common practice, no source. */
final class InEarMonitorData {
    private static final PlugBody SHELL = new PlugBody(22, 1200, 0.7);

    private InEarMonitorData() {}

    static Map<String, String> sheets(Errors errors) {
        return Map.of("shanty-simulator.csv", simulator(errors), "shanty-crew-01.csv", worn(errors));
    }

    /** 10 Hz to 10 kHz; the right side is 0.1 dB weaker. */
    private static String simulator(Errors errors) {
        Rig rig = Rig.thirds(-20, 10, 8, 41, errors);
        Source sweep = Source.tones("sweep-94", 94);
        rig.worn(Map.of("side", "left"), sweep, InEarMonitorData::responseDb);
        rig.worn(Map.of("side", "right"), sweep, f -> responseDb(f) - 0.1);
        return rig.sheet();
    }

    /** The house curve, with a bump near 3 kHz, a dip near 6.3 kHz and a driver that fades below 20 Hz. */
    private static double responseDb(double f) {
        return houseDb(f) + Bands.bell(f, 3000, 0.3) - 1.2 * Bands.bell(f, 6300, 0.3) + Targets.highPassDb(f, 20);
    }

    private static double houseDb(double f) {
        return 6 * Bands.bell(f, 40, 2) + 10 * Bands.bell(f, 2800, 0.8);
    }

    static String target() {
        return Targets.thirds(-20, 10, InEarMonitorData::houseDb);
    }

    private static String worn(Errors errors) {
        Rig rig = Rig.octaves(42, errors);
        rig.openEar(Ear.CREW_01, Source.pink(85));
        worn(rig, "port closed", -90);
        worn(rig, "port open", -14);
        return rig.sheet();
    }

    private static void worn(Rig rig, String setting, double portDb) {
        rig.worn(
                Map.of("setting", setting),
                Source.pink(85),
                f -> Ear.CREW_01.openGainDb(f) + Bands.energySumDb(SHELL.gainDb(f), portDb));
    }
}
