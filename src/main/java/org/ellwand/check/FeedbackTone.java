package org.ellwand.check;

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
 * A product that howls: with no sound outside, one band in the ear stands far above both neighbours. Under a sound, one band gains
 * more than both. It adds level where it stands, so it hides attenuation and raises noise: what fails by that band may fail by a howl
 * that another fit would not have, and what passes in spite of it passes. One that stands
 * in quiet in every insertion is what the product does, and is noted. (15 dB: common practice, no source.) Accuses fewer than 1 in 1000 sound sessions.
 */
final class FeedbackTone implements DataCheck {
    /** So far above both neighbouring bands, dB. */
    private static final double ABOVE_DB = 15;

    /** So much more gain than both neighbouring bands, dB (common practice, no source). */
    private static final double GAIN_ABOVE_DB = 8;

    @Override
    public String name() {
        return "feedback tone";
    }

    @Override
    public String needs() {
        return "the product in place in quiet, or third octaves of its attenuation";
    }

    @Override
    public Checked check(Material material) {
        Session session = material.asRead();
        Tally tally = new Tally(this, session);
        Sheets.grouped(Sheets.levels(session, r -> r.isInPlace() && Sheets.isQuiet(session, r)), Sheets.REPEATS)
                .values()
                .forEach(group -> group.forEach(reading -> quiet(tally, reading, group)));
        Attenuations ears = material.attenuations();
        for (CurveReading reading : material.inPlace()) {
            ears.of(reading)
                    .filter(curve -> Curves.isAsFineAs(Resolution.THIRD_OCTAVE, curve))
                    .ifPresent(curve -> gain(tally, material, reading, curve));
        }
        return tally.done();
    }

    private static void quiet(Tally tally, CurveReading reading, List<CurveReading> group) {
        tally.looked();
        LevelCurve curve = Sheets.curve(reading);
        for (int b = 0; b < curve.size(); b++) {
            Band band = curve.bands().get(b);
            double above = aboveNeighboursDb(curve, b);
            if (above > ABOVE_DB) {
                long howling = group.stream()
                        .map(r -> Sheets.curve(r))
                        .filter(other -> aboveNeighboursDb(other, other.place(band)) > ABOVE_DB)
                        .count();
                add(tally, reading, band, above, howling > 1 && howling == group.size());
            }
        }
    }

    /** A band that gains more than both its neighbours, and stands out of the level too, so that no notch of the open ear made it. */
    private static void gain(Tally tally, Material material, CurveReading reading, LevelCurve attenuation) {
        tally.looked();
        LevelCurve gain = attenuation.negated();
        LevelCurve level = Sheets.curve(reading);
        for (int b = 0; b < gain.size(); b++) {
            Band band = gain.bands().get(b);
            double above = aboveNeighboursDb(gain, b);
            if (above > GAIN_ABOVE_DB
                    && aboveNeighboursDb(level, level.place(band)) > GAIN_ABOVE_DB / 2
                    && !material.isSlip(reading, band)) {
                tally.add(
                        reading.conditions(),
                        List.of(band),
                        Errs.HIDES_ATTENUATION,
                        Consequence.UNUSABLE,
                        new Measure(above, GAIN_ABOVE_DB, "dB"),
                        Remark.of("howl-in-gain").with("above", above).with("threshold", GAIN_ABOVE_DB));
            }
        }
    }

    /** How far a band stands above both its neighbours; 0 where one of the three is not there. */
    private static double aboveNeighboursDb(LevelCurve curve, int place) {
        int below = place < 0 ? -1 : curve.beside(place, -1);
        int above = place < 0 ? -1 : curve.beside(place, 1);
        double[] levels = curve.numbers();
        return below < 0 || above < 0 ? 0 : levels[place] - Math.max(levels[below], levels[above]);
    }

    /** @param always whether it stands in every insertion: that is what the product does, and no fault of a fit */
    private static void add(Tally tally, CurveReading reading, Band band, double figure, boolean always) {
        tally.add(
                reading.conditions(),
                List.of(band),
                Errs.HIDES_ATTENUATION,
                always ? Consequence.NOTED : Consequence.UNUSABLE,
                new Measure(figure, ABOVE_DB, "dB"),
                Remark.of(always ? "howl-always" : "howl-in-quiet")
                        .with("above", figure)
                        .with("threshold", ABOVE_DB));
    }
}
