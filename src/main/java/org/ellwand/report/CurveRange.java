package org.ellwand.report;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ellwand.acoustics.Bound;
import org.ellwand.amount.Unit;
import org.ellwand.audit.CellResult;
import org.ellwand.audit.Judgement;
import org.ellwand.audit.Point;

/** Over what range the curve of the deciding cell runs, and where its ends lie. */
final class CurveRange {
    private CurveRange() {}

    /** Empty texts where there is no curve of two bands or more. */
    static Map<String, Object> of(Judgement judgement) {
        List<Point> bands = Deciding.cell(judgement).map(CellResult::bands).orElse(List.of()).stream()
                .filter(point -> point.hz().isPresent() && point.bound() == Bound.MEASURED)
                .toList();
        Comparator<Point> byValue = Comparator.comparingDouble(Point::value);
        Optional<Point> lowest = bands.stream().min(byValue);
        Optional<Point> highest = bands.stream().max(byValue);
        if (bands.size() < 2 || lowest.isEmpty() || highest.isEmpty()) {
            return none();
        }
        Unit unit = FigureParts.curveUnit(judgement.rule());
        return range(end(lowest.get(), unit), end(highest.get(), unit), bands.size());
    }

    static Map<String, Object> none() {
        return range(end("", ""), end("", ""), 0);
    }

    private static Map<String, Object> range(Map<String, Object> lowest, Map<String, Object> highest, int bands) {
        return Fields.of("lowest", lowest)
                .and("highest", highest)
                .and("bands", bands)
                .map();
    }

    private static Map<String, Object> end(Point point, Unit unit) {
        return end(
                Numbers.withUnit(Numbers.value(point.value(), unit), unit),
                Numbers.hertz(point.hz().orElse(0)));
    }

    private static Map<String, Object> end(String value, String hz) {
        return Fields.of("value", value).and("hz", hz).map();
    }
}
