package org.ellwand.check;

import org.ellwand.measurement.Step;
import org.ellwand.measurement.Trace;

/** The traces of a step of one session, one after the other. */
final class StepTraces {
    private StepTraces() {}

    /** What a check looks at in one of them. */
    interface Look {
        void at(Tally tally, Trace trace, Step step);
    }

    static DataCheck.Checked checked(DataCheck check, Material material, Look look) {
        Tally tally = new Tally(check, material.session());
        for (Trace trace : material.session().traces()) {
            trace.step().ifPresent(step -> look.at(tally, trace, step));
        }
        return tally.done();
    }
}
