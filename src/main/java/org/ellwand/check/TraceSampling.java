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
 * Samples too far apart to see the time. Between two samples a straight line stands for the level, so that a time is known to within the
 * distance of the samples about the step and about the end of the time. Where the level is within 3 dB of its new one (as ANSI S3.22 counts an
 * attack: from memory) before {@link #FEWEST} such distances are over, that is said, and nothing else: the time is defined on the straight line, and a
 * written-down trace may have its corners alone. A product that does not act on a step at all has a time of nothing, and this finding. Accuses no
 * sound session, whose traces have ten samples or more in the time.
 */
final class TraceSampling implements DataCheck {
    private static final int FEWEST = 3;
    private static final double WITHIN_DB = 3;
    private static final double MS = 1000;

    @Override
    public String name() {
        return "samples of a trace";
    }

    @Override
    public String needs() {
        return "traces of a step";
    }

    @Override
    public Checked check(Material material) {
        return StepTraces.checked(this, material, TraceSampling::look);
    }

    private static void look(Tally tally, Trace trace, Step step) {
        double atS = Stretch.atS(step);
        SettlingTime.seconds(trace.levels(), atS, WITHIN_DB).value().ifPresent(timeS -> {
            tally.looked();
            double apartS = apartS(trace, atS, atS + timeS);
            if (timeS < FEWEST * apartS) {
                tally.add(
                        trace.named(),
                        List.of(),
                        Errs.EITHER,
                        Consequence.NOTED,
                        new Measure(MS * apartS, MS * timeS / FEWEST, "ms"),
                        Remark.of("trace-coarse")
                                .with("apart", MS * apartS)
                                .with("time", MS * timeS)
                                .with("file", trace.place().file()));
            }
        });
    }

    /** The largest distance of samples from the one before a time to the one after another. */
    private static double apartS(Trace trace, double fromS, double toS) {
        List<Double> times = trace.timeS();
        double apart = 0;
        for (int i = 1; i < times.size(); i++) {
            if (times.get(i) > fromS && times.get(i - 1) <= toS) {
                apart = Math.max(apart, times.get(i) - times.get(i - 1));
            }
        }
        return apart;
    }
}
