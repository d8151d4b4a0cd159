package org.ellwand.check;

import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import org.ellwand.acoustics.Band;
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
    NavigableMap<Band, Double> rest(CurveReading first, CurveReading later) {
        NavigableMap<Band, Double> change = Curves.less(Sheets.curve(later), Sheets.curve(first));
        return at(first)
                .flatMap(before -> at(later).map(after -> Curves.less(after, before)))
                .map(outside -> excused(change, outside))
                .orElse(change);
    }

    /** A change less another one, in the bands in which that leaves less of it: what explains may excuse and never accuse. */
    static NavigableMap<Band, Double> excused(NavigableMap<Band, Double> change, NavigableMap<Band, Double> by) {
        NavigableMap<Band, Double> rest = LevelCurve.of(change).copy();
        rest.replaceAll((band, db) -> {
            double less = db - by.getOrDefault(band, 0.0);
            return Math.abs(less) < Math.abs(db) ? less : db;
        });
        return rest;
    }

    private Optional<NavigableMap<Band, Double>> at(CurveReading open) {
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
