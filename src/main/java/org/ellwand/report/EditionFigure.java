package org.ellwand.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.ellwand.acoustics.Bound;
import org.ellwand.amount.Interval;
import org.ellwand.audit.ClaimAudit;
import org.ellwand.audit.Judgement;
import org.ellwand.claim.Rule;

/** What a maker claimed against the date of the edition, with what was measured behind it. */
final class EditionFigure {
    private static final double HEIGHT = 190;
    private static final double APART = 40;
    private static final double INSIDE = 34;
    private static final List<String> NAMES = List.of("measured");

    private static final double DATE_PX = Sheet.textPx("2026-05-04 ");

    private final List<Step> steps;
    private final Shown shown;
    private final Frame frame;
    private final List<Double> wanted;
    private final List<Double> columns;

    /** One claim, and its number in the report. */
    record Step(int number, ClaimAudit claim, Judgement plain) {
        String dated() {
            return claim.claim().edition().dated();
        }
    }

    EditionFigure(List<Step> unsorted) {
        steps = unsorted.stream()
                .sorted(Comparator.comparing((Step step) -> day(step.dated())))
                .toList();
        Rule rule = steps.get(0).plain().rule();
        shown = Shown.of(rule, rule);
        frame = frame();
        wanted = steps.stream()
                .map(step -> frame.x((double) day(step.dated()).toEpochDay()))
                .toList();
        double room = frame.width() - 2 * INSIDE;
        columns = LabelColumn.placed(
                wanted,
                frame.left() + INSIDE,
                frame.right() - INSIDE,
                Math.min(APART, room / Math.max(1, steps.size() - 1)));
    }

    /** A month or a year stands at its middle. */
    static LocalDate day(String dated) {
        boolean hasMonth = dated.length() >= 7;
        boolean hasDay = dated.length() >= 10;
        return LocalDate.of(
                Integer.parseInt(dated.substring(0, 4)),
                hasMonth ? Integer.parseInt(dated.substring(5, 7)) : 7,
                hasDay ? Integer.parseInt(dated.substring(8, 10)) : hasMonth ? 15 : 1);
    }

    Map<String, Object> model() {
        Rule rule = steps.get(0).plain().rule();
        double step = Ticks.step((frame.toY() - frame.fromY()) * shown.factor(), 4);
        return FigureParts.of("editions", frame)
                .and("topic", steps.get(0).claim().claim().topic())
                .and("about", FigureParts.about(rule, shown.unit()))
                .and("yTicks", FigureParts.yTicks(frame, shown.factor(), step))
                .and("rows", rows())
                .and("shows", shows())
                .map();
    }

    private Frame frame() {
        DoubleSummaryStatistics up = new DoubleSummaryStatistics();
        for (Step step : steps) {
            Interval limit = step.plain().rule().limit();
            up.accept(limit.hasLower() ? limit.lower() : limit.upper());
            up.accept(limit.hasUpper() ? limit.upper() : limit.lower());
            Interval band = band(step);
            up.accept(band.lower());
            up.accept(band.upper());
        }
        double range = up.getMax() > up.getMin() ? up.getMax() - up.getMin() : Math.max(1, Math.abs(up.getMax()));
        double by = Ticks.step(range, 4);
        double bottom = Math.floor((up.getMin() - range * 0.1) / by) * by;
        double top = Math.ceil((up.getMax() + range * 0.1) / by) * by;
        double width = Sheet.WIDTH - Sheet.LEFT - Sheet.namesPx(NAMES);
        double first = day(steps.get(0).dated()).toEpochDay();
        double last = day(steps.get(steps.size() - 1).dated()).toEpochDay();
        // The first and the last stand inside the plot by half a column.
        double daysPerPx = Math.max(1, last - first) / (width - 2 * INSIDE);
        double middle = (first + last) / 2;
        return new Frame(
                Sheet.LEFT,
                Sheet.LOW_TOP,
                width,
                HEIGHT,
                middle - daysPerPx * width / 2,
                middle + daysPerPx * width / 2,
                bottom,
                top);
    }

