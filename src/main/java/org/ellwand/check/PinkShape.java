package org.ellwand.check;

import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Resolution;
import org.ellwand.check.Finding.Consequence;
import org.ellwand.check.Finding.Errs;
import org.ellwand.check.Finding.Measure;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Session;
import org.ellwand.words.Remark;

/**
 * Pink noise that is none. Its third octaves are all as loud: each within 2 dB of their mean, and no slope of 0.5 dB per octave
 * or more, where the loudspeaker was equalised. A product that works by level is asked another question by a sound of another
 * shape, and sums over bands weigh the bands otherwise. Looked at is the field microphone from 125 Hz to 8 kHz. (2 dB and 0.5 dB
 * per octave: common practice, no source.) Accuses fewer than 1 in 1000 sound sessions.
 */
final class PinkShape implements DataCheck {
    private static final double FLAT_DB = 2;
    private static final double LEVEL_DB_PER_OCTAVE = 0.5;

    /** Standard deviations of a reading that a band may lie off the mean of all. */
    private static final double SCATTER = 4.5;

    private static final int FEWEST = 7;

    @Override
    public String name() {
        return "shape of pink noise";
    }

    @Override
    public String needs() {
        return "third octaves of the field microphone under pink noise";
    }

    @Override
    public Checked check(Material material) {
        Session session = material.session();
        Tally tally = new Tally(this, session);
        Sheets.grouped(Sheets.fields(session), Sheets.REPEATS).values().forEach(readings -> {
            LevelCurve curve = Curves.between(Sheets.meanOf(readings), 125, 8000);
            if (Sheets.isPink(session, readings.get(0))
                    && Curves.isAsFineAs(Resolution.THIRD_OCTAVE, curve)
                    && curve.size() >= FEWEST) {
                tally.looked();
                judge(tally, session, readings.get(0), curve);
            }
        });
        return tally.done();
    }

    private static void judge(Tally tally, Session session, CurveReading of, LevelCurve curve) {
        double mean = Curves.average(curve);
        List<Band> off = curve.bands().stream()
                .filter(b -> Math.abs(curve.levelOr(b, mean) - mean) > thresholdDb(session, b))
                .toList();
        double slope = slope(curve);
        double reading = curve.bands().stream()
                .mapToDouble(b -> Sheets.readingDb(session, b))
                .max()
                .orElse(0);
        // The slope of a line through so many bands of this scatter, over their spread in octaves.
        double slopeLimit = Math.max(LEVEL_DB_PER_OCTAVE, SCATTER * reading / Math.sqrt(spread(curve)));
        if (!off.isEmpty()) {
            Band farthest =
                    Collections.max(off, Comparator.comparingDouble(b -> Math.abs(curve.levelOr(b, mean) - mean)));
            double worst = Math.abs(curve.levelOr(farthest, mean) - mean);
            double threshold = thresholdDb(session, farthest);
            Remark remark = Remark.of("pink-not-flat").with("off", worst).with("threshold", threshold);
            add(tally, of, off, new Measure(worst, threshold, "dB"), remark);
        } else if (Math.abs(slope) > slopeLimit) {
            Remark remark = Remark.of("pink-slopes").with("slope", slope).with("threshold", slopeLimit);
            add(tally, of, List.of(), new Measure(slope, slopeLimit, "dB/octave"), remark);
        }
    }

    private static double thresholdDb(Session session, Band band) {
        return Math.max(FLAT_DB, SCATTER * Sheets.readingDb(session, band));
    }

    private static void add(Tally tally, CurveReading of, List<Band> bands, Measure measure, Remark remark) {
        tally.add(of.conditions().without(Sheets.REPEATS), bands, Errs.EITHER, Consequence.NOTED, measure, remark);
    }

    private static double octave(Band band) {
        return Math.log(band.exactHz() / 1000) / Math.log(2);
    }

    private static double centre(LevelCurve curve) {
        return curve.bands().stream().mapToDouble(PinkShape::octave).average().orElse(0);
    }

    /** Sum of the squared distances in octaves from the middle of the bands. */
    private static double spread(LevelCurve curve) {
        double centre = centre(curve);
        return curve.bands().stream()
                .mapToDouble(b -> Math.pow(octave(b) - centre, 2))
                .sum();
    }

    /** Least squares, dB per octave. */
    private static double slope(LevelCurve curve) {
        double centre = centre(curve);
        return Arrays.stream(curve.changed((band, level) -> (octave(band) - centre) * level)
                                .numbers())
                        .sum()
                / spread(curve);
    }
}
