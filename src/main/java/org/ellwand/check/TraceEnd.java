package org.ellwand.check;

import java.util.List;
import org.ellwand.check.Finding.Consequence;
import org.ellwand.check.Finding.Errs;
import org.ellwand.check.Finding.Measure;
import org.ellwand.measurement.Step;
import org.ellwand.measurement.Trace;
import org.ellwand.words.Remark;

/**
 * A trace that ends too soon. A time counts to the new steady level, which is the mean over the last fifth of the trace after the step; a
 * level that still moves there has not arrived, its mean lies on this side of where it is going, and is reached too early: the time reads
 * low. Where the halves of the last fifth differ by {@link #MOVES_DB}, a time to within 3 dB of a level that approaches as Δ e^(−t/τ) is short by a sixth
 * after a step of 10 dB, by a twelfth of 20 dB and by a twentieth of 35 dB (worked out from these exponentials).
 * Never below six standard deviations of what the level scatters by. A level that steps there by as much and stays
 * ({@link Stretch#jumpDb}) has no one steady level, and a time to it may be too short or too long. Accuses fewer than 1 in 1000 sound
 * sessions, whose traces last ten times as long as the product takes.
 */
final class TraceEnd implements DataCheck {
    private static final double MOVES_DB = 0.2;
    private static final double SCATTERS = 6;

    /** Where samples are too much alike to tell scatter from a bend, so much, and so many times what lies about a straight line. */
    private static final double BENT_DB = 0.5;

    private static final double BENDS = 10;

    @Override
    public String name() {
        return "end of a trace";
    }

    @Override
    public String needs() {
        return "traces of a step, with fifty samples in their last fifth";
    }

    @Override
    public Checked check(Material material) {
        return StepTraces.checked(this, material, TraceEnd::look);
    }

    private static void look(Tally tally, Trace trace, Step step) {
        double endS = trace.timeS().get(trace.timeS().size() - 1);
        double fifthS = (endS - Stretch.atS(step)) / 5;
        Stretch end = Stretch.of(trace, endS - fifthS, Double.POSITIVE_INFINITY);
        if (!end.isLongEnough()) {
            return;
        }
        tally.looked();
        double jump = Math.abs(end.jumpDb());
        if (jump > MOVES_DB) {
            add(tally, trace, "trace-steps-at-end", Errs.EITHER, jump, MOVES_DB);
            return;
        }
        double moved = Math.abs(end.changeDb());
        double threshold =
                end.isTold() ? Math.max(MOVES_DB, SCATTERS * end.scatterDb()) : Math.max(BENT_DB, BENDS * end.bendDb());
        if (moved > threshold) {
            add(tally, trace, "trace-end", Errs.READS_LOW, moved, threshold);
        }
    }

    private static void add(Tally tally, Trace trace, String key, Errs errs, double moved, double threshold) {
        tally.add(
                trace.named(),
                List.of(),
                errs,
                Consequence.UNUSABLE,
                new Measure(moved, threshold, "dB"),
                Remark.of(key)
                        .with("moved", moved)
                        .with("threshold", threshold)
                        .with("file", trace.place().file()));
    }
}
