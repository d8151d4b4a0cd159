package org.ellwand.check;

import java.util.List;
import org.ellwand.acoustics.Band;
import org.ellwand.amount.Unit;
import org.ellwand.check.Finding.Consequence;
import org.ellwand.check.Finding.Errs;
import org.ellwand.check.Finding.Measure;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Session;

/**
 * Noise averaged too briefly. The level of a band of noise of width B over a time T scatters by 4.34 / √(B T) dB (standard
 * deviation): 0.8 dB at 125 Hz for 1 s in third octaves, 0.26 dB for 10 s (worked out from that formula). Said where that is
 * more than the session declares of a reading, and more than {@link #MOST_DB}. Reckoned from what was declared, and so
 * never wrong about sound sessions.
 */
final class ShortAverage implements DataCheck {
    /** Scatter that is worth a word, dB (common practice, no source). */
    private static final double MOST_DB = 0.4;

    private static final double DB_PER_SHARE = 10 / Math.log(10);

    @Override
    public String name() {
        return "averaging time";
    }

    @Override
    public String needs() {
        return "'averaging' in the session, and levels under noise";
    }

    @Override
    public Checked check(Material material) {
        Session session = material.asRead();
        Tally tally = new Tally(this, session);
        session.chain()
                .averaging()
                .map(time -> time.in(Unit.SECOND))
                .ifPresent(seconds -> Sheets.grouped(noises(session), Sheets.REPEATS)
                        .forEach((of, readings) -> judge(tally, session, readings.get(0), seconds)));
        return tally.done();
    }

    private static List<CurveReading> noises(Session session) {
        return Sheets.sounding(session, r -> Levels.kind(session, r).contains("noise"));
    }

    private static void judge(Tally tally, Session session, CurveReading reading, double seconds) {
        tally.looked();
        List<Band> bands = reading.spectrum().bandList().stream()
                .filter(b -> scatterDb(b, seconds) > Math.max(MOST_DB, Sheets.readingDb(session, b)))
                .toList();
        if (!bands.isEmpty()) {
            double worst = scatterDb(bands.get(0), seconds);
            tally.add(
                    reading.conditions().without(Sheets.REPEATS),
                    bands,
                    Errs.EITHER,
                    Consequence.NOTED,
                    new Measure(worst, MOST_DB, "dB"),
                    Told.of("short-average")
                            .with("seconds", seconds)
                            .with("scatter", worst)
                            .with("threshold", MOST_DB));
        }
    }

    private static double scatterDb(Band band, double seconds) {
        return DB_PER_SHARE / Math.sqrt((band.upperEdgeHz() - band.lowerEdgeHz()) * seconds);
    }
}
