package org.ellwand.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.ellwand.words.Remark;

/** Writes down what was decided of a rule: value, interval, cells and notes. */
final class JudgementRecord {
    private final Worked worked;
    private final double confidence;

    JudgementRecord(Worked worked, double confidence) {
        this.worked = worked;
        this.confidence = confidence;
    }

    /**
     * The judgement.
     *
     * @param reasons why a marginal verdict is no firmer
     * @param doubt what is said of findings that touch it and change nothing
     */
    Judgement of(Decision decision, List<Remark> reasons, Optional<Remark> doubt) {
        boolean known = worked.known();
        Point point = PointRecord.of(decision.point(), worked.limit(), known);
        return new Judgement(
                worked.written(),
                RuleText.of(worked.written()),
                decision.verdict(),
                known ? OptionalDouble.of(decision.probability()) : OptionalDouble.empty(),
                OptionalDouble.of(worked.value(decision)),
                known ? OptionalDouble.of(worked.correction(decision)) : OptionalDouble.empty(),
                Optional.of(point),
                point.standardUncertainty(),
                point.lower(),
                point.upper(),
                reasons,
                cells(),
                notes(decision, reasons, doubt));
    }

    private List<Remark> notes(Decision decision, List<Remark> reasons, Optional<Remark> doubt) {
        RuleNotes notes = new RuleNotes(worked.rule(), confidence, worked.preparation(), worked.evaluation());
        notes.about(decision, worked.quantity());
        doubt.ifPresent(notes::add);
        // Of a firm verdict no reason tells what was missing.
        if (reasons.isEmpty() && worked.lacksBands()) {
            notes.add(Caps.missing(worked.ready()));
        }
        notes.aboutMembers(worked.known());
        return notes.all();
    }

    private List<CellResult> cells() {
        if (worked.ready().size() <= Judgement.MANY_CELLS) {
            return IntStream.range(0, worked.ready().size())
                    .mapToObj(this::withCurves)
                    .toList();
        }
        // Each looks at itself alone, so that many may be written side by side; they stay in order.
        List<CellResult> cells =
                new ArrayList<>(IntStream.range(0, worked.ready().size())
                        .parallel()
                        .mapToObj(s -> record(s).brief(s, worked.evaluation(), worked.curves()))
                        .toList());
        IntStream.range(0, cells.size())
                .boxed()
                .sorted(Comparator.comparing(cells::get, Judgement.order(worked.limit())))
                .limit(Judgement.CURVES_KEPT)
                .forEach(s -> cells.set(s, withCurves(s)));
        return cells;
    }

    private CellResult withCurves(int s) {
        return worked.fewCurves()
                ? record(s)
                        .of(
                                s,
                                worked.evaluation(),
                                worked.curves(),
                                Evaluation.curve(worked.preparation(), worked.rule(), s, worked.trials()))
                : record(s).of(s, worked.evaluation(), worked.curves());
    }

    private CellRecord record(int subject) {
        return new CellRecord(
                worked.rule(),
                worked.ready().get(subject),
                worked.preparation(),
                worked.known(),
                worked.evaluation().isStaged());
    }
}
