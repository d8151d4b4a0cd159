package org.ellwand.check;

import java.util.List;
import java.util.Optional;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Session;

/**
 * What the sound outside did between two takes of the open ear: the field microphone read at the same takes tells. Only what is left of
 * a difference between the takes is the ear's, or the tube's.
 */
final class Outside {
    private final List<CurveReading> fields;

    private Outside(List<CurveReading> fields) {
        this.fields = fields;
    }

    static Outside of(Session session) {
        return new Outside(Sheets.fields(session));
    }

    /**
     * What two takes of the open ear under one sound differ by, the later less the earlier, without what the sound outside did
     * where that was read.
     */
    LevelCurve rest(CurveReading first, CurveReading later) {
        LevelCurve change = Curves.less(Sheets.curve(later), Sheets.curve(first));
        return at(first)
                .flatMap(before -> at(later).map(after -> Curves.less(after, before)))
                .map(outside -> excused(change, outside))
                .orElse(change);
    }

    /** A change less another one, in the bands in which that leaves less of it: what explains may excuse and never accuse. */
    static LevelCurve excused(LevelCurve change, LevelCurve by) {
        return change.changed((band, db) -> {
            double less = db - by.levelOr(band, 0.0);
            return Math.abs(less) < Math.abs(db) ? less : db;
        });
    }

    private Optional<LevelCurve> at(CurveReading open) {
        return fields.stream()
                .filter(f -> take(f).equals(take(open)))
                .filter(f -> f.get("stimulus").equals(open.get("stimulus")))
                .map(Sheets::curve)
                .findFirst();
    }

    /** A single reading has no take: it is the first. */
    private static String take(CurveReading reading) {
        return reading.get("take").orElse("1");
    }
}
