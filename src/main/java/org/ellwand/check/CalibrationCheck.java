package org.ellwand.check;

import java.time.LocalDate;
import java.time.Period;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import org.ellwand.check.Finding.About;
import org.ellwand.check.Finding.Consequence;
import org.ellwand.check.Finding.Errs;
import org.ellwand.check.Finding.Measure;
import org.ellwand.measurement.Chain.Calibration;
import org.ellwand.measurement.Session;
import org.ellwand.words.Remark;

/**
 * A microphone that reads a calibrator otherwise afterwards than before, or whose certificate is old. A drift within a
 * session lies between open ear and product as it lies between two calibrations. (0.5 and 1.0 dB: common practice, no
 * source; calibration once a year is what clinical guidance asks, read in an abstract.) Compares what was written down, and so
 * is never wrong about sound sessions.
 */
final class CalibrationCheck implements DataCheck {
    /** Difference of the calibrator's level after and before, dB. */
    private static final Grade DRIFT_DB = new Grade(0.5, 1);

    private static final int OLD_MONTHS = 12;

    @Override
    public String name() {
        return "calibration";
    }

    @Override
    public String needs() {
        return "'calibration' in the session, with 'before' and 'after', or 'dated'";
    }

    @Override
    public Checked check(Material material) {
        Session session = material.asRead();
        Tally tally = new Tally(this, session).about(About.LEVELS);
        session.chain().calibration().ifPresent(calibration -> {
            drift(tally, calibration);
            age(tally, session, calibration);
        });
        return tally.done();
    }

    private static void drift(Tally tally, Calibration calibration) {
        if (calibration.before().isEmpty() || calibration.after().isEmpty()) {
            return;
        }
        tally.looked();
        double drift =
                calibration.after().get().value() - calibration.before().get().value();
        // A hair less, so that 94.5 after 94.0 is no more than 0.5 in binary numbers too.
        DRIFT_DB.of(Math.abs(drift) - 1e-9)
                .ifPresent(consequence -> tally.add(
                        Errs.EITHER,
                        consequence,
                        new Measure(drift, DRIFT_DB.passed(consequence), "dB"),
                        Remark.of("calibrator-drift")
                                .with("drift", Math.abs(drift))
                                .with("threshold", DRIFT_DB.passed(consequence))));
    }

    private static void age(Tally tally, Session session, Calibration calibration) {
        Optional<LocalDate> dated = calibration.dated().flatMap(CalibrationCheck::date);
        Optional<LocalDate> measured = session.measured().flatMap(CalibrationCheck::date);
        if (dated.isEmpty() || measured.isEmpty()) {
            return;
        }
        tally.looked();
        long months = Period.between(dated.get(), measured.get()).toTotalMonths();
        if (months > OLD_MONTHS) {
            tally.add(
                    Errs.EITHER,
                    Consequence.NOTED,
                    new Measure(months, OLD_MONTHS, "months"),
                    Remark.of("calibration-old").with("months", months).with("threshold", OLD_MONTHS));
        }
    }

    private static Optional<LocalDate> date(String text) {
        try {
            return Optional.of(LocalDate.parse(text));
        } catch (DateTimeParseException e) {
            return Optional.empty(); // Written in another way: its age cannot be told.
        }
    }
}
