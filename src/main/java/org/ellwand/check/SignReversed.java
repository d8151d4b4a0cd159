package org.ellwand.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ellwand.amount.Unit;
import org.ellwand.check.Finding.Consequence;
import org.ellwand.check.Finding.Errs;
import org.ellwand.check.Finding.Measure;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Reading;
import org.ellwand.measurement.Session;
import org.ellwand.words.Remark;

/**
 * A difference the wrong way round: a sheet of attenuation whose numbers are negative throughout holds gains, and a product that
 * adds to a sound of 85 dB SPL in its strongest setting was taken for the open ear, or its attenuation for a gain. A product may
 * amplify in some bands, and a subject's threshold scatter, so that the mean of all bands counts. (3 dB: common practice, no
 * source.) Accuses fewer than 1 in 1000 sound sessions, but for sheets of products that amplify everything.
 */
final class SignReversed implements DataCheck {
    /** Of a product that adds to a loud sound. */
    static final String WHEN_LOUD = "gains-when-loud";

    /** Mean attenuation below which the sign is in doubt, dB. */
    private static final double LEAST_DB = -3;

    /** No product to be worn adds to a sound that is this loud, dB SPL (common practice, no source). */
    private static final double LOUD_DB = 85;

    private static final Set<String> STATE = Set.of("setting", "insertion", "take");

    @Override
    public String name() {
        return "sign reversed";
    }

    @Override
    public String needs() {
        return "a sheet of attenuation or insertion gain, or levels with their open ear";
    }

    @Override
    public Checked check(Material material) {
        Session session = material.asRead();
        Tally tally = new Tally(this, session);
        Attenuations ears = material.attenuationsAsRead();
        session.readings().stream().filter(SignReversed::isAttenuation).forEach(r -> judge(tally, r));
        Map<Conditions, List<LevelCurve>> gains = new LinkedHashMap<>();
        for (CurveReading reading : session.readings()) {
            gain(session, ears, reading)
                    .ifPresent(
                            gain -> gains.computeIfAbsent(reading.conditions().without(STATE), k -> new ArrayList<>())
                                    .add(gain));
        }
        gains.forEach((of, curves) -> judge(tally, session, of, curves));
        return tally.done();
    }

    /** The insertion gain of a sheet of gains, or of levels whose open ear was read. */
    private static Optional<LevelCurve> gain(Session session, Attenuations ears, CurveReading reading) {
        if (reading.values() == Reading.Values.INSERTION_GAIN) {
            return Optional.of(Sheets.curve(reading));
        }
        boolean levels =
                reading.values() == Reading.Values.LEVELS && reading.isInPlace() && !Sheets.isQuiet(session, reading);
        return levels ? ears.of(reading).map(LevelCurve::negated) : Optional.empty();
    }

    /** The setting that gains least still gains, where it is loud already. */
    private static void judge(Tally tally, Session session, Conditions of, List<LevelCurve> curves) {
        tally.looked();
        double least = curves.stream().mapToDouble(Curves::average).min().orElse(0);
        Optional<Double> level = session.stimulusOf(of).flatMap(s -> s.levelIn(Unit.DB_SPL));
        if (least > -LEAST_DB && level.isPresent() && level.get() >= LOUD_DB) {
            tally.add(
                    of,
                    List.of(),
                    Errs.EITHER,
                    Consequence.UNUSABLE,
                    new Measure(least, -LEAST_DB, "dB"),
                    Remark.of(WHEN_LOUD)
                            .with("gain", least)
                            .with("level", level.get())
                            .with("threshold", -LEAST_DB));
        }
    }

    private static boolean isAttenuation(CurveReading reading) {
        return reading.values() == Reading.Values.ATTENUATION || reading.values() == Reading.Values.SUBJECT_ATTENUATION;
    }

    private static void judge(Tally tally, CurveReading reading) {
        tally.looked();
        LevelCurve curve = Sheets.curve(reading);
        double mean = Curves.average(curve);
        if (mean < LEAST_DB) {
            tally.add(
                    reading.conditions(),
                    curve.bands(),
                    Errs.EITHER,
                    Consequence.UNUSABLE,
                    new Measure(mean, LEAST_DB, "dB"),
                    Remark.of("negative-attenuation").with("mean", mean).with("threshold", LEAST_DB));
        }
    }
}
