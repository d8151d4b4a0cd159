package org.ellwand.sound;

import java.util.Locale;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Weighting;
import org.ellwand.words.Figures;

/** Levels as the sheets that a session names: a curve in rows, and a trace. */
public final class SoundSheets {
    private SoundSheets() {}

    /**
     * {@return a sheet of {@code layout: rows}: one band a row} The level of a band that was not measured stays empty.
     *
     * @param levels in dB re 20 µPa
     */
    public static String curve(SoundLevels levels) {
        StringBuilder sheet = new StringBuilder("frequency (Hz),level (dB SPL)\n");
        for (int i = 0; i < levels.bands().size(); i++) {
            Band band = levels.bands().get(i);
            double levelDb = levels.levelDb().get(i);
            sheet.append(Figures.plain(band.nominalHz())).append(',');
            if (levels.isLongEnough(band) && Double.isFinite(levelDb)) {
                sheet.append(number(levelDb, 2));
            }
            sheet.append('\n');
        }
        return sheet.toString();
    }

    /**
     * {@return a sheet of gain in dB and coherence, one band a row}
     *
     * @param transfer what became of a sound
     */
    public static String transfer(Transfer transfer) {
        StringBuilder sheet = new StringBuilder("frequency (Hz),gain (dB),coherence\n");
        for (int i = 0; i < transfer.bands().size(); i++) {
            sheet.append(Figures.plain(transfer.bands().get(i).nominalHz()))
                    .append(',')
                    .append(number(transfer.gainDb().get(i), 2))
                    .append(',')
                    .append(number(transfer.coherence().get(i), 3))
                    .append('\n');
        }
        return sheet.toString();
    }

    /**
     * {@return the first line of the sheet of a trace}
     *
     * @param weighting frequency weighting of its levels
     */
    public static String traceHeader(Weighting weighting) {
        return "time (s),level (" + weighting.levelUnit().symbol() + ")\n";
    }

    /**
     * {@return one line of the sheet of a trace; empty before any sound}
     *
     * @param timeS in s
     * @param levelDb in dB re 20 µPa
     */
    public static String traceRow(double timeS, double levelDb) {
        return Double.isFinite(levelDb) ? number(timeS, 4) + "," + number(levelDb, 2) + "\n" : "";
    }

    private static String number(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }
}
