package org.ellwand.check;

import java.util.EnumMap;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Weighting;

/** Frequency weightings in dB at the exact mid-band frequencies of bands, worked out once for each band. */
final class Weights {
    private static final Map<Weighting, Map<Band, Double>> KNOWN = new EnumMap<>(Weighting.class);

    static {
        for (Weighting weighting : Weighting.values()) {
            KNOWN.put(weighting, new ConcurrentHashMap<>());
        }
    }

    private Weights() {}

    static double db(Weighting weighting, Band band) {
        Map<Band, Double> known = KNOWN.getOrDefault(weighting, Map.of());
        Double db = known.get(band);
        return db != null ? db : known.computeIfAbsent(band, b -> weighting.atDb(b.exactHz()));
    }
}
