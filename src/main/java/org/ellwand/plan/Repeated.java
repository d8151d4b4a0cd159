package org.ellwand.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Bound;
import org.ellwand.acoustics.Spectrum;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Session;

/**
 * A session as it would be with another number of insertions, were the values to stay: every mean curve is kept, and so is what
 * the insertions scatter about it, band by band and from band to band. Where n insertions were measured and N are wanted, their
 * deviations D (a row each) are taken apart by the n − 1 contrasts H that are orthogonal to their mean, and put together by n − 1 waves E
 * over the N insertions, orthogonal to each other and to their mean: √((N − 1)/(n − 1)) E H D has the sample covariance of D.
 */
final class Repeated {
    /** How findings name the insertions, before their number. */
    static final String INSERTION = "insertion=" + Repeated.NAME;

    private static final String NAME = "p";

    private Repeated() {}

    /** @param insertions at least two */
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
        // Of more than are wanted, the first tell the scatter.
        double[][] shares = shares(Math.min(group.size(), insertions), insertions);
        List<Band> bands = new ArrayList<>(group.get(0).spectrum().bands());
        bands.removeIf(
                band -> group.stream().anyMatch(r -> r.spectrum().at(band).isEmpty()));
        List<Map<Band, Spectrum.Level>> levels = new ArrayList<>();
        for (int k = 0; k < insertions; k++) {
            levels.add(new TreeMap<>());
        }
        for (Band band : bands) {
            double[] measured =
                    group.stream().mapToDouble(r -> level(r, band).levelDb()).toArray();
            double mean = Arrays.stream(measured).average().orElseThrow();
            Bound bound = bound(group, band);
            for (int k = 0; k < insertions; k++) {
                double deviation = 0;
                for (int m = 0; m < shares[k].length; m++) {
                    deviation += shares[k][m] * (measured[m] - mean);
                }
                levels.get(k).put(band, new Spectrum.Level(mean + deviation, bound));
            }
        }
        List<CurveReading> repeats = new ArrayList<>();
        CurveReading like = group.get(0);
        for (int k = 0; k < insertions; k++) {
            repeats.add(new CurveReading(
                    conditions.with("insertion", NAME + (k + 1)),
                    like.values(),
                    new Spectrum(like.spectrum().resolution(), levels.get(k)),
                    like.place()));
        }
        return repeats;
    }

    private static Spectrum.Level level(CurveReading reading, Band band) {
        return reading.spectrum().at(band).orElseThrow();
    }

    /** A bound where any of the readings is one. */
    private static Bound bound(List<CurveReading> group, Band band) {
        return group.stream()
                .map(reading -> level(reading, band).bound())
                .filter(bound -> bound != Bound.MEASURED)
                .findFirst()
                .orElse(Bound.MEASURED);
    }

    /** How much of the deviation of each measured insertion each wanted one has: √((N − 1)/(n − 1)) E H. */
    private static double[][] shares(int measured, int wanted) {
        double[][] shares = new double[wanted][measured];
        double scale = measured < 2 ? 0 : Math.sqrt((wanted - 1.0) / (measured - 1.0));
        for (int contrast = 1; contrast < measured; contrast++) {
            double norm = Math.sqrt(contrast * (contrast + 1.0));
            for (int k = 0; k < wanted; k++) {
                double wave = scale * wave(contrast, k, wanted) / norm;
                for (int m = 0; m < contrast; m++) {
                    shares[k][m] += wave;
                }
                shares[k][contrast] -= contrast * wave;
            }
        }
        return shares;
    }

    /** Cosines and sines of 1, 2, … periods over N places, each of length one; the last of an even N changes from place to place. */
    private static double wave(int number, int place, int of) {
        int periods = (number + 1) / 2;
        double angle = 2 * Math.PI * periods * place / of;
        if (2 * periods == of) {
            return Math.cos(angle) / Math.sqrt(of);
        }
        return Math.sqrt(2.0 / of) * (number % 2 == 1 ? Math.cos(angle) : Math.sin(angle));
    }
}
