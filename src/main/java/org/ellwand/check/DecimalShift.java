package org.ellwand.check;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import org.ellwand.acoustics.Band;
import org.ellwand.check.Finding.Consequence;
import org.ellwand.check.Finding.Errs;
import org.ellwand.check.Finding.Measure;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Session;

/**
 * A number that lost its decimal point, or stands one column off: one band lies far from the median of the two bands on each
 * side of it, or no level of sound is like it. No path in an ear changes so much from one band to the next and back again,
 * but for the notch of a standing wave, which is looked for by itself. A tone does, and a product that howls: what other
 * readings under the same sound show too is no slip, nor is what stands alone in quiet. (15 dB: common practice, no source.)
 * Accuses fewer than 1 in 1000 sound sessions.
 */
final class DecimalShift implements DataCheck {
    /** So far from the median of its neighbours, dB. */
    private static final double JUMP_DB = 15;

    private static final double LOWEST_DB = -10;
    private static final double HIGHEST_DB = 150;

    @Override
    public String name() {
        return "misplaced decimal point";
    }

    @Override
    public String needs() {
        return "a curve of levels";
    }

    @Override
    public Checked check(Material material) {
        Session session = material.asRead();
        Tally tally = new Tally(this, session);
        for (CurveReading reading : Sheets.levels(session, r -> true)) {
            tally.looked();
            NavigableMap<Band, Double> curve = Sheets.curve(reading);
            curve.forEach((band, level) -> judge(
                    tally,
                    reading,
                    band,
                    level,
                    isTold(session, reading, band) ? Optional.empty() : around(curve, band)));
        }
        return tally.done();
    }

    /** Whether a tone is why a band stands out: in quiet, or where other readings under the same sound show it too. */
    private static boolean isTold(Session session, CurveReading reading, Band band) {
        return Sheets.isQuiet(session, reading)
                || Levels.kind(session, reading).contains("tone")
                || Sheets.levels(
                                session,
                                r -> !r.equals(reading) && r.get("stimulus").equals(reading.get("stimulus")))
                        .stream()
                        .map(Sheets::curve)
                        .anyMatch(other -> Math.abs(jump(other, band)) > JUMP_DB / 2);
    }

    private static double jump(NavigableMap<Band, Double> curve, Band band) {
        Optional<Double> level = Optional.ofNullable(curve.get(band));
        return level.flatMap(l -> around(curve, band).map(a -> l - a)).orElse(0.0);
    }

    private static void judge(Tally tally, CurveReading reading, Band band, double level, Optional<Double> around) {
        double jump = around.map(a -> Math.abs(level - a)).orElse(0.0);
        if (level < LOWEST_DB || level > HIGHEST_DB) {
            Measure measure = new Measure(level, level < 0 ? LOWEST_DB : HIGHEST_DB, "dB");
            Told told = Told.of("out-of-range")
                    .with("level", level)
                    .with("lowest", LOWEST_DB)
                    .with("highest", HIGHEST_DB);
            add(tally, reading, band, measure, told);
        } else if (jump > JUMP_DB) {
            Told told = Told.of("out-of-line").with("jump", jump).with("threshold", JUMP_DB);
            add(tally, reading, band, new Measure(jump, JUMP_DB, "dB"), told);
        }
    }

    private static void add(Tally tally, CurveReading reading, Band band, Measure measure, Told told) {
        tally.add(reading.conditions(), List.of(band), Errs.EITHER, Consequence.UNUSABLE, measure, told);
    }

    /** The median of two bands below and two above; nothing at the ends, where a steep curve lies to one side. */
    private static Optional<Double> around(NavigableMap<Band, Double> curve, Band band) {
        List<Double> levels = new ArrayList<>();
        for (int step : new int[] {-2, -1, 1, 2}) {
            Optional.ofNullable(curve.get(new Band(band.resolution(), band.index() + step)))
                    .ifPresent(levels::add);
        }
        return levels.size() == 4 ? Optional.of(Sheets.median(levels)) : Optional.empty();
    }
}
