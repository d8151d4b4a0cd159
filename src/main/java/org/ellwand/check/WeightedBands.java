package org.ellwand.check;

import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Weighting;
import org.ellwand.check.Finding.Consequence;
import org.ellwand.check.Finding.Errs;
import org.ellwand.check.Finding.Measure;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.Session;

/**
 * Bands that carry the weighting A under the name of levels in dB SPL. Under pink noise the field and the open ear, which
 * does little below 1 kHz, are as loud at 125 Hz as at 1 kHz; weighted they fall by 16.1, 8.6 and 3.2 dB at 125, 250 and 500 Hz
 * (IEC 61672-1). Accused is a curve that lies nearer to the weighting than to a level line, by root mean square over the bands from
 * 125 to 800 Hz, and within {@value #NEAR_DB} dB of it. Sums of such bands weighted again come out low, and a difference of a weighted
 * and an unweighted curve is off by the weighting. (The margin: common practice, no source.) Accuses fewer than 1 in 1000 sound
 * sessions.
 */
final class WeightedBands implements DataCheck {
    private static final double NEAR_DB = 3;
    private static final double LOWEST_HZ = 125;
    private static final double HIGHEST_HZ = 800;

    /** A weighting of less than this spoils nothing, dB. */
    private static final double SPOILS_DB = 0.5;

    @Override
    public String name() {
        return "A-weighted bands";
    }

    @Override
    public String needs() {
        return "the field microphone or the open ear under pink noise, 125 Hz to 1 kHz";
    }

    @Override
    public Checked check(Material material) {
        Session session = material.session();
        Tally tally = new Tally(this, session);
        Sheets.grouped(Sheets.sounding(session, r -> !r.isInPlace() && Sheets.isPink(session, r)), Sheets.REPEATS)
                .forEach((of, readings) -> judge(tally, of, Sheets.meanOf(readings)));
        return tally.done();
    }

    private static void judge(Tally tally, Conditions of, NavigableMap<Band, Double> curve) {
        if (Sheets.at(curve, LOWEST_HZ).isEmpty()
                || Sheets.at(curve, 500).isEmpty()
                || Sheets.at(curve, 1000).isEmpty()) {
            return;
        }
        tally.looked();
        double at1kHz = Sheets.at(curve, 1000).orElse(0.0);
        NavigableMap<Band, Double> low = Sheets.between(curve, LOWEST_HZ, HIGHEST_HZ);
        low.replaceAll((band, db) -> db - at1kHz);
        NavigableMap<Band, Double> offWeighting = new TreeMap<>(low);
        offWeighting.replaceAll((band, db) -> db - Weighting.A.atDb(band.exactHz()));
        double offLevel = Sheets.rootMeanSquare(low);
        double off = Sheets.rootMeanSquare(offWeighting);
        if (off < NEAR_DB && off < offLevel / 2) {
            List<Band> spoilt = curve.keySet().stream()
                    .filter(b -> Math.abs(Weighting.A.atDb(b.exactHz())) > SPOILS_DB)
                    .toList();
            double fall = -Sheets.at(low, LOWEST_HZ).orElse(0.0);
            tally.add(
                    of,
                    spoilt,
                    Errs.EITHER,
                    Consequence.UNUSABLE,
                    new Measure(off, NEAR_DB, "dB"),
                    Told.of("weighted-bands").with("fall", fall).with("off", off));
        }
    }
}
