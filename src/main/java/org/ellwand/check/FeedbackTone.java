package org.ellwand.check;

import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
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
        Session sounding = material.session();
        Attenuations ears = Attenuations.in(sounding);
        for (CurveReading reading : Sheets.inPlace(sounding)) {
            ears.of(reading)
                    .filter(curve -> Curves.isAsFineAs(Resolution.THIRD_OCTAVE, curve))
                    .ifPresent(curve -> gain(tally, reading, curve));
        }
        return tally.done();
    }

    private static void quiet(Tally tally, CurveReading reading, List<CurveReading> group) {
        tally.looked();
        NavigableMap<Band, Double> curve = Sheets.curve(reading);
        for (Band band : curve.keySet()) {
            double above = aboveNeighboursDb(curve, band).orElse(0.0);
            if (above > ABOVE_DB) {
                long howling = group.stream()
                        .filter(r -> aboveNeighboursDb(Sheets.curve(r), band).orElse(0.0) > ABOVE_DB)
                        .count();
                add(tally, reading, band, above, howling > 1 && howling == group.size());
            }
        }
    }

    /** A band that gains more than both its neighbours, and stands out of the level too, so that no notch of the open ear made it. */
    private static void gain(Tally tally, CurveReading reading, NavigableMap<Band, Double> attenuation) {
        tally.looked();
        NavigableMap<Band, Double> gain = new TreeMap<>(attenuation);
        gain.replaceAll((band, db) -> -db);
        NavigableMap<Band, Double> level = Sheets.curve(reading);
        for (Band band : gain.keySet()) {
            double above = aboveNeighboursDb(gain, band).orElse(0.0);
            if (above > GAIN_ABOVE_DB && aboveNeighboursDb(level, band).orElse(0.0) > GAIN_ABOVE_DB / 2) {
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

    private static Optional<Double> aboveNeighboursDb(NavigableMap<Band, Double> curve, Band band) {
        Double level = curve.get(band);
        Double below = curve.get(new Band(band.resolution(), band.index() - 1));
        Double above = curve.get(new Band(band.resolution(), band.index() + 1));
        return level == null || below == null || above == null
                ? Optional.empty()
                : Optional.of(level - Math.max(below, above));
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
