package org.ellwand.audit;

import java.util.OptionalDouble;
import org.ellwand.amount.Interval;
import org.ellwand.statistics.Errors;

/** Turns a judged number into what is recorded of it. */
final class PointRecord {
    private static final double LOWER_TAIL = 0.025;

    private PointRecord() {}

    static Point of(Points.One point, Interval limit, boolean known) {
        Errors errors = point.errors();
        return new Point(
                point.hz(),
                point.lessHz(),
                point.value(),
                maybe(known, errors.standardUncertainty()),
                maybe(known, point.value() + errors.quantile(LOWER_TAIL)),
                maybe(known, point.value() + errors.quantile(1 - LOWER_TAIL)),
                maybe(known, Ends.of(point, limit).holds()),
                point.bound());
    }

    private static OptionalDouble maybe(boolean known, double value) {
        return known && Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
    }
}
