package org.ellwand.check;

import java.util.List;
import org.ellwand.check.Finding.Consequence;
import org.ellwand.check.Finding.Errs;
import org.ellwand.check.Finding.Measure;
import org.ellwand.measurement.Step;
import org.ellwand.measurement.Trace;
import org.ellwand.words.Remark;

/**
 * A level that was still on its way when the step came: the product had not recovered from what was before, or the rig drifts. A time is
 * then counted from a state that the sound before the step does not have, and is too short or too long. Looked at is the level
 * before the step, the mean of its second half less that of its first. A level that approaches as Δ e^(−t/τ) takes τ ln(Δ/within), so that 1 dB
 * of a step of 20 dB changes a time by a twentieth of τ, which is noted, and 3 dB by a seventh, which is not judged by (1 and 3 dB: common
 * practice, no source). Where the samples are too much alike to tell scatter from a bend, 3 dB alone count. Never else below six standard deviations of what the level scatters by.
 *
 * <p>Looked at too is whether the level steps there and stays ({@link Stretch#jumpDb}): the sound then stepped before the time that is
 * stated, and a time counts from too late, or something else happened. Of that, too, 1 dB is noted and 3 dB are not judged by. Accuses
 * fewer than 1 in 1000 sound sessions. A time is known to a sample: one that lies a sample before the step may hold it.
 */
final class TraceStart implements DataCheck {
    private static final double NOTED_DB = 1;
    private static final double SPOILT_DB = 3;
    private static final double SCATTERS = 6;

    @Override
    public String name() {
        return "level before a step";
    }

    @Override
    public String needs() {
        return "traces of a step, with fifty samples before it";
    }

    @Override
    public Checked check(Material material) {
        return StepTraces.checked(this, material, TraceStart::look);
    }

    private static void look(Tally tally, Trace trace, Step step) {
        Stretch before = Stretch.of(trace, Double.NEGATIVE_INFINITY, Stretch.atS(step));
        if (before.isLongEnough()) {
            tally.looked();
            judge(tally, trace, before);
        }
    }

    private static void judge(Tally tally, Trace trace, Stretch before) {
        double jump = Math.abs(before.withoutLast().jumpDb());
        if (jump > NOTED_DB) {
            add(tally, trace, "trace-steps-before", jump, NOTED_DB, jump > SPOILT_DB);
            return;
        }
        double change = Math.abs(before.changeDb());
        double threshold = before.isTold() ? Math.max(NOTED_DB, SCATTERS * before.scatterDb()) : SPOILT_DB;
        if (change > threshold) {
            add(tally, trace, "trace-start", change, threshold, change > Math.max(SPOILT_DB, threshold));
        }
    }

    private static void add(Tally tally, Trace trace, String key, double change, double threshold, boolean spoilt) {
        tally.add(
                trace.named(),
                List.of(),
                Errs.EITHER,
                spoilt ? Consequence.UNUSABLE : Consequence.NOTED,
                new Measure(change, threshold, "dB"),
                Remark.of(key)
                        .with("change", change)
                        .with("threshold", threshold)
                        .with("file", trace.place().file()));
    }
}
