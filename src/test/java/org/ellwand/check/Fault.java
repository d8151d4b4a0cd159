package org.ellwand.check;

import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Spectrum;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Session;

/** Puts a fault into some readings of a session. */
final class Fault {
    private Fault() {}

    /** What becomes of a level at a frequency in Hz. */
    interface Change {
        double of(double frequencyHz, double levelDb);
    }

    static Session in(Session session, Predicate<CurveReading> some, Change change) {
        return session.withReadings(session.readings().stream()
                .map(r -> some.test(r) ? changed(r, change) : r)
                .toList());
    }

    /** Readings with a condition: {@code insertion=2}. */
    static Predicate<CurveReading> where(String... conditions) {
        return reading -> {
            for (String condition : conditions) {
                String[] parts = condition.split("=");
                if (!reading.get(parts[0]).filter(parts[1]::equals).isPresent()) {
                    return false;
                }
            }
            return true;
        };
    }

    private static CurveReading changed(CurveReading reading, Change change) {
        Map<Band, Spectrum.Level> levels = new TreeMap<>();
        reading.spectrum()
                .levels()
                .forEach((band, level) ->
                        levels.put(band, Spectrum.Level.measured(change.of(band.exactHz(), level.levelDb()))));
        Spectrum spectrum = new Spectrum(reading.spectrum().resolution(), levels);
        return new CurveReading(reading.conditions(), reading.values(), spectrum, reading.place());
    }
}
