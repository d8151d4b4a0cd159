package org.ellwand.examples;

import java.util.LinkedHashMap;
import java.util.Map;
import org.ellwand.demo.Bands;
import org.ellwand.demo.Ear;
import org.ellwand.demo.PlugBody;
import org.ellwand.demo.SlitLeak;

/** Skerry Reed in two ears: filter, body and leak add up as energies. Sizes: common practice, no source. */
final class FilteredPlugData {
    private static final PlugBody BODY = new PlugBody(36, 1600, 0.8);
    private static final double TIGHT_MM = 0.05;
    private static final double WASHED_OUT_MM = 0.19;

    private FilteredPlugData() {}

    static Map<String, String> sheets(Errors errors) {
        return Map.of(
                "reed-crew-01.csv", sitting(Ear.CREW_01, TIGHT_MM, 21, errors),
                "reed-crew-02.csv", sitting(Ear.CREW_02, 0.095, 24, errors));
    }

    /** The stock tip leaves a slit that the moulded one does not; a hundred washes widen it. */
    private static String sitting(Ear ear, double stockMm, long seed, Errors errors) {
        Rig rig = Rig.octaves(seed, errors);
        rig.openEar(ear, Source.pink(85));
        worn(rig, ear, "grey", "stock", "0", stockMm);
        worn(rig, ear, "amber", "stock", "0", stockMm);
        worn(rig, ear, "grey", "moulded", "0", TIGHT_MM);
        worn(rig, ear, "grey", "stock", "100", WASHED_OUT_MM);
        return rig.sheet();
    }

    private static void worn(Rig rig, Ear ear, String filter, String tip, String washes, double slitMm) {
        Map<String, String> conditions = new LinkedHashMap<>();
        conditions.put("setting", filter);
        conditions.put("fit", tip);
        conditions.put("washes", washes);
        rig.worn(conditions, Source.pink(85), f -> ear.openGainDb(f) + gainDb(filter, slitMm, f));
    }

    private static double gainDb(String filter, double slitMm, double f) {
        return Bands.energySumDb(filterDb(filter, f), BODY.gainDb(f), new SlitLeak(slitMm).gainDb(f));
    }

    private static double filterDb(String filter, double f) {
        return filter.equals("grey")
                ? -20 - 6 * Math.max(0, Bands.octaves(f, 4000))
                : -12 - 4 * Math.min(2, Math.max(0, Bands.octaves(f, 500)));
    }
}
