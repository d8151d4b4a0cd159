package org.ellwand.examples;

import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.DoubleUnaryOperator;
import org.ellwand.demo.Compressor;

/** Levels against time, free of errors. Sizes: common practice, no source. */
final class TraceData {
    private static final double FRAME_S = 0.125;
    private static final double MUSIC_S = 24;
    private static final Compressor OPEN = new Compressor(0, 83.2, 10);

    private TraceData() {}

    static Map<String, String> sheets() {
        Map<String, String> sheets = new TreeMap<>();
        sheets.put("fathom-music-open.csv", music(0.4, f -> 0));
        for (int i = 1; i <= 3; i++) {
            sheets.put("fathom-music-worn-" + i + ".csv", music(0.2 + 0.1 * i, OPEN::atDb));
            sheets.put("gauge-tone-" + i + ".csv", tone(0.4 + 0.02 * i));
        }
        return sheets;
    }

    /**
     * Music that swells by 5 dB about 90 dB SPL in 7 s. The level that the plug follows is some tenths of a second behind,
     * the more so the emptier the battery; its gain is that of Skerry Fathom set to Open.
     */
    private static String music(double behindS, DoubleUnaryOperator gainOfLevelDb) {
        StringBuilder sheet = new StringBuilder("time (s),level (dB SPL)\n");
        double followedDb = 90;
        for (int i = 0; i < MUSIC_S / FRAME_S; i++) {
            double levelDb = 90 + 5 * Math.sin(2 * Math.PI * i * FRAME_S / 7);
            followedDb += (levelDb - followedDb) * (1 - Math.exp(-FRAME_S / behindS));
            row(sheet, i * FRAME_S, levelDb + gainOfLevelDb.applyAsDouble(followedDb));
        }
        return sheet.toString();
    }

    /** Half an hour of a tone of 94 dB SPL, shown lower and lower: the cell runs down. */
    private static String tone(double lostDb) {
        StringBuilder sheet = new StringBuilder("time (s),level (dB SPL)\n");
        for (int i = 0; i <= 60; i++) {
            row(sheet, 30 * i, 94.2 - lostDb * i / 60);
        }
        return sheet.toString();
    }

    private static void row(StringBuilder sheet, double timeS, double levelDb) {
        sheet.append(String.format(Locale.ROOT, "%.3f,%.3f\n", timeS, levelDb));
    }
}
