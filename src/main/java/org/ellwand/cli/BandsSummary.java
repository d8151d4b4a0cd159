package org.ellwand.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.ellwand.sound.Calibration;
import org.ellwand.sound.RecordedPart;
import org.ellwand.sound.SoundLevels;
import org.ellwand.sound.WeightedLevels;

/** What a recording measures, for reading. */
final class BandsSummary {
    private BandsSummary() {}

    /** @param timeConstant as it was asked for */
    static List<String> lines(RecordedPart part, SoundLevels levels, Calibration calibrated, String timeConstant) {
        List<String> lines = new ArrayList<>();
        lines.add(text(
                "%s, channel %d of %d, from %.3f s for %.3f s at %d samples per second",
                part.file().name(),
                part.channel(),
                part.file().channels(),
                part.startS(),
                part.durationS(),
                part.file().rateHz()));
        lines.add(text(
                "calibration: %.1f Hz, steady within %.2f dB for %.1f s; full scale is %.2f dB SPL",
                calibrated.frequencyHz(), calibrated.spreadDb(), calibrated.steadyS(), calibrated.fullScaleDb()));
        lines.add("dB SPL, " + timeConstant
                + ": equivalent, maximum, peak, exceeded for 5, 10, 50, 90 and 95 % of the time");
        for (WeightedLevels weighted : levels.weighted()) {
            lines.add(text(
                    "  %s %7s %7s %7s %7s %7s %7s %7s %7s",
                    weighted.weighting(),
                    level(weighted.equivalentDb()),
                    level(weighted.maximumDb()),
                    level(weighted.peakDb()),
                    level(weighted.exceeded5Db()),
                    level(weighted.exceeded10Db()),
                    level(weighted.exceeded50Db()),
                    level(weighted.exceeded90Db()),
                    level(weighted.exceeded95Db())));
        }
        return lines;
    }

    private static String level(double levelDb) {
        return Double.isFinite(levelDb) ? text("%.2f", levelDb) : "-";
    }

    private static String text(String form, Object... values) {
        return String.format(Locale.ROOT, form, values);
    }
}
