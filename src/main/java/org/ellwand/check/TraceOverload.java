package org.ellwand.check;

import java.util.List;
import java.util.Optional;
import org.ellwand.amount.Amount;
import org.ellwand.check.Finding.Consequence;
import org.ellwand.check.Finding.Errs;
import org.ellwand.check.Finding.Measure;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.Trace;
import org.ellwand.words.Remark;

/**
 * A trace that the measuring chain cut off. A level above the {@code overload} that the session states is one the chain does not follow. And a level
 * that scatters from sample to sample, but stands still at the very top of the trace for {@link #RUN} samples or more, has met a ceiling: saturation
 * cuts what lies above it, scatter and all. Cut off is what a product lets through before it acts, so that it seems to have acted sooner or
 * more; what is steady lies lower. (Five samples: common practice, no source; of scattering samples five in a row are not alike by chance.) Where many neighbours
 * are alike elsewhere too, because levels are rounded or made without noise, nothing is said of the top. Accuses no sound session.
 */
final class TraceOverload implements DataCheck {
    private static final int RUN = 5;

    /** Alike neighbours elsewhere, of all, above which a run tells nothing. */
    private static final double ALIKE = 0.1;

    @Override
    public String name() {
        return "overload of a trace";
    }

    @Override
    public String needs() {
        return "traces";
    }

    @Override
    public Checked check(Material material) {
        Session session = material.session();
        Tally tally = new Tally(this, session);
        for (Trace trace : session.traces()) {
            tally.looked();
            Optional<Amount> most = session.chain().overload().filter(limit -> limit.unit() == trace.levelsIn());
            double top = trace.levelDb().stream().mapToDouble(d -> d).max().orElseThrow();
            if (most.isPresent() && top > most.get().value()) {
                add(tally, trace, top, most.get().value(), "trace-too-loud");
            } else if (isCutOff(trace.levelDb(), top)) {
                add(tally, trace, top, top, "trace-cut-off");
            }
        }
        return tally.done();
    }

    private static void add(Tally tally, Trace trace, double top, double threshold, String key) {
        tally.add(
                trace.named(),
                List.of(),
                Errs.EITHER,
                Consequence.UNUSABLE,
                new Measure(top, threshold, trace.levelsIn().symbol()),
                Remark.of(key)
                        .with("top", top)
                        .with("threshold", threshold)
                        .with("file", trace.place().file()));
    }

    private static boolean isCutOff(List<Double> levels, double top) {
        int run = 0;
        int longest = 0;
        int alike = 0;
        int elsewhere = 0;
        for (int i = 0; i < levels.size(); i++) {
            run = levels.get(i) == top ? run + 1 : 0;
            longest = Math.max(longest, run);
            if (i > 0 && levels.get(i) < top) {
                elsewhere++;
                alike += levels.get(i).equals(levels.get(i - 1)) ? 1 : 0;
            }
        }
        return longest >= RUN && elsewhere >= RUN && alike < ALIKE * elsewhere;
    }
}
