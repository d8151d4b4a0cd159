package org.ellwand.check;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ellwand.acoustics.Band;
import org.ellwand.check.Finding.Consequence;
import org.ellwand.check.Finding.Errs;
import org.ellwand.check.Finding.Measure;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.HarmonicReading;
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
    private static final Set<String> SOUND = Set.of("stimulus");
    private static final int[] NEIGHBOURS = {-2, -1, 1, 2};

    @Override
    public String name() {
        return "misplaced decimal point";
    }

    @Override
    public String needs() {
        return "a curve, or harmonics";
    }

    @Override
    public Checked check(Material material) {
        Tally tally = new Tally(this, material.asRead());
        if (!material.asRead().readings().isEmpty()) {
            tally.looked();
        }
        material.slips()
                .forEach(slip -> tally.add(
                        slip.reading().conditions(),
                        List.of(slip.band()),
                        Errs.EITHER,
                        Consequence.UNUSABLE,
                        slip.measure(),
                        slip.remark()));
        material.asRead().harmonics().forEach(reading -> harmonics(tally, reading));
        return tally.done();
    }

    /** A harmonic may lie far below all sounds, a tone may not. */
    private static void harmonics(Tally tally, HarmonicReading reading) {
        tally.looked();
        reading.levelDbByOrder().forEach((order, level) -> {
            if (level > HIGHEST_DB || (order == 1 && level < LOWEST_DB)) {
                tally.add(
                        reading.named().conditions(),
                        List.of(),
                        Errs.EITHER,
                        Consequence.UNUSABLE,
                        new Measure(level, level > HIGHEST_DB ? HIGHEST_DB : LOWEST_DB, "dB"),
                        outOfRange("out-of-range", level, LOWEST_DB, HIGHEST_DB));
            }
        });
    }

    private static Remark outOfRange(String key, double level, double lowest, double highest) {
        return Remark.of(key).with("level", level).with("lowest", lowest).with("highest", highest);
    }

    /** The slips of a session as it was read. */
    static List<Slip> in(Session session) {
        List<Slip> slips = new ArrayList<>();
        for (CurveReading reading : session.readings()) {
            LevelCurve curve = Sheets.curve(reading);
            for (int b = 0; b < curve.size(); b++) {
                if (isUnlikely(reading, curve, b)) {
                    judged(session, reading, curve, b).ifPresent(slips::add);
                }
            }
        }
        return List.copyOf(slips);
    }

    /** Whether a level is out of range, or lies far from one of those beside it: no median of others is farther. */
    private static boolean isUnlikely(CurveReading reading, LevelCurve curve, int place) {
        double[] levels = curve.numbers();
        double level = levels[place];
        boolean unlikely = level < lowestDb(reading) || level > highestDb(reading);
        for (int b = Math.max(0, place - 2); b < Math.min(levels.length, place + 3); b++) {
            unlikely |= Math.abs(level - levels[b]) > JUMP_DB;
        }
        return unlikely;
    }

    private static double lowestDb(CurveReading reading) {
        return reading.values() == Reading.Values.LEVELS ? LOWEST_DB : -MOST_DIFFERENCE_DB;
    }

    private static double highestDb(CurveReading reading) {
        return reading.values() == Reading.Values.LEVELS ? HIGHEST_DB : MOST_DIFFERENCE_DB;
    }

    /** Whether a tone is why a band stands out: in quiet, or where other readings under the same sound or of the same insertion show it too. */
    private static boolean isTold(Session session, CurveReading reading, Band band, double jump) {
        boolean howls = jump > 0 && Sheets.isQuiet(session, reading);
        return howls
                || Levels.kind(session, reading).contains("tone")
                || session.readings().stream()
                        .filter(r -> !r.equals(reading)
                                && r.values() == reading.values()
                                && (r.get("stimulus").equals(reading.get("stimulus")) || isSameState(r, reading)))
                        .map(r -> Sheets.curve(r))
                        .anyMatch(other -> Math.abs(jump(other, other.place(band))) > JUMP_DB / 2);
    }

    private static boolean isSameState(CurveReading one, CurveReading other) {
        return one.isInPlace()
                && one.conditions().without(SOUND).equals(other.conditions().without(SOUND));
    }

    /** How far a band lies from the median of those around it; 0 where there are too few, or it is not there. */
    private static double jump(LevelCurve curve, int place) {
        double[] around = place < 0 ? new double[0] : around(curve, place);
        boolean end = place == 0 || place == curve.size() - 1;
        boolean enough = around.length == 4 || (around.length == 2 && end);
        return enough ? curve.numbers()[place] - Curves.median(around) : 0;
    }

    private static double jumpDb(LevelCurve curve, int place) {
        return around(curve, place).length == 4 ? JUMP_DB : END_JUMP_DB;
    }

    private static Optional<Slip> judged(Session session, CurveReading reading, LevelCurve curve, int place) {
        Band band = curve.bands().get(place);
        double level = curve.numbers()[place];
        boolean levels = reading.values() == Reading.Values.LEVELS;
        double lowest = lowestDb(reading);
        double highest = highestDb(reading);
        if (level < lowest || level > highest) {
            Measure measure = new Measure(level, level < lowest ? lowest : highest, "dB");
            Remark remark = outOfRange(levels ? "out-of-range" : "difference-out-of-range", level, lowest, highest);
            return Optional.of(new Slip(reading, band, measure, remark));
        }
        double jump = jump(curve, place);
        double away = Math.abs(jump);
        if (away > JUMP_DB && away > jumpDb(curve, place) && !isTold(session, reading, band, jump)) {
            Remark remark = Remark.of("out-of-line").with("jump", away).with("threshold", JUMP_DB);
            return Optional.of(new Slip(reading, band, new Measure(away, JUMP_DB, "dB"), remark));
        }
        return Optional.empty();
    }

    /** The levels of two bands below and two above, as far as they are there. */
    private static double[] around(LevelCurve curve, int place) {
        double[] levels = new double[NEIGHBOURS.length];
        int found = 0;
        for (int steps : NEIGHBOURS) {
            int at = curve.beside(place, steps);
            if (at >= 0) {
                levels[found++] = curve.numbers()[at];
            }
        }
        return found == levels.length ? levels : Arrays.copyOf(levels, found);
    }
}
