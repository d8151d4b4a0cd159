package org.ellwand.check;

import java.util.List;
import org.ellwand.acoustics.Band;
import org.ellwand.check.Finding.Consequence;
import org.ellwand.check.Finding.Errs;
import org.ellwand.check.Finding.Measure;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Session;
import org.ellwand.words.Remark;

/**
 * A blocked probe tube hears nothing: with the sound on it reads what it reads in quiet. So does a good tube behind a plug that
 * takes more off than the sound stands above the background. The two are told apart by the other insertions, which a blocked
 * tube alone lies far below, and by bone, which passes sound round every plug: no plug takes more than some 40 to 60 dB off
 * (bone-conduction limits by frequency after Berger 1983, from memory). A level at the background of a blocked tube bounds
 * nothing. (3 dB over five third octaves: common practice, no source.) Accuses fewer than 1 in 1000 sound sessions.
 */
final class TubeAtBackground implements DataCheck {
    /** A level so little above the one in quiet is the background, dB: half of its energy at least. */
    private static final double AT_BACKGROUND_DB = 3;

    /** The other insertions lie so much further above theirs, dB. */
    private static final double CLEARER_DB = 6;

    /** More than bone lets through, dB. */
    private static final double BEYOND_BONE_DB = 60;

    /** Standard deviations of an insertion that two may differ by. */
    private static final double SCATTER = 4 * Math.sqrt(2);

    @Override
    public String name() {
        return "tube at its background";
    }

    @Override
    public String needs() {
        return "the product in place under a sound and in quiet";
    }

    /** A reading, and how far it lies above its background. */
    private record Above(CurveReading reading, LevelCurve aboveDb) {}

    @Override
    public Checked check(Material material) {
        Session session = material.asRead();
        Tally tally = new Tally(this, session);
        List<CurveReading> quiet = BackgroundFloor.quiet(session);
        List<CurveReading> sounding = quiet.isEmpty() ? List.of() : Sheets.inPlace(session);
        Sheets.grouped(sounding, Sheets.REPEATS).values().forEach(group -> {
            List<Above> all = group.stream()
                    .map(r -> new Above(
                            r, Curves.less(Sheets.curve(r), Sheets.meanOf(BackgroundFloor.quiet(session, quiet, r)))))
                    .filter(above -> !above.aboveDb().isEmpty())
                    .toList();
            all.forEach(one -> judge(tally, material, one, all));
        });
        return tally.done();
    }

    private static void judge(Tally tally, Material material, Above one, List<Above> all) {
        tally.looked();
        List<Band> run = Curves.wideRun(one.aboveDb(), (band, db) -> db < AT_BACKGROUND_DB);
        if (run.isEmpty()) {
            return;
        }
        List<LevelCurve> others =
                all.stream().filter(o -> !o.equals(one)).map(Above::aboveDb).toList();
        double clearer =
                others.isEmpty() ? 0 : Curves.average(Curves.less(Curves.lowerMedianOf(others), one.aboveDb()), run);
        double threshold = Math.max(CLEARER_DB, SCATTER * Sheets.meanInsertionDb(material.asRead(), run));
        if (clearer > threshold) {
            Remark remark =
                    Remark.of("tube-at-background").with("bands", run.size()).with("clearer", clearer);
            add(tally, one, run, new Measure(clearer, threshold, "dB"), remark);
        } else {
            double least = leastAttenuation(material.attenuationsAsRead(), one.reading(), run);
            if (least > BEYOND_BONE_DB) {
                Remark remark = Remark.of("beyond-bone")
                        .with("bands", run.size())
                        .with("least", least)
                        .with("threshold", BEYOND_BONE_DB);
                add(tally, one, run, new Measure(least, BEYOND_BONE_DB, "dB"), remark);
            }
        }
    }

    private static double leastAttenuation(Attenuations ears, CurveReading reading, List<Band> run) {
        LevelCurve attenuation = ears.of(reading).orElse(LevelCurve.EMPTY);
        return run.stream().mapToDouble(b -> attenuation.levelOr(b, 0.0)).min().orElse(0);
    }

    /** What a tube lacks it lacks most at high frequencies. */
    private static void add(Tally tally, Above one, List<Band> run, Measure measure, Remark remark) {
        Conditions of = one.reading().conditions();
        tally.add(
                of,
                one.aboveDb().bandsFrom(run.get(0)),
                Errs.INVENTS_ATTENUATION,
                Consequence.UNUSABLE,
                measure,
                remark);
    }
}
