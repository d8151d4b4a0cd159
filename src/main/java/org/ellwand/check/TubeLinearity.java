package org.ellwand.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.ellwand.acoustics.Band;
import org.ellwand.check.Finding.Errs;
import org.ellwand.check.Finding.Measure;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Session;
import org.ellwand.words.Remark;

/**
 * A squeezed tube stops following the sound: between two levels, what is read rises by less than it does in the other
 * insertions. Insertions are held against each other, so that a product that works by level is not accused; of two others both must rise
 * more, while they agree. (1.5 and 3 dB:
 * common practice, no source.) Accuses fewer than 1 in 1000 sound sessions.
 */
final class TubeLinearity implements DataCheck {
    /** Lack of rise in five third octaves side by side, dB. */
    private static final Grade LACK_DB = new Grade(1.5, 3);

    /** Standard deviations of a reading that the difference of two rises, four readings, may make. */
    private static final double SCATTER = 4 * 2;

    private static final int FEWEST = 3;

    @Override
    public String name() {
        return "squeezed probe tube";
    }

    @Override
    public String needs() {
        return "three insertions at two levels of one kind of sound";
    }

    /** How much one insertion rises between two levels. */
    private record Rise(CurveReading upper, LevelCurve riseDb) {
        String state() {
            return upper.conditions().without(Sheets.REPEATS).toString();
        }
    }

    @Override
    public Checked check(Material material) {
        Session session = material.session();
        Tally tally = new Tally(this, session);
        Map<String, List<Rise>> rises = new TreeMap<>();
        Sheets.grouped(material.inPlace(), Set.of("stimulus", "take")).values().stream()
                .filter(readings -> readings.size() > 1)
                .flatMap(readings -> rise(session, readings).stream())
                .forEach(r ->
                        rises.computeIfAbsent(r.state(), k -> new ArrayList<>()).add(r));
        rises.values().stream()
                .filter(group -> group.size() >= FEWEST)
                .forEach(group -> group.forEach(one -> compare(tally, session, one, group)));
        return tally.done();
    }

    /** From the softest to the loudest sound of one kind. */
    private static Optional<Rise> rise(Session session, List<CurveReading> readings) {
        return Levels.series(session, readings).stream()
                .max(Comparator.comparingInt(List::size))
                .map(series -> new Rise(
                        series.get(series.size() - 1),
                        Curves.less(Sheets.curve(series.get(series.size() - 1)), Sheets.curve(series.get(0)))));
    }

    private static void compare(Tally tally, Session session, Rise one, List<Rise> group) {
        List<LevelCurve> others =
                group.stream().filter(r -> !r.equals(one)).map(Rise::riseDb).toList();
        LevelCurve lack = Curves.less(Curves.lowerMedianOf(others), one.riseDb());
        tally.looked();
        List<Band> run = Curves.wideRun(lack, (band, db) -> db > LACK_DB.noted() && db > noted(session, band));
        if (!run.isEmpty() && Curves.agree(others, run, Curves.average(lack, run))) {
            add(tally, one.upper().conditions().without(Set.of("stimulus", "take")), Curves.average(lack, run), run);
        }
    }

    private static double noted(Session session, Band band) {
        return LACK_DB.orAtLeast(SCATTER * Sheets.readingDb(session, band)).noted();
    }

    private static void add(Tally tally, Conditions insertion, double figure, List<Band> run) {
        LACK_DB.of(figure)
                .ifPresent(consequence -> tally.add(
                        insertion,
                        run,
                        Errs.INVENTS_ATTENUATION,
                        consequence,
                        new Measure(figure, LACK_DB.passed(consequence), "dB"),
                        Remark.of("tube-squeezed")
                                .with("lack", figure)
                                .with("threshold", LACK_DB.passed(consequence))));
    }
}
