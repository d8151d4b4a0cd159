package org.ellwand.report;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.ellwand.amount.Unit;
import org.ellwand.audit.CellResult;
import org.ellwand.audit.Judgement;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.Trace;

/**
 * Level against time from the step on, a line for each trace of a cell, with the time at which it was found to have
 * settled. Recorded and settled are the audit's; nothing is looked for here.
 */
final class TraceFigure {
    private static final double HEIGHT = 200;
    private static final double STEP_DB = 5;
    /** How much of the time before the step is shown, against that after it. */
    private static final double BEFORE = 0.15;
    /** So many times the longest settling time are shown at least. */
    private static final double BEYOND = 2.5;

    private final Judgement judgement;
    private final Shown shown;
    private final CellResult cell;
    private final List<Line> lines;
    private final Frame frame;

    /** A trace, and when it had settled. */
    private record Line(Trace trace, double settled) {
        double stepS() {
            return trace.step().map(step -> step.at().in(Unit.SECOND)).orElse(0.0);
        }
    }

    private TraceFigure(Judgement judgement, CellResult cell, List<Line> lines) {
        this.judgement = judgement;
        this.shown = Shown.of(judgement.rule(), judgement.rule());
        this.cell = cell;
        this.lines = lines;
        this.frame = frame();
    }

    /** The shapes of a figure for each cell that was read off traces. */
    static List<Map<String, Object>> of(Judgement judgement, List<Session> sessions) {
        CellNames names = new CellNames(judgement.cells());
        List<Map<String, Object>> figures = new ArrayList<>();
        for (CellResult cell : judgement.cells()) {
            List<Line> lines = cell.settled().stream()
                    .flatMap(
                            settled -> trace(settled, sessions).stream().map(trace -> new Line(trace, settled.value())))
                    .toList();
            if (!lines.isEmpty()) {
                figures.add(new TraceFigure(judgement, cell, lines).model(names.tellingName(cell)));
            }
        }
        return figures;
    }

    private static Optional<Trace> trace(CellResult.Settled settled, List<Session> sessions) {
        return sessions.stream()
                .filter(session -> session.id().equals(settled.session()))
                .flatMap(session -> session.traces().stream())
                .filter(trace -> trace.place().file().equals(settled.file()))
                .findFirst();
    }

    private Map<String, Object> model(String panel) {
        return FigureParts.of("trace", frame)
                .and("panel", panel)
                .and("about", FigureParts.about(judgement.rule(), shown.unit()))
                .and("levelUnit", lines.get(0).trace().levelsIn().symbol())
                .and("xTicks", FigureParts.xTicks(frame, 1, 4))
                .and("yTicks", FigureParts.yTicks(frame, 1, frame.toY() - frame.fromY() > 25 ? 10 : STEP_DB))
                .and("claimed", List.of(FigureParts.claimedAlong(afterStep(), judgement.rule(), shown)))
                .and("claim", shown.limitModel())
                .and("stepX", Frame.px(frame.x(0)))
                .and(
                        "series",
                        IntStream.range(0, lines.size()).mapToObj(this::series).toList())
                .and("value", shown.value(cell.value()))
                .and("expanded", shown.uncertainty(cell.standardUncertainty(), 2))
                .map();
    }

    /** No time is claimed before it. */
    private Frame afterStep() {
        double left = frame.x(0);
        return new Frame(
                left, frame.top(), frame.right() - left, frame.height(), 0, frame.toX(), frame.fromY(), frame.toY());
    }

    /** From seconds on the clock of a trace to the unit of the limit, from the step on. */
    private double time(Line line, double atS) {
        return Unit.SECOND.convert(atS - line.stepS(), judgement.rule().limit().unit());
    }

    private Frame frame() {
        DoubleSummaryStatistics up = new DoubleSummaryStatistics();
        double longest = judgement.rule().limit().hasUpper()
                ? judgement.rule().limit().upper()
                : judgement.rule().limit().lower();
        double recorded = 0;
        for (Line line : lines) {
            line.trace().levelDb().forEach(up::accept);
            longest = Math.max(longest, line.settled());
            List<Double> times = line.trace().timeS();
            recorded = Math.max(recorded, time(line, times.get(times.size() - 1)));
        }
        double to = Math.min(recorded, BEYOND * longest);
        to = to > 0 ? to : recorded;
        double bottom = STEP_DB * Math.floor((up.getMin() - 1) / STEP_DB);
        double top = STEP_DB * Math.ceil((up.getMax() + 1) / STEP_DB);
        double width = Sheet.WIDTH - Sheet.LEFT - 2 * Sheet.RIGHT;
        return new Frame(Sheet.LEFT, Sheet.TOP, width, HEIGHT, -BEFORE * to, to, bottom, top);
    }

    private Object series(int index) {
        Line line = lines.get(index);
        return Fields.of("number", index)
                .and("lines", List.of(TracePoints.of(line.trace(), at -> frame.x(time(line, at)), frame)))
                .and("mark", mark(line))
                .map();
    }

    private Object mark(Line line) {
        double atS = line.stepS() + judgement.rule().limit().unit().convert(line.settled(), Unit.SECOND);
        double level = line.trace()
                .levels()
                .levelDbAt(Math.min(atS, line.trace().levels().endS()));
        return Fields.of("x", Frame.px(frame.x(line.settled())))
                .and("y", Frame.px(frame.y(level)))
                .and("value", shown.withUnit(line.settled()))
                .map();
    }
}
