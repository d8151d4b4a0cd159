package org.ellwand.check;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.ellwand.acoustics.Band;
import org.ellwand.check.Finding.Consequence;
import org.ellwand.check.Finding.Errs;
import org.ellwand.check.Finding.Measure;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Session;
import org.ellwand.words.Remark;

/**
 * A probe tube that moved, kinked or filled between takes of the open ear: under one sound an ear returns to the same levels.
 * By the standing wave before the eardrum, 20 lg |cos(2πfd/c)|, a shift of 2 mm costs 0.4 dB at 4 kHz, 1 to 2 dB at
 * 6.3 kHz and 2 to 4 dB at 8 kHz (worked out from that formula). What the sound outside did meanwhile, where the field microphone
 * was read at both takes, is none of the tube's ({@link Outside}). (2 dB, 3 dB at 8 kHz and 4 dB: common practice, no
 * source.) Accuses fewer than 1 in 1000 sound sessions.
 */
final class ReturnCheck implements DataCheck {
    /** Difference of two takes up to 6.3 kHz, dB. */
    private static final Grade RETURN_DB = new Grade(2, 4);

    /** Difference of two takes above 6.3 kHz, dB. */
    private static final Grade HIGH_RETURN_DB = new Grade(3, 4);

    private static final double HIGH_HZ = 6300;

    /** Standard deviations of a reading that two takes may differ by. */
    private static final double SCATTER = 4.5 * Math.sqrt(2);

    @Override
    public String name() {
        return "return to the open ear";
    }

    @Override
    public String needs() {
        return "two takes of the open ear under one sound that can be repeated";
    }

    @Override
    public Checked check(Material material) {
        Session session = material.session();
        Tally tally = new Tally(this, session);
        Outside outside = Outside.of(session);
        List<List<CurveReading>> repeated = Sheets.grouped(Sheets.openEars(session), Sheets.REPEATS).values().stream()
                .filter(takes -> takes.size() >= 2)
                .toList();
        // Music may be what differs: where a sound that cannot was repeated, that one tells.
        boolean told = repeated.stream().anyMatch(takes -> !isMusic(session, takes));
        repeated.stream()
                .filter(takes -> !told || !isMusic(session, takes))
                .forEach(takes -> takes.subList(1, takes.size())
                        .forEach(take -> compare(tally, session, take, outside.rest(takes.get(0), take))));
        return tally.done();
    }

    private static boolean isMusic(Session session, List<CurveReading> takes) {
        return Levels.kind(session, takes.get(0)).equals(Levels.MUSIC);
    }

    private static void compare(Tally tally, Session session, CurveReading take, LevelCurve change) {
        tally.looked();
        LevelCurve difference = change.changed(Math::abs);
        for (Consequence consequence : List.of(Consequence.UNUSABLE, Consequence.NOTED)) {
            List<Band> bands = difference.bands().stream()
                    .filter(b ->
                            grade(session, b).of(difference.levelOr(b, 0.0)).equals(Optional.of(consequence)))
                    .toList();
            if (!bands.isEmpty()) {
                add(tally, session, take, difference, bands, consequence);
            }
        }
    }

    private static Grade grade(Session session, Band band) {
        Grade grade = band.nominalHz() > HIGH_HZ ? HIGH_RETURN_DB : RETURN_DB;
        return grade.orAtLeast(SCATTER * Sheets.readingDb(session, band));
    }

    private static void add(
            Tally tally,
            Session session,
            CurveReading take,
            LevelCurve difference,
            List<Band> bands,
            Consequence consequence) {
        Band worst = bands.stream()
                .max(Comparator.comparingDouble(b -> difference.levelOr(b, 0.0)))
                .orElseThrow();
        double figure = difference.levelOr(worst, 0.0);
        double threshold = grade(session, worst).passed(consequence);
        tally.add(
                take.conditions(),
                bands,
                Errs.EITHER,
                consequence,
                new Measure(figure, threshold, "dB"),
                Remark.of("tube-moved").with("difference", figure).with("threshold", threshold));
    }
}
