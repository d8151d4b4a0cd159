package org.ellwand.check;

import java.util.List;
import org.ellwand.acoustics.Band;
import org.ellwand.check.Finding.Consequence;
import org.ellwand.check.Finding.Errs;
import org.ellwand.check.Finding.Measure;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Session;
import org.ellwand.words.Remark;

/**
 * A probe tube that the tip squeezes or wax blocks: what it still passes falls, most at high frequencies, and looks like
 * attenuation. One insertion then reads far below the others, over many bands above 1 kHz; of two others below both, while these agree
 * better than that. (Common practice, no source; wax
 * as a cause: clinical guidance, read in an abstract.) Accuses fewer than 1 in 1000 sound sessions.
 */
final class TubeExcess implements DataCheck {
    /** So far below the median of the other insertions, in five third octaves side by side, dB. */
    private static final double EXCESS_DB = 8;

    /** Standard deviations of an insertion that two may differ by. */
    private static final double SCATTER = 4 * Math.sqrt(2);

    private static final double LOWEST_HZ = 1000;
    private static final int FEWEST = 3;

    @Override
    public String name() {
        return "blocked probe tube";
    }

    @Override
    public String needs() {
        return "three insertions under one sound, above 1 kHz";
    }

    @Override
    public Checked check(Material material) {
        Session session = material.session();
        Tally tally = new Tally(this, session);
        material.repeats().values().stream()
                .filter(group -> group.size() >= FEWEST)
                .forEach(group -> group.forEach(one -> compare(tally, session, one, group)));
        return tally.done();
    }

    private static void compare(Tally tally, Session session, CurveReading one, List<CurveReading> group) {
        List<LevelCurve> others =
                group.stream().filter(r -> !r.equals(one)).map(Sheets::curve).toList();
        LevelCurve excess = Curves.between(
                Curves.less(Curves.lowerMedianOf(others), Sheets.curve(one)), LOWEST_HZ, Double.POSITIVE_INFINITY);
        tally.looked();
        List<Band> run = Curves.wideRun(excess, (band, db) -> db > EXCESS_DB && db > thresholdDb(session, band));
        if (!run.isEmpty() && Curves.agree(others, run, Curves.average(excess, run))) {
            double threshold = run.stream()
                    .mapToDouble(band -> thresholdDb(session, band))
                    .average()
                    .orElse(EXCESS_DB);
            add(tally, one, new Measure(Curves.average(excess, run), threshold, "dB"), run);
        }
    }

    private static double thresholdDb(Session session, Band band) {
        return Math.max(EXCESS_DB, SCATTER * Sheets.insertionDb(session, band));
    }

    /** All bands above 1 kHz are doubtful, those that show it and those that do not quite. */
    private static void add(Tally tally, CurveReading reading, Measure excess, List<Band> run) {
        tally.add(
                reading.conditions(),
                Curves.between(Sheets.curve(reading), LOWEST_HZ, Double.POSITIVE_INFINITY)
                        .bands(),
                Errs.INVENTS_ATTENUATION,
                Consequence.UNUSABLE,
                excess,
                Remark.of("tube-blocked")
                        .with("excess", excess.figure())
                        .with("bands", run.size())
                        .with("threshold", excess.threshold()));
    }
}
