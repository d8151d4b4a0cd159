package org.ellwand.check;

import java.util.List;
import java.util.NavigableMap;
import org.ellwand.acoustics.Band;
import org.ellwand.check.Finding.Consequence;
import org.ellwand.check.Finding.Errs;
import org.ellwand.check.Finding.Measure;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Session;
import org.ellwand.words.Remark;

/**
 * An insertion that does not belong to the others. Two may differ by 2.8 standard deviations (repeatability limit of ISO
 * 5725-6, from memory); among three and more, one is odd whose distance from their median is beyond that and beyond 3.5 times
 * their own spread, 0.6745·|x − median| / MAD. It is flagged and never dropped: insertions that differ are what the
 * product does, unless a reason was found before anybody looked at a claim. Accuses fewer than 1 in 1000 sound sessions.
 */
final class OddInsertion implements DataCheck {
    /** Standard deviation of one insertion where the session declares none, dB (common practice, no source). */
    private static final double INSERTION_DB = 2;

    private static final double LIMIT = 2.8;
    private static final double SPREAD = 3.5;
    private static final double TO_DEVIATION = 0.6745;

    /** By so many declared standard deviations two differ once in 1400 times. */
    private static final double OF_TWO = 4.8;

    /** So many declared standard deviations off, and off by its own spread too, is one of three to six once in 2000 times (drawn). */
    private static final double OF_MORE = 4.3;

    @Override
    public String name() {
        return "odd insertion";
    }

    @Override
    public String needs() {
        return "two insertions under one sound";
    }

    @Override
    public Checked check(Material material) {
        Session session = material.session();
        Tally tally = new Tally(this, session);
        Sheets.grouped(Sheets.inPlace(session), Sheets.REPEATS).values().stream()
                .filter(group -> group.size() >= 2)
                .forEach(group -> judge(tally, session, group));
        return tally.done();
    }

    private static void judge(Tally tally, Session session, List<CurveReading> group) {
        tally.looked();
        List<Double> means = group.stream()
                .map(r -> Sheets.average(Sheets.between(Sheets.curve(r), 125, 8000)))
                .toList();
        double median = Sheets.median(means);
        double spread =
                Sheets.median(means.stream().map(m -> Math.abs(m - median)).toList());
        for (int i = 0; i < means.size(); i++) {
            // Two lie equally far from their median: what counts is how far from each other.
            double away = Math.abs(means.get(i) - median) * (means.size() == 2 ? 2 : 1);
            boolean apart = means.size() == 2 ? i == 0 : TO_DEVIATION * away > SPREAD * spread;
            if (apart && away > thresholdDb(session, means.size(), Sheets.curve(group.get(i)))) {
                add(tally, group.get(i), away, thresholdDb(session, means.size(), Sheets.curve(group.get(i))));
            }
        }
    }

    private static double thresholdDb(Session session, int insertions, NavigableMap<Band, Double> curve) {
        var bands = Sheets.between(curve, 125, 8000).keySet();
        double declared = Sheets.meanInsertionDb(session, bands);
        if (declared == 0) {
            return LIMIT * INSERTION_DB;
        }
        double one = Math.hypot(declared, Sheets.meanReadingDb(session, bands));
        return one * (insertions == 2 ? OF_TWO : OF_MORE);
    }

    private static void add(Tally tally, CurveReading reading, double away, double threshold) {
        tally.add(
                reading.conditions(),
                List.of(),
                Errs.EITHER,
                Consequence.NOTED,
                new Measure(away, threshold, "dB"),
                Remark.of("odd-insertion").with("away", away).with("threshold", threshold));
    }
}
