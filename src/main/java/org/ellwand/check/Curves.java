package org.ellwand.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.BiPredicate;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Energy;
import org.ellwand.acoustics.Resolution;
import org.ellwand.acoustics.Weighting;

/** Arithmetic on curves: levels or differences in dB by band, the lowest band first. */
final class Curves {
    private Curves() {}

    /** The mean in dB of curves at the bands that they all have. */
    static NavigableMap<Band, Double> mean(List<NavigableMap<Band, Double>> curves) {
        if (curves.size() == 1) {
            return new TreeMap<>(curves.get(0));
        }
        NavigableMap<Band, Double> mean = new TreeMap<>();
        for (Band band : curves.isEmpty() ? Set.<Band>of() : curves.get(0).keySet()) {
            if (curves.stream().allMatch(c -> c.containsKey(band))) {
                mean.put(
                        band,
                        curves.stream()
                                .mapToDouble(c -> c.getOrDefault(band, 0.0))
                                .average()
                                .orElse(0));
            }
        }
        return mean;
    }

    /** One curve less another, at the bands that both have. */
    static NavigableMap<Band, Double> less(NavigableMap<Band, Double> one, NavigableMap<Band, Double> other) {
        Ascending difference = new Ascending(one.size());
        one.forEach((band, level) -> {
            Double subtrahend = other.get(band);
            if (subtrahend != null) {
                difference.add(band, level - subtrahend);
            }
        });
        return difference.curve();
    }

    /** The part of a curve between two frequencies in Hz, both included. */
    static NavigableMap<Band, Double> between(NavigableMap<Band, Double> curve, double fromHz, double toHz) {
        Ascending part = new Ascending(curve.size());
        curve.forEach((band, level) -> {
            if (band.nominalHz() >= fromHz && band.nominalHz() <= toHz) {
                part.add(band, level);
            }
        });
        return part.curve();
    }

    static double average(NavigableMap<Band, Double> curve) {
        return curve.values().stream().mapToDouble(d -> d).average().orElse(0);
    }

    static double rootMeanSquare(NavigableMap<Band, Double> curve) {
        return Math.sqrt(
                curve.values().stream().mapToDouble(d -> d * d).average().orElse(0));
    }

    /** Standard deviation over the bands. */
    static double deviation(NavigableMap<Band, Double> curve) {
        double mean = average(curve);
        double squares = curve.values().stream()
                .mapToDouble(d -> (d - mean) * (d - mean))
                .sum();
        return curve.size() < 2 ? 0 : Math.sqrt(squares / (curve.size() - 1));
    }

    static double overallDb(NavigableMap<Band, Double> curve, Weighting weighting) {
        return Energy.sumDb(curve.entrySet().stream()
                .mapToDouble(e -> e.getValue() + weighting.atDb(e.getKey().exactHz()))
                .toArray());
    }

    /** Whether the bands are as narrow as a resolution, or narrower. */
    static boolean isAsFineAs(Resolution resolution, NavigableMap<Band, Double> curve) {
        return !curve.isEmpty() && !curve.firstKey().resolution().isCoarserThan(resolution);
    }

    /** The median of numbers of which there is at least one. */
    static double median(List<Double> numbers) {
        double[] sorted = numbers.stream().mapToDouble(d -> d).sorted().toArray();
        return (sorted[(sorted.length - 1) / 2] + sorted[sorted.length / 2]) / 2;
    }

    /** The median of curves, band by band, at the bands that they all have. */
    static NavigableMap<Band, Double> medianOf(List<NavigableMap<Band, Double>> curves) {
        NavigableMap<Band, Double> medians = mean(curves);
        medians.replaceAll((band, mean) ->
                median(curves.stream().map(c -> c.getOrDefault(band, mean)).toList()));
        return medians;
    }

    /** The longest run of neighbouring bands among some; the lowest of equals. */
    static List<Band> longestRun(SortedSet<Band> bands) {
        List<Band> longest = List.of();
        List<Band> run = new ArrayList<>();
        for (Band band : bands) {
            if (!run.isEmpty() && band.index() != run.get(run.size() - 1).index() + 1) {
                run = new ArrayList<>();
            }
            run.add(band);
            longest = run.size() > longest.size() ? List.copyOf(run) : longest;
        }
        return longest;
    }

    /** The longest run where a curve meets a condition, if it is as wide as five third octaves; else nothing. */
    static List<Band> wideRun(NavigableMap<Band, Double> curve, BiPredicate<Band, Double> wanted) {
        SortedSet<Band> found = new TreeSet<>();
        curve.forEach((band, level) -> {
            if (wanted.test(band, level)) {
                found.add(band);
            }
        });
        List<Band> run = longestRun(found);
        boolean wide =
                !run.isEmpty() && 3 * run.size() >= 5 * run.get(0).resolution().bandsPerOctave();
        return wide ? run : List.of();
    }

    /** The mean of a curve over some of its bands. */
    static double average(NavigableMap<Band, Double> curve, List<Band> bands) {
        return bands.stream()
                .mapToDouble(b -> curve.getOrDefault(b, 0.0))
                .average()
                .orElse(0);
    }

    /** The level at a nominal frequency in Hz. */
    static Optional<Double> at(NavigableMap<Band, Double> curve, double nominalHz) {
        for (Map.Entry<Band, Double> entry : curve.entrySet()) {
            if (entry.getKey().nominalHz() == nominalHz) {
                return Optional.of(entry.getValue());
            }
        }
        return Optional.empty();
    }

    /** Nominal frequencies in Hz, for a finding. */
    static List<Double> hertz(Iterable<Band> bands) {
        List<Double> hertz = new ArrayList<>();
        bands.forEach(band -> hertz.add(band.nominalHz()));
        return hertz;
    }
}
