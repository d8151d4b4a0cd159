package org.ellwand.check;

import java.util.List;
import java.util.Map;
import org.ellwand.acoustics.Weighting;
import org.ellwand.amount.Unit;
import org.ellwand.check.Finding.Consequence;
import org.ellwand.check.Finding.Errs;
import org.ellwand.check.Finding.Measure;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Session;
import org.ellwand.words.Remark;

/**
 * A level stated in dB SPL that is one in dB(A), or the other way round: the bands of the field microphone, summed with the other
 * weighting, come to it, and summed with its own they do not. Claims name levels, and readings under a misnamed level answer another question. (0.5
 * and 1 dB: common practice, no source; for pink noise the two sums differ by 1.2 dB only.) Accuses fewer than 1 in 1000
 * sound sessions.
 */
final class StatedLevel implements DataCheck {
    private static final double NEAR_DB = 0.5;
    private static final double FAR_DB = 1;

    /** Standard deviations of a reading that a sum may be off by, where one band makes most of it. */
    private static final double SCATTER = 4;

    @Override
    public String name() {
        return "dB or dB(A)";
    }

    @Override
    public String needs() {
        return "the field microphone under a sound of a level in dB SPL or dB(A), 125 Hz to 8 kHz";
    }

    @Override
    public Checked check(Material material) {
        Session session = material.session();
        Tally tally = new Tally(this, session);
        for (CurveReading reading : Sheets.wholeFields(session)) {
            LevelCurve curve = Sheets.curve(reading);
            Sheets.levelDb(session, reading).ifPresent(db -> {
                tally.looked();
                judge(tally, session, reading, curve, db);
            });
            Sheets.levelIn(session, reading, Unit.DB_A).ifPresent(db -> {
                tally.looked();
                weighted(tally, session, reading, curve, db);
            });
        }
        return tally.done();
    }

    /** The level in dB(A), where it is none in dB SPL; the other way round the same slip. */
    private static void weighted(Tally tally, Session session, CurveReading reading, LevelCurve curve, double stated) {
        double plain = Curves.overallDb(curve, Weighting.Z);
        double weighted = Curves.overallDb(curve, Weighting.A);
        double off = Math.abs(stated - weighted);
        Measure measure = new Measure(off, farDb(session, curve), "dB");
        if (Math.abs(stated - plain) < NEAR_DB && off > measure.threshold()) {
            add(tally, reading, measure, "stated-weighted", stated, plain, weighted);
        }
    }

    private static double farDb(Session session, LevelCurve curve) {
        double reading = curve.bands().stream()
                .mapToDouble(b -> Sheets.readingDb(session, b))
                .max()
                .orElse(0);
        return Math.max(FAR_DB, SCATTER * reading);
    }

    private static void judge(Tally tally, Session session, CurveReading reading, LevelCurve curve, double stated) {
        double plain = Curves.overallDb(curve, Weighting.Z);
        double weighted = Curves.overallDb(curve, Weighting.A);
        double off = Math.abs(stated - plain);
        Measure measure = new Measure(off, farDb(session, curve), "dB");
        if (Math.abs(stated - weighted) < NEAR_DB && off > measure.threshold()) {
            add(tally, reading, measure, "stated-unweighted", stated, plain, weighted);
        }
    }

    private static void add(
            Tally tally,
            CurveReading reading,
            Measure measure,
            String key,
            double stated,
            double plain,
            double weighted) {
        tally.add(
                Conditions.of(Map.of("stimulus", reading.get("stimulus").orElse(""))),
                List.of(),
                Errs.EITHER,
                Consequence.NOTED,
                measure,
                Remark.of(key).with("stated", stated).with("plain", plain).with("weighted", weighted));
    }
}
