package org.ellwand.check;

import java.util.List;
import org.ellwand.acoustics.SettlingTime;
import org.ellwand.check.Finding.Consequence;
import org.ellwand.check.Finding.Errs;
import org.ellwand.check.Finding.Measure;
import org.ellwand.measurement.Step;
import org.ellwand.measurement.Trace;
import org.ellwand.words.Remark;

/**
 * A time weighting that is not short against the time that was read under it. The weighted mean square y follows that of the sound x as τ y' = x − y (IEC 61672-1),
 * so that x lies below y wherever y falls, and above it wherever y rises.
 *
 * <p>Where the level comes down into its last stay after a step up, or up into it after a step down, as it does where a product acts after the
 * step, the sound was there before: the time reads high. A product that acts at once from D dB above is read τ ln((10^(D/10) − 1)/(10^(w/10) − 1)) late, to within
 * w dB; for 20 dB and 3 dB that is 4.6 τ. Below {@link #LATE} time constants no verdict that so late an answer could have caused is firm. Where the
 * level comes from the side that it was on before the step, the weighting has hidden what the product did: it may have been there at
 * once, or, for up to ln(10^(2w/10)) τ more (1.4 τ for 3 dB), have been still on its way below or above. Below {@link #HIDDEN} time constants
 * it may then err either way. (10 and 5: a tenth and a third of the time, about; common practice, no source.) Said of traces of recordings alone, whose time constant is known; the
 * time is that to within 3 dB, as {@link TraceSampling} takes it. Compares a trace with its own time weighting, and so is never wrong about sound sessions.
 */
final class TraceWeighting implements DataCheck {
    private static final double LATE = 10;
    private static final double HIDDEN = 5;
    private static final double WITHIN_DB = 3;
    private static final double MS = 1000;

    @Override
    public String name() {
        return "time weighting of a trace";
    }

    @Override
    public String needs() {
        return "traces of a step from 'recordings'";
    }

    @Override
    public Checked check(Material material) {
        return StepTraces.checked(this, material, TraceWeighting::look);
    }

    private static void look(Tally tally, Trace trace, Step step) {
        trace.timeConstantS()
                .ifPresent(constantS -> SettlingTime.seconds(trace.levels(), Stretch.atS(step), WITHIN_DB)
                        .value()
                        .ifPresent(timeS -> {
                            tally.looked();
                            judge(tally, trace, step, constantS, timeS);
                        }));
    }

    private static void judge(Tally tally, Trace trace, Step step, double constantS, double timeS) {
        double atS = Stretch.atS(step);
        double endS = trace.timeS().get(trace.timeS().size() - 1);
        double steadyDb = Stretch.of(trace, endS - (endS - atS) / 5, Double.POSITIVE_INFINITY)
                .medianDb();
        boolean rises = step.to().value() > step.from().value();
        boolean fromAbove = trace.levels().levelDbAt(atS + timeS) > steadyDb;
        boolean late = timeS > 0 && rises == fromAbove;
        double leastS = (late ? LATE : HIDDEN) * constantS;
        if (timeS < leastS) {
            tally.add(
                    trace.named(),
                    List.of(),
                    late ? Errs.READS_HIGH : Errs.EITHER,
                    Consequence.UNUSABLE,
                    new Measure(MS * timeS, MS * leastS, "ms"),
                    Remark.of(late ? "trace-weighting-late" : "trace-weighting-hides")
                            .with("time", MS * timeS)
                            .with("constant", MS * constantS)
                            .with("threshold", MS * leastS)
                            .with("file", trace.place().file()));
        }
    }
}
