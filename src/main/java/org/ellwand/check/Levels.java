package org.ellwand.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.Stimulus;

/** Puts readings in order of the level of their sound. */
final class Levels {
    /** The kind of a sound that need not be the same twice. */
    static final String MUSIC = "music";

    private Levels() {}

    /** Readings under one kind of sound at two levels in dB SPL at least, softest first; each kind by itself. */
    static List<List<CurveReading>> series(Session session, List<CurveReading> readings) {
        Map<String, List<CurveReading>> kinds = new TreeMap<>();
        readings.stream()
                .filter(r -> Sheets.levelDb(session, r).isPresent())
                .forEach(r -> kinds.computeIfAbsent(kind(session, r), k -> new ArrayList<>())
                        .add(r));
        return kinds.values().stream()
                .map(kind -> kind.stream()
                        .sorted(Comparator.comparingDouble(r -> db(session, r)))
                        .toList())
                .filter(kind -> db(session, kind.get(0)) < db(session, kind.get(kind.size() - 1)))
                .toList();
    }

    /** Whether two readings, perhaps of two sessions, were made under the same kind of sound at the same level. */
    static boolean isSameSound(Session one, Conditions of, Session other, Conditions ofOther) {
        return one.stimulusOf(of)
                .filter(sound -> other.stimulusOf(ofOther)
                        .filter(s -> s.kind().equals(sound.kind()) && s.levels().equals(sound.levels()))
                        .isPresent())
                .isPresent();
    }

    static double db(Session session, CurveReading reading) {
        return Sheets.levelDb(session, reading).orElse(0.0);
    }

    static String kind(Session session, CurveReading reading) {
        return session.stimulusOf(reading.conditions()).map(Stimulus::kind).orElse("");
    }
}
