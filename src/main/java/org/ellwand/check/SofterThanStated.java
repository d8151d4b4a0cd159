package org.ellwand.check;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.ellwand.acoustics.Band;
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
 * A sound that was softer than stated: the bands of the field microphone, summed, lie so far below the stated level that what lies outside of them cannot
 * make up for it. Claims name levels; an output or an attenuation at 90 dB is not answered by a sound of 80 dB. Sounds that were louder are noted by
 * {@link OctaveLevels}, as levels of octaves look the same.
 *
 * <p>What the bands outside could hold, from 20 Hz to 20 kHz: of pink noise, whose octaves are all as loud, 10 lg of all octaves by those measured, which for 125 Hz to
 * 8 kHz in third octaves is 2.0 dB; of white noise 10 lg of all hertz by those measured, 3.6 dB. Of other noise, music and speech no law says
 * it: nine tenths of their energy, 10 dB, are allowed to lie outside (common practice, no source). Tones and sweeps are not looked at. Beyond that, 1 dB (common practice, no
 * source) and 4.5 standard deviations of the declared errors of the session and the reading at least; accuses fewer than 1 in 1000 sound sessions.
 */
final class SofterThanStated implements DataCheck {
    private static final double MARGIN_DB = 1;
    private static final double SCATTER = 4.5;
    private static final double LOWEST_HZ = 20;
    private static final double HIGHEST_HZ = 20_000;
    private static final double UNKNOWN_DB = 10;
    private static final List<String> BROAD = List.of("noise", "music", "speech", "programme");

    @Override
    public String name() {
        return "level of a sound";
    }

    @Override
    public String needs() {
        return "the field microphone under noise, music or speech of a level in dB SPL or dB(A), 125 Hz to 8 kHz";
    }

    @Override
    public Checked check(Material material) {
        Session session = material.session();
        Tally tally = new Tally(this, session);
        for (CurveReading reading : Sheets.wholeFields(session)) {
            String kind = Levels.kind(session, reading).toLowerCase(Locale.ROOT);
            if (BROAD.stream().anyMatch(kind::contains)) {
                judge(tally, session, reading, Sheets.curve(reading), kind);
            }
        }
        return tally.done();
    }

    private static void judge(Tally tally, Session session, CurveReading reading, LevelCurve curve, String kind) {
        boolean weighted = Sheets.levelIn(session, reading, Unit.DB_SPL).isEmpty();
        Optional<Double> stated = Sheets.levelIn(session, reading, weighted ? Unit.DB_A : Unit.DB_SPL);
        if (stated.isEmpty()) {
            return;
        }
        tally.looked();
        double sum = Curves.overallDb(curve, weighted ? Weighting.A : Weighting.Z);
        double outside = outsideDb(curve, kind);
        double errors =
                Math.hypot(Sheets.meanSessionDb(session, curve.bands()), Sheets.meanReadingDb(session, curve.bands()));
        double threshold = outside + Math.max(MARGIN_DB, SCATTER * errors);
        double below = stated.get() - sum;
        if (below > threshold) {
            tally.add(
                    Conditions.of(Map.of("stimulus", reading.get("stimulus").orElse(""))),
                    List.of(),
                    Errs.EITHER,
                    Consequence.UNUSABLE,
                    new Measure(below, threshold, "dB"),
                    Remark.of("softer-than-stated")
                            .with("stated", stated.get())
                            .with("unit", (weighted ? Unit.DB_A : Unit.DB_SPL).symbol())
                            .with("sum", sum)
                            .with("outside", outside));
        }
    }

    /** How far a sum may lie below the level of the sound for want of bands alone. */
    private static double outsideDb(LevelCurve curve, String kind) {
        if (kind.contains("pink")) {
            double octaves = (double) curve.size() / curve.lowest().resolution().bandsPerOctave();
            return Math.max(0, 10 * Math.log10(Math.log(HIGHEST_HZ / LOWEST_HZ) / Math.log(2) / octaves));
        }
        if (kind.contains("white")) {
            double measuredHz = 0;
            for (Band band : curve.bands()) {
                measuredHz += band.upperEdgeHz() - band.lowerEdgeHz();
            }
            return Math.max(0, 10 * Math.log10((HIGHEST_HZ - LOWEST_HZ) / measuredHz));
        }
        return UNKNOWN_DB;
    }
}