    /** What is known of the measured number: its 95 % interval, or the number alone. */
    private static Interval band(Step step) {
        double value = Deciding.value(step.plain());
        boolean own = isMeasured(step)
                && !Wording.isCalculated(step.plain().rule())
                && MeasuredModel.isOwn(step.plain())
                && step.plain().lower().isPresent()
                && step.plain().upper().isPresent();
        double lower = own ? Math.min(value, step.plain().lower().getAsDouble()) : value;
        double upper = own ? Math.max(value, step.plain().upper().getAsDouble()) : value;
        return Interval.of(lower, upper, step.plain().rule().limit().unit());
    }

    private static boolean isMeasured(Step step) {
        return bound(step) == Bound.MEASURED;
    }

    private static Bound bound(Step step) {
        return step.plain().point().map(point -> point.bound()).orElse(Bound.MEASURED);
    }

    private List<Object> rows() {
        List<Integer> lines = dateLines();
        return IntStream.range(0, steps.size())
                .mapToObj(i -> row(i, lines.get(i)))
                .toList();
    }

    private Object row(int index, int line) {
        Step step = steps.get(index);
        Shown own = Shown.of(step.plain().rule(), step.plain().rule());
        Interval band = band(step);
        double value = Deciding.value(step.plain());
        double left = index == 0 ? frame.left() : (columns.get(index - 1) + columns.get(index)) / 2;
        double right = index == steps.size() - 1 ? frame.right() : (columns.get(index) + columns.get(index + 1)) / 2;
        return Fields.of("claimNumber", step.number())
                .and("name", step.claim().claim().edition().id())
                .and("source", step.claim().claim().edition().source())
                .and("dated", step.dated())
                .and("dateLine", line)
                .and("verdict", step.claim().verdict().word())
                .and("x", Frame.px(columns.get(index)))
                .and("dateX", Frame.px(wanted.get(index)))
                .and("y", Frame.px(frame.y(value)))
                .and("claimed", FigureParts.claimedAcross(frame, step.plain().rule(), own))
                .and("left", Frame.px(left))
                .and("right", Frame.px(right))
                .and("from", Frame.px(frame.y(band.upper())))
                .and("to", Frame.px(frame.y(band.lower())))
                .and("hasBar", band.upper() > band.lower())
                .and("bound", FigureParts.bound(bound(step)))
                .and("value", isMeasured(step) ? own.value(value) : own.written(value))
                .and(
                        "expanded",
                        band.upper() > band.lower()
                                ? own.uncertainty(step.plain().standardUncertainty(), 2)
                                : "")
                .map();
    }

    /** Below the plot, dates that would touch stand on different lines. */
    private List<Integer> dateLines() {
        List<Double> ends = new ArrayList<>();
        List<Integer> lines = new ArrayList<>();
        for (double column : columns) {
            int line = 0;
            while (line < ends.size() && column - DATE_PX / 2 < ends.get(line)) {
                line++;
            }
            if (line == ends.size()) {
                ends.add(0.0);
            }
            ends.set(line, column + DATE_PX / 2);
            lines.add(line);
        }
        return lines;
    }

    private Map<String, Object> shows() {
        boolean known = steps.stream().map(EditionFigure::band).anyMatch(band -> band.upper() > band.lower());
        boolean moved = IntStream.range(0, steps.size()).anyMatch(i -> Math.abs(columns.get(i) - wanted.get(i)) > 0.5);
        return Fields.of("interval", known ? "drawn" : "unknown")
                .and("bounds", steps.stream().anyMatch(step -> !isMeasured(step)))
                .and("moved", moved)
                .and(
                        "dateLines",
                        1
                                + dateLines().stream()
                                        .mapToInt(Integer::intValue)
                                        .max()
                                        .orElse(0))
                .map();
    }
}
