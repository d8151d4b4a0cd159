package org.ellwand.check;

import java.util.List;
import org.ellwand.acoustics.Resolution;
import org.ellwand.check.Finding.Consequence;
import org.ellwand.check.Finding.Errs;
import org.ellwand.check.Finding.Measure;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.Session;
import org.ellwand.words.Remark;

/**
 * An open ear that does not sound like one. An adult ear raises the field by some 17 dB near 2.7 kHz, 10 to 20 dB in most, and by
 * next to nothing below 500 Hz (free field to eardrum, ANSI S3.4-2007 after Shaw 1974: 16.8 dB at 2500 Hz, 0.9 dB at 250 Hz; read
 * in an auditory-model toolbox). Without that peak the tip was not in the canal, or wax lay before it; an offset at low
 * frequencies is a wrong level. Children's and operated ears differ, and have this finding too. Since the open ear is what
 * every attenuation starts from, all of them are in doubt. (Thresholds: common practice, no source.) Accuses fewer than
 * 1 in 1000 sound sessions of adults.
 */
final class OpenEarResonance implements DataCheck {
    private static final double LOW_PEAK_DB = 10;
    private static final double NO_PEAK_DB = 5;
    private static final double HIGH_PEAK_DB = 24;
    private static final double PEAK_FROM_HZ = 2000;
    private static final double PEAK_TO_HZ = 4000;

    /** Size of the mean gain from 250 to 500 Hz, dB. */
    private static final Grade OFFSET_DB = new Grade(3, 5);

    @Override
    public String name() {
        return "open-ear resonance";
    }

    @Override
    public String needs() {
        return "third octaves of open ear and field microphone under one sound, 250 Hz to 6.3 kHz";
    }

    @Override
    public Checked check(Material material) {
        Session session = material.session();
        Tally tally = new Tally(this, session);
        Sheets.openEarGains(session).forEach((conditions, gain) -> {
            boolean fine = !gain.lowest().resolution().isCoarserThan(Resolution.THIRD_OCTAVE);
            if (fine
                    && Curves.at(gain, 250).isPresent()
                    && Curves.at(gain, 6300).isPresent()) {
                tally.looked();
                peak(tally, conditions, gain);
                offset(tally, conditions, gain);
            }
        });
        return tally.done();
    }

    private static void peak(Tally tally, Conditions open, LevelCurve gain) {
        LevelCurve middle = Curves.between(gain, 1000, 8000);
        int peak = middle.highest();
        double hz = middle.bands().get(peak).nominalHz();
        double db = middle.numbers()[peak];
        if (db < LOW_PEAK_DB || db > HIGH_PEAK_DB) {
            Consequence consequence = db < NO_PEAK_DB ? Consequence.UNUSABLE : Consequence.NOTED;
            double threshold = db > HIGH_PEAK_DB ? HIGH_PEAK_DB : db < NO_PEAK_DB ? NO_PEAK_DB : LOW_PEAK_DB;
            Remark remark = Remark.of("ear-peak")
                    .with("peak", db)
                    .with("lowest", LOW_PEAK_DB)
                    .with("highest", HIGH_PEAK_DB);
            tally.add(open, List.of(), Errs.EITHER, consequence, new Measure(db, threshold, "dB"), remark);
        } else if (hz < PEAK_FROM_HZ || hz > PEAK_TO_HZ) {
            double threshold = hz < PEAK_FROM_HZ ? PEAK_FROM_HZ : PEAK_TO_HZ;
            Remark remark = Remark.of("ear-peak-place")
                    .with("hz", hz)
                    .with("lowest", PEAK_FROM_HZ)
                    .with("highest", PEAK_TO_HZ);
            tally.add(open, List.of(), Errs.EITHER, Consequence.NOTED, new Measure(hz, threshold, "Hz"), remark);
        }
    }

    private static void offset(Tally tally, Conditions open, LevelCurve gain) {
        double offset = Curves.average(Curves.between(gain, 250, 500));
        OFFSET_DB
                .of(Math.abs(offset))
                .ifPresent(consequence -> tally.add(
                        open,
                        List.of(),
                        Errs.EITHER,
                        consequence,
                        new Measure(offset, OFFSET_DB.passed(consequence), "dB"),
                        Remark.of("ear-offset")
                                .with("offset", offset)
                                .with("threshold", OFFSET_DB.passed(consequence))));
    }
}
