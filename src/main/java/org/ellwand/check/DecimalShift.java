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
import org.ellwand.measurement.Reading;
import org.ellwand.measurement.Session;
import org.ellwand.words.Remark;

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

    /** At the ends, where a steep curve lies to one side, dB; a lost point makes 40 dB or more of a level. */
    private static final double END_JUMP_DB = 30;

    /** No product takes off or adds so much, dB. */
    private static final double MOST_DIFFERENCE_DB = 90;

    private static final double LOWEST_DB = -10;
    private static final double HIGHEST_DB = 150;

    @Override
    public String name() {
        return "misplaced decimal point";
    }

    @Override
    public String needs() {
        return "a curve";
    }

    @Override
    public Checked check(Material material) {
        Session session = material.asRead();
        Tally tally = new Tally(this, session);
        for (CurveReading reading : session.readings()) {
            tally.looked();
            NavigableMap<Band, Double> curve = Sheets.curve(reading);
            curve.forEach((band, level) -> judge(
                    tally,
                    reading,
                    band,
                    level,
                    jump(curve, band)
                            .filter(jump -> Math.abs(jump) > jumpDb(curve, band))
                            .filter(jump -> !isTold(session, reading, band, jump))));
        }
        return tally.done();
    }

    /** Whether a tone is why a band stands out: in quiet, or where other readings under the same sound show it too. */
    private static boolean isTold(Session session, CurveReading reading, Band band, double jump) {
        boolean howls = jump > 0 && Sheets.isQuiet(session, reading);
        return howls
                || Levels.kind(session, reading).contains("tone")
                || session.readings().stream()
                        .filter(r -> !r.equals(reading)
                                && r.values() == reading.values()
                                && r.get("stimulus").equals(reading.get("stimulus")))
                        .map(Sheets::curve)
                        .anyMatch(other -> Math.abs(jump(other, band).orElse(0.0)) > JUMP_DB / 2);
    }

    /** How far a band lies from those around it; nothing where there are too few. */
    private static Optional<Double> jump(NavigableMap<Band, Double> curve, Band band) {
        Optional<Double> level = Optional.ofNullable(curve.get(band));
        return level.flatMap(l -> around(curve, band).map(a -> l - a));
    }

    private static double jumpDb(NavigableMap<Band, Double> curve, Band band) {
        return neighbours(curve, band).size() == 4 ? JUMP_DB : END_JUMP_DB;
    }

    private static void judge(Tally tally, CurveReading reading, Band band, double level, Optional<Double> jump) {
        boolean levels = reading.values() == Reading.Values.LEVELS;
        double lowest = levels ? LOWEST_DB : -MOST_DIFFERENCE_DB;
        double highest = levels ? HIGHEST_DB : MOST_DIFFERENCE_DB;
        if (level < lowest || level > highest) {
            Measure measure = new Measure(level, level < lowest ? lowest : highest, "dB");
            Remark remark = Remark.of(levels ? "out-of-range" : "difference-out-of-range")
                    .with("level", level)
                    .with("lowest", lowest)
                    .with("highest", highest);
            add(tally, reading, band, measure, remark);
        } else {
            jump.map(Math::abs).ifPresent(away -> {
                Remark remark = Remark.of("out-of-line").with("jump", away).with("threshold", JUMP_DB);
                add(tally, reading, band, new Measure(away, JUMP_DB, "dB"), remark);
            });
        }
    }

    private static void add(Tally tally, CurveReading reading, Band band, Measure measure, Remark remark) {
        tally.add(reading.conditions(), List.of(band), Errs.EITHER, Consequence.UNUSABLE, measure, remark);
    }

    /** The median of two bands below and two above; at the ends of the two that there are. */
    private static Optional<Double> around(NavigableMap<Band, Double> curve, Band band) {
        List<Double> levels = neighbours(curve, band);
        return levels.size() == 4 || (levels.size() == 2 && isEnd(curve, band))
                ? Optional.of(Curves.median(levels))
                : Optional.empty();
    }

    private static boolean isEnd(NavigableMap<Band, Double> curve, Band band) {
        return band.equals(curve.firstKey()) || band.equals(curve.lastKey());
    }

    private static List<Double> neighbours(NavigableMap<Band, Double> curve, Band band) {
        List<Double> levels = new ArrayList<>();
        for (int step : new int[] {-2, -1, 1, 2}) {
            Optional.ofNullable(curve.get(new Band(band.resolution(), band.index() + step)))
                    .ifPresent(levels::add);
        }
        return levels;
    }
}
