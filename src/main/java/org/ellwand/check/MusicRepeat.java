package org.ellwand.check;

import java.util.List;
import org.ellwand.check.Finding.Errs;
import org.ellwand.check.Finding.Measure;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Session;
import org.ellwand.words.Remark;

/**
 * Music that was not the same twice. The same excerpt from a file gives the same band levels; played live it moves by several
 * dB from take to take (87, 89 and 93 dB for one instrument: an example in the literature, read). Looked at are takes of the
 * open ear: root mean square over the bands of their difference. (1 and 2 dB: common practice, no source.) Accuses fewer
 * than 1 in 1000 sound sessions.
 */
final class MusicRepeat implements DataCheck {
    /** Root mean square of the difference, dB. */
    private static final Grade DIFFERENCE_DB = new Grade(1, 2);

    /** Standard deviations of a reading that the root mean square of a difference may reach. */
    private static final double SCATTER = 3;

    private static final String MUSIC = "music";

    @Override
    public String name() {
        return "music that repeats";
    }

    @Override
    public String needs() {
        return "two takes of the open ear under music";
    }

    @Override
    public Checked check(Material material) {
        Session session = material.session();
        Tally tally = new Tally(this, session);
        List<CurveReading> music = Sheets.openEars(session).stream()
                .filter(r -> Levels.kind(session, r).equals(MUSIC))
                .toList();
        Sheets.grouped(music, Sheets.REPEATS).values().stream()
                .filter(takes -> takes.size() >= 2)
                .forEach(takes ->
                        takes.subList(1, takes.size()).forEach(take -> compare(tally, session, takes.get(0), take)));
        return tally.done();
    }

    private static void compare(Tally tally, Session session, CurveReading first, CurveReading take) {
        tally.looked();
        double figure = Curves.rootMeanSquare(Curves.less(Sheets.curve(take), Sheets.curve(first)));
        double reading = Sheets.curve(take).bands().stream()
                .mapToDouble(b -> Sheets.readingDb(session, b))
                .max()
                .orElse(0);
        Grade grade = DIFFERENCE_DB.orAtLeast(SCATTER * reading);
        grade.of(figure)
                .ifPresent(consequence -> tally.add(
                        take.conditions().without(Sheets.REPEATS),
                        List.of(),
                        Errs.EITHER,
                        consequence,
                        new Measure(figure, grade.passed(consequence), "dB"),
                        Remark.of("music-differs")
                                .with("difference", figure)
                                .with("threshold", grade.passed(consequence))));
    }
}
