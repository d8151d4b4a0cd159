package org.ellwand.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.ellwand.acoustics.Band;
import org.ellwand.amount.Unit;
import org.ellwand.check.Finding.Consequence;
import org.ellwand.check.Finding.Errs;
import org.ellwand.check.Finding.Measure;
import org.ellwand.measurement.Cause;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.SharedBy;
import org.ellwand.measurement.Uncertainty;
import org.ellwand.words.Remark;

/**
 * Noise averaged too briefly. The level of a band of noise of width B over a time T scatters by 4.34 / √(B T) dB (standard
 * deviation): 0.8 dB at 125 Hz for 1 s in third octaves, 0.26 dB for 10 s (worked out from that formula). Said where that is
 * more than the session declares of a reading, and more than {@link #MOST_DB}. What the declared errors lack of it is added to them, so that
 * it widens what is computed from those bands. Reckoned from what was declared, and so never wrong about sound sessions.
 */
final class ShortAverage implements DataCheck {
    /** Scatter that is worth a word, dB (common practice, no source). */
    private static final double MOST_DB = 0.4;

    private static final String CAUSE = "averaging too short";

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
                    isWidened(session) ? Consequence.WIDENED : Consequence.NOTED,
                    new Measure(worst, MOST_DB, "dB"),
                    Remark.of("short-average")
                            .with("seconds", seconds)
                            .with("scatter", worst)
                            .with("threshold", MOST_DB));
        }
    }

    private static double scatterDb(Band band, double seconds) {
        return DB_PER_SHARE / Math.sqrt((band.upperEdgeHz() - band.lowerEdgeHz()) * seconds);
    }

    /** Where errors of readings are declared, what they lack can be added; else repeats show it already. */
    private static boolean isWidened(Session session) {
        return session.uncertainty() instanceof Uncertainty.Declared declared
                && declared.causes().stream().anyMatch(c -> c.sharedBy() == SharedBy.READING && c.unit() == Unit.DB);
    }

    /** A session with what brief averaging adds to the errors of its readings, as a cause of its own. */
    static Session widened(Session session) {
        Optional<Double> seconds = session.chain().averaging().map(time -> time.in(Unit.SECOND));
        if (seconds.isEmpty()
                || !(session.uncertainty() instanceof Uncertainty.Declared declared)
                || !isWidened(session)) {
            return session;
        }
        SortedSet<Band> bands = new TreeSet<>();
        noises(session).forEach(r -> bands.addAll(r.spectrum().bandList()));
        List<Cause.Size> sizes = new ArrayList<>();
        double from = 0;
        for (Band band : bands) {
            double declaredDb = Sheets.readingDb(session, band);
            double scatter = scatterDb(band, seconds.get());
            double lacking = scatter > Math.max(MOST_DB, declaredDb)
                    ? Math.sqrt(scatter * scatter - declaredDb * declaredDb)
                    : 0;
            sizes.add(new Cause.Size(from, band.upperEdgeHz(), lacking));
            from = band.upperEdgeHz();
        }
        if (sizes.stream().allMatch(size -> size.size() == 0)) {
            return session;
        }
        sizes.add(new Cause.Size(from, Double.POSITIVE_INFINITY, 0));
        List<Cause> causes = new ArrayList<>(declared.causes());
        causes.add(new Cause(CAUSE, SharedBy.READING, true, Unit.DB, sizes));
        return session.withUncertainty(new Uncertainty.Declared(causes, declared.typicalProbeTube()));
    }
}
