package org.ellwand.check;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.ellwand.check.Finding.Consequence;
import org.ellwand.check.Finding.Errs;
import org.ellwand.check.Finding.Measure;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.Trace;
import org.ellwand.words.Remark;

/**
 * One curve under two names. Two readings do not agree in every band to the last digit: with 0.1 dB of reading error and
 * levels kept to 0.1 dB, ten bands do so once in some hundred thousand times. It is a slip of copying, and nobody can say
 * which of the two was measured. (Ten bands: common practice, no source.) A curve of a few different levels only is a
 * number written down, not a copied curve, and is not accused. Two sessions that hold one curve are accused both, but for the open curve of
 * one ear, which may serve two. Traces that scatter are held against each other in the same way. Accuses fewer than 1 in 1000 sound sessions.
 */
final class Copies implements DataCheck {
    /** So many bands that agree exactly are no chance. */
    private static final int BANDS = 10;

    /** So many levels of a trace (common practice, no source). */
    private static final int SAMPLES = 50;

    /** A trace that turns less often has no scatter: it was reckoned, not measured (common practice, no source). */
    private static final int TURNS = 10;

    private static final Set<String> WHOSE = Set.of("ear", "head", "side");

    @Override
    public String name() {
        return "copied readings";
    }

    @Override
    public String needs() {
        return "two readings of ten bands, or two traces";
    }

    @Override
    public Checked check(Material material) {
        Session session = material.asRead();
        Tally tally = new Tally(this, session);
        Map<SameCurves.Numbers, CurveReading> seen = new HashMap<>();
        List<CurveReading> curves = curves(session);
        for (CurveReading reading : curves) {
            CurveReading before = seen.putIfAbsent(new SameCurves.Numbers(reading), reading);
            if (before != null) {
                add(tally, before, reading);
            }
            material.sameCurves().elsewhere(session, reading).ifPresent(other -> add(tally, other, reading));
        }
        if (curves.size() > 1) {
            tally.looked();
        }
        traces(session, tally);
        return tally.done();
    }

    /** One trace under the names of two readings; of one reading it may show two steps. */
    private static void traces(Session session, Tally tally) {
        Map<List<Double>, Trace> seen = new HashMap<>();
        for (Trace trace : session.traces()) {
            boolean many = trace.levelDb().size() >= SAMPLES
                    && trace.levelDb().stream().distinct().count() >= BANDS
                    && turns(trace.levelDb()) >= TURNS;
            Trace before = many ? seen.putIfAbsent(trace.levelDb(), trace) : null;
            if (before != null && !before.conditions().equals(trace.conditions())) {
                add(tally, before, trace);
            }
        }
    }

    /** How often levels that rose fall, or the other way round. */
    private static int turns(List<Double> levelDb) {
        int turns = 0;
        double last = 0;
        for (int i = 1; i < levelDb.size(); i++) {
            double rise = levelDb.get(i) - levelDb.get(i - 1);
            turns += rise * last < 0 ? 1 : 0;
            last = rise == 0 ? last : rise;
        }
        return turns;
    }

    /** Curves of enough bands, as they were read. */
    static List<CurveReading> curves(Session session) {
        return session.readings().stream().filter(Copies::isCurve).toList();
    }

    /** Whose ear a reading was made in. */
    static Conditions whose(CurveReading reading) {
        return reading.conditions().only(WHOSE);
    }

    private static boolean isCurve(CurveReading reading) {
        return reading.spectrum().bandList().size() >= BANDS
                && isOfMany(Sheets.curve(reading).numbers());
    }

    /** Whether there are enough different numbers among some. */
    private static boolean isOfMany(double[] numbers) {
        double[] different = new double[BANDS / 2];
        int count = 0;
        for (int i = 0; i < numbers.length && count < different.length; i++) {
            boolean known = false;
            for (int k = 0; k < count; k++) {
                known |= different[k] == numbers[i];
            }
            if (!known) {
                different[count++] = numbers[i];
            }
        }
        return count == different.length;
    }

    private static void add(Tally tally, CurveReading before, CurveReading reading) {
        add(tally, reading, Remark.of("copied").with("place", before.place().toString()));
    }

    private static void add(Tally tally, SameCurves.Of other, CurveReading reading) {
        Remark elsewhere = Remark.of("copied-elsewhere")
                .with("place", other.reading().place().toString())
                .with("session", other.session());
        add(tally, reading, elsewhere);
    }

    private static void add(Tally tally, CurveReading reading, Remark remark) {
        int bands = reading.spectrum().bandList().size();
        Remark said = remark.with("bands", bands).with("threshold", BANDS);
        add(tally, reading.conditions(), new Measure(bands, BANDS, "bands"), said);
    }

    private static void add(Tally tally, Trace before, Trace trace) {
        int samples = trace.levelDb().size();
        Remark said = Remark.of("copied-trace")
                .with("place", before.place().file())
                .with("samples", samples)
                .with("threshold", SAMPLES);
        add(tally, trace.named(), new Measure(samples, SAMPLES, "samples"), said);
    }

    private static void add(Tally tally, Conditions whose, Measure agree, Remark said) {
        tally.add(whose, List.of(), Errs.EITHER, Consequence.UNUSABLE, agree, said);
    }
}
