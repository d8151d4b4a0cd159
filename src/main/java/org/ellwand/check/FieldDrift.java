package org.ellwand.check;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.ellwand.acoustics.Weighting;
import org.ellwand.check.Finding.About;
import org.ellwand.check.Finding.Errs;
import org.ellwand.check.Finding.Measure;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Session;
import org.ellwand.words.Remark;

/**
 * A sound that was not the same twice: two readings of the field microphone under one name differ in level or in shape. What was
 * louder outside is louder inside, and what a product takes off is then part drift. A field microphone that hears what
 * leaks out of an open fit drifts with it (read in a journal for audiologists). (0.5 and 1.5 dB of level, 1 and 2 dB of shape,
 * 3 dB in one band, 0.5 and 1 dB of an open ear: common practice, no source.) Accuses fewer than 1 in 1000 sound sessions.
 */
final class FieldDrift implements DataCheck {
    /** Difference of the overall levels, dB. */
    private static final Grade LEVEL_DB = new Grade(0.5, 1.5);

    /** Standard deviation over the bands of the difference, dB. */
    private static final Grade SHAPE_DB = new Grade(1, 2);

    /** Difference of one band, dB. */
    private static final double BAND_DB = 3;

    /** Mean difference of two takes of the open ear from 500 Hz to 2 kHz, dB. */
    private static final Grade BRACKET_DB = new Grade(0.5, 1);

    /** Standard deviations of a reading that two readings may differ by overall and in shape. */
    private static final double SCATTER = 3;

    @Override
    public String name() {
        return "level drift";
    }

    @Override
    public String needs() {
        return "two readings of the field microphone, or of the open ear, under one sound";
    }

    @Override
    public Checked check(Material material) {
        Session session = material.session();
        Tally tally = new Tally(this, session).about(About.LEVELS);
        Sheets.grouped(Sheets.fields(session), Sheets.REPEATS).values().stream()
                .filter(readings -> readings.size() >= 2)
                .forEach(readings -> readings.subList(1, readings.size())
                        .forEach(later -> compare(tally, session, readings.get(0), later)));
        Sheets.grouped(Sheets.openEars(session), Sheets.REPEATS).values().stream()
                .filter(takes -> takes.size() >= 2 && !isFieldRepeated(session, takes.get(0)))
                .filter(takes -> !Levels.kind(session, takes.get(0)).equals(Levels.MUSIC))
                .forEach(takes -> bracket(tally, session, takes.get(0), takes.get(takes.size() - 1)));
        return tally.done();
    }

    private static boolean isFieldRepeated(Session session, CurveReading open) {
        return Sheets.fields(session).stream()
                        .filter(f -> f.get("stimulus").equals(open.get("stimulus")))
                        .count()
                > 1;
    }

    /** Where no field microphone tells, the open ear before and after does, at frequencies where the tube's place matters least. */
    private static void bracket(Tally tally, Session session, CurveReading first, CurveReading last) {
        LevelCurve change = Curves.between(Curves.less(Sheets.curve(last), Sheets.curve(first)), 500, 2000);
        if (change.isEmpty()) {
            return;
        }
        tally.looked();
        Grade grade = BRACKET_DB.orAtLeast(4.5 * Math.sqrt(2) * Sheets.meanReadingDb(session, change.bands()));
        judge(tally, last, Math.abs(Curves.average(change)), grade, "open-ear-level");
    }

    private static void compare(Tally tally, Session session, CurveReading first, CurveReading later) {
        tally.looked();
        LevelCurve change = Curves.less(Sheets.curve(later), Sheets.curve(first));
        double scatter = SCATTER
                * change.bands().stream()
                        .mapToDouble(b -> Sheets.readingDb(session, b))
                        .max()
                        .orElse(0);
        double drift = Math.abs(Curves.overallDb(Sheets.curve(later), Weighting.Z)
                - Curves.overallDb(Sheets.curve(first), Weighting.Z));
        judge(tally, later, drift, LEVEL_DB.orAtLeast(scatter), "field-level");
        double widest = Arrays.stream(change.numbers()).map(Math::abs).max().orElse(0);
        double most = Math.max(BAND_DB, 4.5 * scatter / SCATTER * Math.sqrt(2));
        judge(tally, later, widest, new Grade(most, most), "field-band");
        judge(tally, later, Curves.deviation(change), SHAPE_DB.orAtLeast(scatter), "field-shape");
    }

    /** What was read under that sound, in place and in the open ear, is in doubt, whatever device it is of. */
    private static void judge(Tally tally, CurveReading later, double figure, Grade grade, String key) {
        grade.of(figure)
                .ifPresent(consequence -> tally.add(
                        later.conditions().without(Sheets.REPEATS).without(Set.of("device")),
                        List.of(),
                        Errs.EITHER,
                        consequence,
                        new Measure(figure, grade.passed(consequence), "dB"),
                        Remark.of(key).with("change", figure).with("threshold", grade.passed(consequence))));
    }
}
