package org.ellwand.check;

import java.util.Arrays;
import java.util.List;
import org.ellwand.acoustics.Band;
import org.ellwand.check.Finding.Consequence;
import org.ellwand.check.Finding.Errs;
import org.ellwand.check.Finding.Measure;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Session;
import org.ellwand.words.Remark;

/**
 * Too few insertions to know the fit by, or a fit that is not under control. One insertion says nothing of the next. Three is
 * what an older U.S. rating method asks (from memory), five what a manikin standard and a study of impulses used (abstracts
 * read). What scatters more than declared is
 * judged by its own scatter; beyond {@link #CONTROLLED_DB} it was no longer one way of wearing that was measured, and no verdict
 * about it is firm. Counts, and so is never wrong; a scatter is held against what was declared too, and passes three times that in fewer than 1
 * in 1000 sound sessions.
 */
final class FewInsertions implements DataCheck {
    private static final int ENOUGH = 3;

    /** Standard deviation over insertions of the mean from 250 Hz to 4 kHz, dB (common practice, no source). */
    private static final double CONTROLLED_DB = 5;

    /** So many declared standard deviations the scatter of three comes to by chance in 1 of 8000 cases: exp(-9). */
    private static final double SCATTER = 3;

    @Override
    public String name() {
        return "insertions";
    }

    @Override
    public String needs() {
        return "a product in place";
    }

    @Override
    public Checked check(Material material) {
        Session session = material.session();
        Tally tally = new Tally(this, session);
        material.repeats().values().forEach(group -> judge(tally, material, group));
        return tally.done();
    }

    private static void judge(Tally tally, Material material, List<CurveReading> group) {
        tally.looked();
        long insertions = group.stream()
                .map(r -> r.get("insertion").orElse(r.place().toString()))
                .distinct()
                .count();
        if (insertions < ENOUGH) {
            String many = insertions == 1 ? "insertion" : "insertions";
            Remark remark = Remark.of("few-insertions")
                    .with("insertions", insertions)
                    .with("noun", many)
                    .with("threshold", ENOUGH);
            add(tally, group, Consequence.NOTED, new Measure(insertions, ENOUGH, "insertions"), remark);
        } else {
            double scatter = scatterDb(material, Sheets.comparable(group));
            double threshold = scatter > CONTROLLED_DB
                    ? Math.max(CONTROLLED_DB, SCATTER * declaredDb(material.session(), group))
                    : CONTROLLED_DB;
            if (scatter > threshold) {
                Remark remark =
                        Remark.of("fit-scatters").with("scatter", scatter).with("threshold", threshold);
                add(tally, group, Consequence.UNUSABLE, new Measure(scatter, threshold, "dB"), remark);
            }
        }
    }

    private static void add(
            Tally tally, List<CurveReading> group, Consequence consequence, Measure measure, Remark remark) {
        tally.add(
                group.get(0).conditions().without(Sheets.REPEATS),
                List.of(),
                Errs.EITHER,
                consequence,
                measure,
                remark);
    }

    private static double declaredDb(Session session, List<CurveReading> group) {
        List<Band> bands = Curves.between(Sheets.meanOf(group), 250, 4000).bands();
        return Math.hypot(Sheets.meanInsertionDb(session, bands), Sheets.meanReadingDb(session, bands));
    }

    private static double scatterDb(Material material, List<CurveReading> group) {
        List<LevelCurve> curves =
                Curves.between(group.stream().map(material::curve).toList(), 250, 4000);
        if (curves.size() < 2 || curves.get(0).isEmpty()) {
            return 0;
        }
        double[] means = curves.stream().mapToDouble(Curves::average).toArray();
        double mean = Arrays.stream(means).average().orElse(0);
        double squares = Arrays.stream(means).map(m -> (m - mean) * (m - mean)).sum();
        return Math.sqrt(squares / (means.length - 1));
    }
}
