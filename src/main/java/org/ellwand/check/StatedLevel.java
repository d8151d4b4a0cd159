package org.ellwand.check;

import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Weighting;
import org.ellwand.check.Finding.Consequence;
import org.ellwand.check.Finding.Errs;
import org.ellwand.check.Finding.Measure;
import org.ellwand.measurement.Session;

/**
 * A level stated in dB SPL that is one in dB(A): the bands of the field microphone, summed with the weighting A, come to it,
 * and without a weighting they do not. Claims name levels, and readings under a misnamed level answer another question. (0.5
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
        return "the field microphone under a sound of a level in dB SPL, 125 Hz to 8 kHz";
    }

    @Override
    public Checked check(Material material) {
        Session session = material.session();
        Tally tally = new Tally(this, session);
        Sheets.fields(session).forEach(reading -> {
            NavigableMap<Band, Double> curve = Sheets.curve(reading);
            Optional<Double> stated = Sheets.levelDb(session, reading);
            if (stated.isPresent()
                    && Sheets.at(curve, 125).isPresent()
                    && Sheets.at(curve, 8000).isPresent()) {
                tally.looked();
                judge(tally, session, reading.conditions().get("stimulus").orElse(""), curve, stated.get());
            }
        });
        return tally.done();
    }

    private void judge(Tally tally, Session session, String sound, NavigableMap<Band, Double> curve, double stated) {
        double plain = Sheets.overallDb(curve, Weighting.Z);
        double weighted = Sheets.overallDb(curve, Weighting.A);
        double reading = curve.keySet().stream()
                .mapToDouble(b -> Sheets.readingDb(session, b))
                .max()
                .orElse(0);
        if (Math.abs(stated - weighted) < NEAR_DB && Math.abs(stated - plain) > Math.max(FAR_DB, SCATTER * reading)) {
            tally.add(
                    org.ellwand.measurement.Conditions.of(java.util.Map.of("stimulus", sound)),
                    List.of(),
                    Errs.EITHER,
                    Consequence.NOTED,
                    new Measure(Math.abs(stated - plain), FAR_DB, "dB"),
                    Told.of("stated-unweighted")
                            .with("stated", stated)
                            .with("plain", plain)
                            .with("weighted", weighted));
        }
    }
}
