package org.ellwand.check;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
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

    private static final double TWO_BANDS_HZ = 6300;

    /** So far an ear's own curve sags between bands four third octaves apart (as a model of it does), dB. */
    private static final double OWN_DB = 2;

    private static final double LOWEST_HZ = 4000;
    private static final double HIGHEST_HZ = 8000;
    private static final double SPEED_OF_SOUND = 350;

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
        Map<Conditions, NavigableMap<Band, Double>> gains = Sheets.openEarGains(session);
        gains.forEach((conditions, gain) -> {
            if (!notch(tally, session, conditions, gain)) {
                drop(tally, conditions, gain);
            }
        });
        // Without a field microphone, pink noise is known to be as loud in every band.
        Sheets.grouped(Sheets.openEars(session), Sheets.REPEATS).forEach((conditions, takes) -> {
            if (!gains.containsKey(conditions) && Sheets.isPink(session, takes.get(0))) {
                notch(tally, session, conditions, Sheets.meanOf(takes));
            }
        });
        return tally.done();
    }

    /** Looks at the deepest notch of a curve; whether it makes levels unusable. */
    private static boolean notch(Tally tally, Session session, Conditions of, NavigableMap<Band, Double> gain) {
        if (!Curves.isAsFineAs(Resolution.THIRD_OCTAVE, gain)) {
            return false;
        }
        Optional<Band> deepest = Curves.between(gain, LOWEST_HZ, HIGHEST_HZ).keySet().stream()
                .filter(band -> depthDb(gain, band).isPresent())
                .max(Comparator.comparingDouble(band -> depthDb(gain, band).orElse(0.0)));
        return deepest.filter(band ->
                        judge(tally, session, of, band, depthDb(gain, band).orElse(0.0)))
                .isPresent();
    }

    /** What is left of the ear's gain at 5 and 6.3 kHz. */
    private static void drop(Tally tally, Conditions of, NavigableMap<Band, Double> gain) {
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
                    Curves.between(gain, 5000, HIGHEST_HZ).keySet(),
                    Errs.EITHER,
                    unusable ? Consequence.UNUSABLE : Consequence.NOTED,
                    new Measure(least, threshold, "dB"),
                    Remark.of("ear-drops").with("gain", least).with("threshold", threshold));
        }
    }

    /** How far the gain lies below the mean of those one, or two, third octaves beside it, whichever is more. */
    private static Optional<Double> depthDb(NavigableMap<Band, Double> gain, Band band) {
        // Two bands hold a notch that lies between them; below, the ear's own curve is as deep.
        return IntStream.rangeClosed(1, band.nominalHz() < TWO_BANDS_HZ ? 1 : 2)
                .boxed()
                .flatMap(thirds -> depthDb(gain, band, thirds).stream())
                .max(Comparator.naturalOrder());
    }

    private static Optional<Double> depthDb(NavigableMap<Band, Double> gain, Band band, int thirds) {
        int step = thirds * band.resolution().bandsPerOctave() / 3;
        Double at = gain.get(band);
        Double below = gain.get(new Band(band.resolution(), band.index() - step));
        Double above = gain.get(new Band(band.resolution(), band.index() + step));
        double own = thirds == 1 ? 0 : OWN_DB;
        return at == null || below == null || above == null
                ? Optional.empty()
                : Optional.of((below + above) / 2 - at - own);
    }

    private static boolean judge(Tally tally, Session session, Conditions open, Band band, double depth) {
        tally.looked();
        Grade grade = DEPTH_DB.orAtLeast(SCATTER * Sheets.readingDb(session, band));
        double awayMm = 1000 * SPEED_OF_SOUND / (4 * band.exactHz());
        Optional<Consequence> follows = grade.of(depth);
        follows.ifPresent(consequence -> tally.add(
                open,
                around(band),
                Errs.EITHER,
                consequence,
                new Measure(depth, grade.passed(consequence), "dB"),
                Remark.of("standing-wave")
                        .with("depth", depth)
                        .with("threshold", grade.passed(consequence))
                        .with("away", awayMm)));
        boolean unusable = follows.filter(c -> c == Consequence.UNUSABLE).isPresent();
        if (unusable) {
            absolute(tally, open, band, awayMm, new Measure(depth, grade.unusable(), "dB"));
        }
        return unusable;
    }

    /** What stands at a tip so far out is no level at the eardrum, from half the frequency of the notch on. */
    private static void absolute(Tally tally, Conditions open, Band notch, double awayMm, Measure measure) {
        tally.about(About.ABSOLUTE_LEVELS)
                .add(
                        open.without(Set.of("device", "stimulus")),
                        above(notch),
                        Errs.EITHER,
                        Consequence.UNUSABLE,
                        measure,
                        Remark.of("no-eardrum-level")
                                .with("from", notch.nominalHz() / 2)
                                .with("away", awayMm));
        tally.about(About.EVERYTHING);
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
