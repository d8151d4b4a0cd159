package org.ellwand.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import org.ellwand.acoustics.Band;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Session;

/**
 * By how much the first of two settings is louder than the second, in one insertion under one sound.
 *
 * @param first of the two names in their order
 * @param db mean over the bands
 * @param bands from 125 Hz to 8 kHz, as far as both were read
 */
record SettingGap(String first, String second, Conditions insertion, double db, List<Band> bands) {
    /** What readings of one insertion under one sound may differ in. */
    static final Set<String> SETTING = Set.of("setting", "take");

    /** Differences of two settings below this say nothing of their order, dB. */
    private static final double LEAST_DB = 1;

    /** Standard deviations of a difference of two readings. */
    private static final double SCATTER = 4.5 * Math.sqrt(2);

    /** What gaps have in common that are held against each other. */
    record State(Conditions conditions, String first, String second) {}

    /**
     * Of every two settings that an insertion was read in.
     *
     * @param curves of the readings
     */
    static List<SettingGap> of(
            Conditions insertion, List<CurveReading> readings, Function<CurveReading, LevelCurve> curves) {
        Map<String, List<CurveReading>> settings = new TreeMap<>();
        readings.forEach(r -> r.get("setting")
                .ifPresent(
                        s -> settings.computeIfAbsent(s, k -> new ArrayList<>()).add(r)));
        List<String> names = List.copyOf(settings.keySet());
        List<LevelCurve> levels = settings.values().stream()
                .map(alike -> Curves.mean(alike.stream().map(curves).toList()))
                .toList();
        List<SettingGap> gaps = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            for (int j = i + 1; j < names.size(); j++) {
                LevelCurve difference = Curves.between(Curves.less(levels.get(i), levels.get(j)), 125, 8000);
                if (!difference.isEmpty()) {
                    double db = Curves.average(difference);
                    gaps.add(new SettingGap(names.get(i), names.get(j), insertion, db, difference.bands()));
                }
            }
        }
        return gaps;
    }

    State state() {
        return new State(insertion.without(Set.of("insertion")), first, second);
    }

    /** A smaller difference says nothing of the order. */
    double thresholdDb(Session session) {
        double reading = Sheets.meanReadingDb(session, bands);
        double scatter = session.settingsSwitchedInPlace()
                ? reading
                : Math.hypot(reading, Sheets.meanInsertionDb(session, bands));
        return Math.max(LEAST_DB, SCATTER * scatter);
    }
}
