package org.ellwand.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Spectrum;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Session;

/**
 * A session as it would be with another number of insertions, were the values to stay: every mean curve is kept, and what
 * the insertions scatter about it comes in pairs, above and below, of the size observed.
 */
final class Repeated {
    private Repeated() {}

    /** @param insertions an even number, so that the pairs are complete */
    static Session of(Session session, int insertions) {
        Map<Conditions, List<CurveReading>> groups = new LinkedHashMap<>();
        List<CurveReading> readings = new ArrayList<>();
        for (CurveReading reading : session.readings()) {
            if (reading.isInPlace()) {
                groups.computeIfAbsent(
                                reading.conditions().without(Set.of("insertion", "take")), k -> new ArrayList<>())
                        .add(reading);
            } else {
                readings.add(reading);
            }
        }
        groups.forEach((conditions, group) -> readings.addAll(repeat(conditions, group, insertions)));
        return session.withReadings(readings);
    }

    private static List<CurveReading> repeat(Conditions conditions, List<CurveReading> group, int insertions) {
        Map<Band, Double> mean = mean(group);
        int n = group.size();
        // Pairs of this size keep the sample variance that n insertions showed, on average.
        double scale = n < 2 ? 0 : Math.sqrt((insertions - 1.0) / insertions * n / (n - 1.0));
        List<CurveReading> repeats = new ArrayList<>();
        for (int i = 0; i < insertions; i++) {
            CurveReading like = group.get(i / 2 % n);
            double sign = i % 2 == 0 ? scale : -scale;
            Map<Band, Spectrum.Level> levels = new HashMap<>();
            mean.forEach((band, level) -> levels.put(
                    band,
                    new Spectrum.Level(
                            level + sign * (levelDb(like, band) - level),
                            like.spectrum().at(band).orElseThrow().bound())));
            repeats.add(new CurveReading(
                    conditions.with("insertion", "p" + (i + 1)),
                    like.values(),
                    new Spectrum(like.spectrum().resolution(), levels),
                    like.place()));
        }
        return repeats;
    }

    /** Over the bands that every reading has. */
    private static Map<Band, Double> mean(List<CurveReading> group) {
        Map<Band, Double> mean = new TreeMap<>();
        for (Band band : group.get(0).spectrum().bands()) {
            if (group.stream().allMatch(reading -> reading.spectrum().at(band).isPresent())) {
                mean.put(
                        band,
                        group.stream()
                                .mapToDouble(reading -> levelDb(reading, band))
                                .average()
                                .orElseThrow());
            }
        }
        return mean;
    }

    private static double levelDb(CurveReading reading, Band band) {
        return reading.spectrum().at(band).orElseThrow().levelDb();
    }
}
