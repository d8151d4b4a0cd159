package org.ellwand.check;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Resolution;
import org.ellwand.acoustics.Weighting;
import org.ellwand.amount.Unit;
import org.ellwand.check.Finding.Consequence;
import org.ellwand.check.Finding.Errs;
import org.ellwand.check.Finding.Measure;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Session;
import org.ellwand.words.Remark;

/**
 * Levels of octaves at the centres of third octaves. All are 10 lg 3 = 4.8 dB too high, and nothing in the sheet itself shows it; beside it
 * two things do. The field microphone, summed, comes to so much more than the stated level under every sound; bands that were
 * not measured could only lower the sum. Or the octaves of another session lie so far below the sums of thirds of this one under the same sound, in every band. A
 * sound that was louder than stated looks the same, so it is noted and nothing follows. (10 lg 3 from the definition of the bands; the margin of
 * {@link BandWidths}, and 4.5 standard deviations of the declared errors at least: common practice, no source.)
 */
final class OctaveLevels {
    private static final double SCATTER = 4.5;
    private static final double SAME_LEVEL_DB = 0.5;
    private static final Set<String> SOUND = Set.of("stimulus", "insertion", "take");

    private OctaveLevels() {}

    static void in(Material material, Tally tally) {
        Session session = material.asRead();
        List<CurveReading> thirds = firsts(session, Resolution.THIRD_OCTAVE);
        if (!thirds.isEmpty() && !aboveStated(tally, session, thirds)) {
            aboveOctaves(tally, material, thirds);
        }
    }

    /** The field microphone at its first take under each sound; a later one that differs is a drift ({@link FieldDrift}). */
    private static List<CurveReading> firsts(Session session, Resolution resolution) {
        return Sheets.grouped(Sheets.fields(session), Sheets.REPEATS).values().stream()
                .map(takes -> takes.get(0))
                .filter(r -> r.spectrum().resolution() == resolution)
                .filter(r -> r.spectrum().bandList().size() >= BandWidths.FEWEST)
                .toList();
    }

    private static boolean aboveStated(Tally tally, Session session, List<CurveReading> thirds) {
        List<Double> above = new ArrayList<>();
        for (CurveReading reading : thirds) {
            aboveStatedDb(session, reading).ifPresent(above::add);
        }
        boolean found = !above.isEmpty() && above.stream().allMatch(db -> isOctave(session, thirds.get(0), db));
        if (found) {
            add(tally, session, thirds.get(0), above, Remark.of("octave-levels-by-sum"));
        }
        return found;
    }

    /** How far the sum lies above the stated level; empty where none is stated, or where the sum with another weighting comes to it ({@link StatedLevel}). */
    private static Optional<Double> aboveStatedDb(Session session, CurveReading reading) {
        LevelCurve curve = Sheets.curve(reading);
        double plain = Curves.overallDb(curve, Weighting.Z);
        double weighted = Curves.overallDb(curve, Weighting.A);
        return stated(session, reading, Unit.DB_SPL)
                .map(db -> Math.abs(weighted - db) < SAME_LEVEL_DB ? 0 : plain - db)
                .or(() -> stated(session, reading, Unit.DB_A)
                        .map(db -> Math.abs(plain - db) < SAME_LEVEL_DB ? 0 : weighted - db));
    }

    private static Optional<Double> stated(Session session, CurveReading reading, Unit unit) {
        return session.stimulusOf(reading.conditions()).flatMap(sound -> sound.levelIn(unit));
    }

    private static void aboveOctaves(Tally tally, Material material, List<CurveReading> thirds) {
        Session session = material.asRead();
        for (Session other : material.all()) {
            for (CurveReading octaves : firsts(other, Resolution.OCTAVE)) {
                for (CurveReading reading : thirds) {
                    if (Levels.isSameSound(session, reading.conditions(), other, octaves.conditions())
                            && isAbove(session, reading, octaves)) {
                        List<Double> above = aboveDb(reading, octaves);
                        add(
                                tally,
                                session,
                                reading,
                                above,
                                Remark.of("octave-levels-by-session").with("other", other.id()));
                        return;
                    }
                }
            }
        }
    }

    private static boolean isAbove(Session session, CurveReading reading, CurveReading octaves) {
        List<Double> above = aboveDb(reading, octaves);
        return above.size() >= BandWidths.FEWEST && above.stream().allMatch(db -> isOctave(session, reading, db));
    }

    private static List<Double> aboveDb(CurveReading reading, CurveReading octaves) {
        CurveReading summed = new CurveReading(
                reading.conditions(), reading.values(), reading.spectrum().sumTo(Resolution.OCTAVE), reading.place());
        double[] above =
                Curves.less(Sheets.curve(summed), Sheets.curve(octaves)).numbers();
        return Arrays.stream(above).boxed().toList();
    }

    private static boolean isOctave(Session session, CurveReading reading, double aboveDb) {
        return aboveDb > leastDb(session, reading) && aboveDb < BandWidths.OCTAVE_TO_THIRD_DB + BandWidths.MARGIN_DB;
    }

    private static double leastDb(Session session, CurveReading reading) {
        List<Band> bands = Sheets.curve(reading).bands();
        double errors = Math.hypot(Sheets.meanSessionDb(session, bands), Sheets.meanReadingDb(session, bands));
        return Math.max(BandWidths.OCTAVE_TO_THIRD_DB - BandWidths.MARGIN_DB, SCATTER * errors);
    }

    private static void add(Tally tally, Session session, CurveReading reading, List<Double> aboveDb, Remark remark) {
        double mean = aboveDb.stream().mapToDouble(db -> db).average().orElse(0);
        tally.add(
                reading.conditions().without(SOUND),
                List.of(),
                Errs.EITHER,
                Consequence.NOTED,
                new Measure(mean, leastDb(session, reading), "dB"),
                remark.with("above", mean));
    }
}
