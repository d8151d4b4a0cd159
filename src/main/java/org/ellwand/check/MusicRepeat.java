package org.ellwand.check;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ellwand.check.Finding.Errs;
import org.ellwand.check.Finding.Measure;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Session;
import org.ellwand.words.Remark;

/**
 * Music that was not the same twice. The same excerpt from a file gives the same band levels; played live it moves by several
 * dB from take to take (87, 89 and 93 dB for one instrument: an example in the literature, read). Looked at are takes of the
 * open ear: root mean square over the bands of their difference. A tube that moved changes them too: what noise, which is the same
 * each time, changed by between the same takes is taken off. (1 and 2 dB: common practice, no source.) Accuses fewer
 * than 1 in 1000 sound sessions.
 */
final class MusicRepeat implements DataCheck {
    /** Root mean square of the difference, dB. */
    private static final Grade DIFFERENCE_DB = new Grade(1, 2);

    /** Standard deviations of a reading that the root mean square of a difference may reach. */
    private static final double SCATTER = 3;

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
        Outside outside = Outside.of(session);
        List<CurveReading> music = Sheets.openEars(session).stream()
                .filter(r -> Levels.kind(session, r).equals(Levels.MUSIC))
                .toList();
        Sheets.grouped(music, Sheets.REPEATS).values().stream()
                .filter(takes -> takes.size() >= 2)
                .forEach(takes -> takes.subList(1, takes.size())
                        .forEach(take -> compare(tally, session, outside, takes.get(0), take)));
        return tally.done();
    }

    private static void compare(Tally tally, Session session, Outside outside, CurveReading first, CurveReading take) {
        tally.looked();
        LevelCurve music = outside.rest(first, take);
        // What noise did may excuse, and never accuse.
        double figure = underNoise(session, outside, first, take)
                .map(noise -> Curves.rootMeanSquare(Curves.less(music, noise)))
                .filter(left -> left < Curves.rootMeanSquare(music))
                .orElseGet(() -> Curves.rootMeanSquare(music));
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
                                .with("take", take.get("take").orElse(""))
                                .with("difference", figure)
                                .with("threshold", grade.passed(consequence))));
    }

    /** What the same ear changed by from take to take under the loudest noise. */
    private static Optional<LevelCurve> underNoise(
            Session session, Outside outside, CurveReading first, CurveReading take) {
        return takes(session, first).stream()
                .flatMap(before -> takes(session, take).stream()
                        .filter(after -> after.get("stimulus").equals(before.get("stimulus")))
                        .map(after -> outside.rest(before, after)))
                .reduce((quieter, louder) -> louder);
    }

    /** Readings of the same ear at the same take under noise, the softest first. */
    private static List<CurveReading> takes(Session session, CurveReading music) {
        return Sheets.openEars(session).stream()
                .filter(r -> Levels.kind(session, r).contains("noise"))
                .filter(r -> r.conditions()
                        .without(Set.of("stimulus"))
                        .equals(music.conditions().without(Set.of("stimulus"))))
                .sorted(Comparator.comparingDouble(r -> Levels.db(session, r)))
                .toList();
    }
}
