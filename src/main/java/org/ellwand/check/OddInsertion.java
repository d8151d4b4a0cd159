package org.ellwand.check;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.ellwand.acoustics.Band;
import org.ellwand.check.Finding.Consequence;
import org.ellwand.check.Finding.Errs;
import org.ellwand.check.Finding.Measure;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Session;
import org.ellwand.statistics.NormalErrors;
import org.ellwand.words.Remark;

/**
 * An insertion that does not belong to the others. Two may differ by 2.8 standard deviations (repeatability limit of ISO
 * 5725-6, from memory). Among three and more, one is odd that lies further from the median of the others than the declared
 * sizes bring about once in 2000 groups, and further than the others' own scatter explains: beyond what lies between any two of
 * them, and, from {@link #ENOUGH_FOR_MAD} on, beyond 3.5 times their median deviation as well, 0.6745·|x − median| / MAD. Of three or
 * four that deviation is itself too uncertain to tell anything. So with 1.2 dB declared of an insertion, one that lies
 * 6.5 dB off is found more often than not, among three as among ten. It is flagged and never dropped: insertions that differ are
 * what the product does, unless a reason was found before anybody looked at a claim. Accuses fewer than 1 in 1000 sound sessions.
 */
final class OddInsertion implements DataCheck {
    /** Standard deviation of one insertion where the session declares none, dB (common practice, no source). */
    private static final double INSERTION_DB = 2;

    private static final double LIMIT = 2.8;
    private static final double SPREAD = 3.5;
    private static final double TO_DEVIATION = 0.6745;
    private static final int ENOUGH_FOR_MAD = 5;

    /** By so many declared standard deviations two differ once in 1400 times. */
    private static final double OF_TWO = 4.8;

    /** A group of sound insertions is accused by chance no more often. */
    private static final double BY_CHANCE = 1.0 / 2000;

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
        material.repeats().values().stream()
                .map(Sheets::comparable)
                .filter(group -> group.size() >= 2)
                .forEach(group -> judge(tally, material, group));
        return tally.done();
    }

    private static void judge(Tally tally, Material material, List<CurveReading> group) {
        List<LevelCurve> curves =
                Curves.between(group.stream().map(material::curve).toList(), 125, 8000);
        if (curves.get(0).isEmpty()) {
            return;
        }
        tally.looked();
        List<Double> means = curves.stream().map(Curves::average).toList();
        for (int i = 0; i < means.size(); i++) {
            List<Double> others = new ArrayList<>(means);
            others.remove(i);
            double away = Math.abs(means.get(i) - Curves.median(others));
            // Of two, each is as far from the other: one finding serves.
            boolean apart = means.size() == 2 ? i == 0 : isApart(away, means.get(i), means, others);
            double threshold = apart && away > 0
                    ? thresholdDb(
                            material.session(), means.size(), curves.get(i).bands())
                    : Double.POSITIVE_INFINITY;
            if (away > threshold) {
                add(tally, group.get(i), away, threshold);
            }
        }
    }

    /** Whether it lies further off than the others do among themselves. */
    private static boolean isApart(double away, double one, List<Double> all, List<Double> others) {
        if (away <= Collections.max(others) - Collections.min(others)) {
            return false;
        }
        double median = Curves.median(all);
        double spread =
                Curves.median(all.stream().map(m -> Math.abs(m - median)).toList());
        return all.size() < ENOUGH_FOR_MAD || TO_DEVIATION * Math.abs(one - median) > SPREAD * spread;
    }

    private static double thresholdDb(Session session, int insertions, List<Band> bands) {
        double declared = Sheets.meanInsertionDb(session, bands);
        if (declared == 0) {
            return LIMIT * INSERTION_DB;
        }
        double one = Math.hypot(declared, Sheets.meanReadingDb(session, bands));
        return one * (insertions == 2 ? OF_TWO : ofMore(insertions));
    }

    /** In standard deviations of one insertion, for the farther of either side of all of them. */
    private static double ofMore(int insertions) {
        // A median of m normal numbers scatters by no more than sqrt(pi / 2m); that of two is their mean.
        int others = insertions - 1;
        double ofMedian = others == 2 ? 0.5 : Math.PI / (2 * others);
        return Math.sqrt(1 + ofMedian) * NormalErrors.z(1 - BY_CHANCE / (2 * insertions));
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
