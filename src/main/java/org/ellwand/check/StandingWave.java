package org.ellwand.check;

import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Resolution;
import org.ellwand.check.Finding.Errs;
import org.ellwand.check.Finding.Measure;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.Session;

/**
 * A tube's tip too far from the eardrum. The wave that the eardrum sends back leaves a notch at the tip, f = c / (4 d), with an
 * error of 20 lg |cos(2πfd/c)| before it: 2 dB at 6 kHz for 6 mm, which agrees with published guidance for placing tubes
 * (within 6 mm: read in a journal for audiologists). Looked for in the gain of the open ear over the field: a band of 4 to 8
 * kHz that lies below the mean of its neighbours. (4 and 8 dB: common practice, no source.) Differences from the same
 * ear keep their value elsewhere, if the notch stays where it is. Accuses fewer than 1 in 1000 sound sessions.
 */
final class StandingWave implements DataCheck {
    /** Depth below the mean of the neighbouring bands, dB. */
    private static final Grade DEPTH_DB = new Grade(4, 8);

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
        return "third octaves of open ear and field microphone under one sound, up to 10 kHz";
    }

    @Override
    public Checked check(Material material) {
        Session session = material.session();
        Tally tally = new Tally(this, session);
        Sheets.openEarGains(session).forEach((conditions, gain) -> {
            if (!gain.firstKey().resolution().isCoarserThan(Resolution.THIRD_OCTAVE)) {
                Sheets.between(gain, LOWEST_HZ, HIGHEST_HZ)
                        .keySet()
                        .forEach(band ->
                                depthDb(gain, band).ifPresent(depth -> judge(tally, session, conditions, band, depth)));
            }
        });
        return tally.done();
    }

    /** How far the gain lies below the mean of those a third octave beside it. */
    private static Optional<Double> depthDb(NavigableMap<Band, Double> gain, Band band) {
        int third = band.resolution().bandsPerOctave() / 3;
        Double at = gain.get(band);
        Double below = gain.get(new Band(band.resolution(), band.index() - third));
        Double above = gain.get(new Band(band.resolution(), band.index() + third));
        return at == null || below == null || above == null ? Optional.empty() : Optional.of((below + above) / 2 - at);
    }

    private static void judge(Tally tally, Session session, Conditions open, Band band, double depth) {
        tally.looked();
        Grade grade = DEPTH_DB.orAtLeast(SCATTER * Sheets.readingDb(session, band));
        double awayMm = 1000 * SPEED_OF_SOUND / (4 * band.exactHz());
        grade.of(depth)
                .ifPresent(consequence -> tally.add(
                        open,
                        around(band),
                        Errs.EITHER,
                        consequence,
                        new Measure(depth, grade.passed(consequence), "dB"),
                        Told.of("standing-wave")
                                .with("depth", depth)
                                .with("threshold", grade.passed(consequence))
                                .with("away", awayMm)));
    }

    private static List<Band> around(Band band) {
        int third = band.resolution().bandsPerOctave() / 3;
        return java.util.stream.IntStream.rangeClosed(band.index() - third, band.index() + third)
                .mapToObj(i -> new Band(band.resolution(), i))
                .toList();
    }
}
