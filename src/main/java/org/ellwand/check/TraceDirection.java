package org.ellwand.check;

import java.util.List;
import org.ellwand.check.Finding.Consequence;
import org.ellwand.check.Finding.Errs;
import org.ellwand.check.Finding.Measure;
import org.ellwand.measurement.Step;
import org.ellwand.measurement.Trace;
import org.ellwand.words.Remark;

/**
 * A trace whose level goes the other way than the sound is said to: the levels of the step are turned about, or the sheet is another step's, and an
 * attack is judged as a release.
 *
 * <p>What physics allows: a product's gain is, at the step, still what it was before, so that the worn level first follows the sound, whole steps of it;
 * only then does the gain act. Afterwards a product that compresses or limits leaves the level on the side to which the sound went, or where it was; one
 * that turns itself off above a level, or down by more than the sound came up, may leave it on the other side, but not from the start.
 * So a trace is accused only where both are seen: the level in the end lies {@link #AWAY_DB} or more on the wrong side of the level before the step,
 * and no sample after the step lies on the right side of it by more than {@link #FOLLOWS_DB}. (3 and 1 dB: common practice, no source.) Neither below
 * {@link #SCATTERS} standard deviations of the samples before the step. A product that overshoots its own correction sooner than samples or time
 * weighting let it be seen would be accused wrongly; samples closer together show that it follows first. Accuses fewer than 1 in 1000
 * sound sessions: each of two things would have to come about by a scatter of five standard deviations.
 */
final class TraceDirection implements DataCheck {
    private static final double AWAY_DB = 3;
    private static final double FOLLOWS_DB = 1;
    private static final double SCATTERS = 5;

    @Override
    public String name() {
        return "direction of a step";
    }

    @Override
    public String needs() {
        return "traces of a step";
    }

    @Override
    public Checked check(Material material) {
        return StepTraces.checked(this, material, TraceDirection::look);
    }

    private static void look(Tally tally, Trace trace, Step step) {
        double atS = Stretch.atS(step);
        double endS = trace.timeS().get(trace.timeS().size() - 1);
        Stretch before = Stretch.of(trace, Double.NEGATIVE_INFINITY, atS);
        Stretch after = Stretch.of(trace, atS, Double.POSITIVE_INFINITY);
        Stretch end = Stretch.of(trace, endS - (endS - atS) / 5, Double.POSITIVE_INFINITY);
        if (before.levelDb().isEmpty()) {
            return;
        }
        tally.looked();
        boolean rises = step.to().value() > step.from().value();
        double beforeDb = before.medianDb();
        double scatterDb = SCATTERS * before.sampleDb();
        double awayDb = rises ? beforeDb - end.medianDb() : end.medianDb() - beforeDb;
        double followsDb = after.levelDb().stream()
                .mapToDouble(level -> rises ? level - beforeDb : beforeDb - level)
                .max()
                .orElse(0);
        double threshold = Math.max(AWAY_DB, scatterDb);
        if (awayDb > threshold && followsDb <= Math.max(FOLLOWS_DB, scatterDb)) {
            tally.add(
                    trace.named(),
                    List.of(),
                    Errs.EITHER,
                    Consequence.UNUSABLE,
                    new Measure(awayDb, threshold, "dB"),
                    Remark.of(rises ? "trace-falls" : "trace-rises")
                            .with("away", awayDb)
                            .with("from", step.from().value())
                            .with("to", step.to().value())
                            .with("file", trace.place().file()));
        }
    }
}
