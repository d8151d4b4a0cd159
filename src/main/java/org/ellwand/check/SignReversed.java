package org.ellwand.check;

import java.util.NavigableMap;
import org.ellwand.acoustics.Band;
import org.ellwand.check.Finding.Consequence;
import org.ellwand.check.Finding.Errs;
import org.ellwand.check.Finding.Measure;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Reading;
import org.ellwand.measurement.Session;

/**
 * A difference the wrong way round: a sheet of attenuation whose numbers are negative throughout holds gains. A product may
 * amplify in some bands, and a subject's threshold scatter, so that the mean of all bands counts. (3 dB: common practice, no
 * source.) Accuses fewer than 1 in 1000 sound sessions, but for sheets of products that amplify everything.
 */
final class SignReversed implements DataCheck {
    /** Mean attenuation below which the sign is in doubt, dB. */
    private static final double LEAST_DB = -3;

    @Override
    public String name() {
        return "sign reversed";
    }

    @Override
    public String needs() {
        return "a sheet of attenuation";
    }

    @Override
    public Checked check(Material material) {
        Session session = material.asRead();
        Tally tally = new Tally(this, session);
        session.readings().stream().filter(SignReversed::isAttenuation).forEach(r -> judge(tally, r));
        return tally.done();
    }

    private static boolean isAttenuation(CurveReading reading) {
        return reading.values() == Reading.Values.ATTENUATION || reading.values() == Reading.Values.SUBJECT_ATTENUATION;
    }

    private static void judge(Tally tally, CurveReading reading) {
        tally.looked();
        NavigableMap<Band, Double> curve = Sheets.curve(reading);
        double mean = Sheets.average(curve);
        if (mean < LEAST_DB) {
            tally.add(
                    reading.conditions(),
                    curve.keySet(),
                    Errs.EITHER,
                    Consequence.UNUSABLE,
                    new Measure(mean, LEAST_DB, "dB"),
                    Told.of("negative-attenuation").with("mean", mean).with("threshold", LEAST_DB));
        }
    }
}
