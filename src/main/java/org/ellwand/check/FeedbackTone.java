package org.ellwand.check;

import java.util.NavigableMap;
import java.util.Optional;
import org.ellwand.acoustics.Band;
import org.ellwand.check.Finding.Consequence;
import org.ellwand.check.Finding.Errs;
import org.ellwand.check.Finding.Measure;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Session;

/**
 * A product that howls: with no sound outside, one band in the ear stands far above both neighbours. It adds level where it
 * stands, so it hides attenuation and raises noise. It is noted only: a howl is what the product does, and may be what a
 * claim is about. (15 dB: common practice, no source.) Accuses fewer than 1 in 1000 sound sessions.
 */
final class FeedbackTone implements DataCheck {
    /** So far above both neighbouring bands, dB. */
    private static final double ABOVE_DB = 15;

    @Override
    public String name() {
        return "feedback tone";
    }

    @Override
    public String needs() {
        return "the product in place in quiet";
    }

    @Override
    public Checked check(Material material) {
        Session session = material.asRead();
        Tally tally = new Tally(this, session);
        for (CurveReading reading : Sheets.levels(session, r -> r.isInPlace() && Sheets.isQuiet(session, r))) {
            tally.looked();
            NavigableMap<Band, Double> curve = Sheets.curve(reading);
            curve.keySet()
                    .forEach(band -> aboveNeighboursDb(curve, band)
                            .filter(above -> above > ABOVE_DB)
                            .ifPresent(above -> add(tally, reading, band, above)));
        }
        return tally.done();
    }

    private static Optional<Double> aboveNeighboursDb(NavigableMap<Band, Double> curve, Band band) {
        Double level = curve.get(band);
        Double below = curve.get(new Band(band.resolution(), band.index() - 1));
        Double above = curve.get(new Band(band.resolution(), band.index() + 1));
        return level == null || below == null || above == null
                ? Optional.empty()
                : Optional.of(level - Math.max(below, above));
    }

    private static void add(Tally tally, CurveReading reading, Band band, double figure) {
        tally.add(
                reading.conditions(),
                java.util.List.of(band),
                Errs.HIDES_ATTENUATION,
                Consequence.NOTED,
                new Measure(figure, ABOVE_DB, "dB"),
                Told.of("howl-in-quiet").with("above", figure).with("threshold", ABOVE_DB));
    }
}
