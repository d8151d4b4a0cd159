package org.ellwand.check;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Resolution;
import org.ellwand.check.Finding.About;
import org.ellwand.check.Finding.Consequence;
import org.ellwand.check.Finding.Errs;
import org.ellwand.check.Finding.Measure;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.Session;
import org.ellwand.words.Remark;

/**
 * A tube's tip too far from the eardrum. The wave that the eardrum sends back leaves a notch at the tip, f = c / (4 d), with an
 * error of 20 lg |cos(2πfd/c)| before it: 2 dB at 6 kHz for 6 mm, which agrees with published guidance for placing tubes
 * (within 6 mm: read in a journal for audiologists). Looked for in the gain of the open ear over the field: a band of 4 to 8
 * kHz that lies below the mean of its neighbours, and what is left of the ear's gain at 5 and 6.3 kHz. (4 and 8 dB, -5 and -10 dB:
 * common practice, no source.) Differences from the same ear keep their value elsewhere, if the notch stays where it is; levels do not,
 * from half the frequency of the notch on. Accuses fewer than 1 in 1000 sound sessions.
 */
final class StandingWave implements DataCheck {
    /** Depth below the mean of the neighbouring bands, dB. */
    private static final Grade DEPTH_DB = new Grade(4, 8);

    /** Gain of the ear at 6.3 kHz below which it is noted (common practice, no source), dB. */
    private static final double LITTLE_GAIN_DB = -5;

    /** Gain of the ear at 5 or 6.3 kHz below which nothing is to be made of those bands (common practice, no source), dB. */
    private static final double NO_GAIN_DB = -10;

    private static final double HIGHEST_HZ = 8000;

    /** Standard deviations of a reading that the depth, of four readings or more, may make. */
    private static final double SCATTER = 4.5 * Math.sqrt(3);

    @Override
    public String name() {
        return "tube tip too far out";
    }

    @Override
    public String needs() {
        return "third octaves of the open ear under pink noise, or of open ear and field microphone, 4 to 8 kHz";
    }

    @Override
    public Checked check(Material material) {
        Session session = material.session();
        Tally tally = new Tally(this, session);
        Map<Conditions, LevelCurve> gains = Sheets.openEarGains(session);
        Map<Conditions, Notch> far = new LinkedHashMap<>();
        gains.forEach((conditions, gain) -> {
            if (!notch(tally, session, conditions, gain, far)) {
                drop(tally, conditions, gain);
            }
        });
        // Without a field microphone, pink noise is known to be as loud in every band.
        Sheets.grouped(Sheets.openEars(session), Sheets.REPEATS).forEach((conditions, takes) -> {
            if (!gains.containsKey(conditions) && Sheets.isPink(session, takes.get(0))) {
                notch(tally, session, conditions, Sheets.meanOf(takes), far);
            }
        });
        tally.about(About.ABSOLUTE_LEVELS);
        far.forEach((ear, notch) -> absolute(tally, session, ear, notch));
        return tally.done();
    }

    /** Looks at the deepest notch of a curve; whether it makes levels unusable. */
    private static boolean notch(
            Tally tally, Session session, Conditions of, LevelCurve gain, Map<Conditions, Notch> far) {
        Optional<Notch> unusable = Notch.deepest(gain).filter(notch -> judge(tally, session, of, notch));
        unusable.ifPresent(notch -> far.merge(of.without(Set.of("device", "stimulus")), notch, Notch::lower));
        return unusable.isPresent();
    }

    /** What is left of the ear's gain at 5 and 6.3 kHz. */
    private static void drop(Tally tally, Conditions of, LevelCurve gain) {
        if (!Curves.isAsFineAs(Resolution.THIRD_OCTAVE, gain)
                || Curves.at(gain, 6300).isEmpty()) {
            return;
        }
        tally.looked();
        double at6300 = Curves.at(gain, 6300).orElse(0.0);
        double least = Math.min(at6300, Curves.at(gain, 5000).orElse(at6300));
        boolean unusable = least < NO_GAIN_DB;
        if (unusable || at6300 < LITTLE_GAIN_DB) {
            double threshold = unusable ? NO_GAIN_DB : LITTLE_GAIN_DB;
            tally.add(
                    of,
                    Curves.between(gain, 5000, HIGHEST_HZ).bands(),
                    Errs.EITHER,
                    unusable ? Consequence.UNUSABLE : Consequence.NOTED,
                    new Measure(least, threshold, "dB"),
                    Remark.of("ear-drops").with("gain", least).with("threshold", threshold));
        }
    }

    private static boolean judge(Tally tally, Session session, Conditions open, Notch notch) {
        tally.looked();
        Grade grade = DEPTH_DB.orAtLeast(SCATTER * Sheets.readingDb(session, notch.band()));
        Optional<Consequence> follows = grade.of(notch.depthDb());
        follows.ifPresent(consequence -> tally.add(
                open,
                around(notch.band()),
                Errs.EITHER,
                consequence,
                new Measure(notch.depthDb(), grade.passed(consequence), "dB"),
                Remark.of("standing-wave")
                        .with("depth", notch.depthDb())
                        .with("threshold", grade.passed(consequence))
                        .with("away", notch.awayMm())));
        return follows.filter(c -> c == Consequence.UNUSABLE).isPresent();
    }

    /** What stands at a tip so far out is no level at the eardrum, from half the frequency of the notch on: said once of an ear. */
    private static void absolute(Tally tally, Session session, Conditions ear, Notch notch) {
        double threshold = DEPTH_DB.orAtLeast(SCATTER * Sheets.readingDb(session, notch.band()))
                .unusable();
        tally.add(
                ear,
                above(notch.band()),
                Errs.EITHER,
                Consequence.UNUSABLE,
                new Measure(notch.depthDb(), threshold, "dB"),
                Remark.of("no-eardrum-level")
                        .with("from", notch.band().nominalHz() / 2)
                        .with("away", notch.awayMm()));
    }

    private static List<Band> above(Band notch) {
        int half = notch.index() - notch.resolution().bandsPerOctave();
        return IntStream.rangeClosed(
                        half, Band.nearest(notch.resolution(), 20_000).index())
                .mapToObj(i -> new Band(notch.resolution(), i))
                .toList();
    }

    private static List<Band> around(Band band) {
        int third = band.resolution().bandsPerOctave() / 3;
        return IntStream.rangeClosed(band.index() - third, band.index() + third)
                .mapToObj(i -> new Band(band.resolution(), i))
                .toList();
    }
}
