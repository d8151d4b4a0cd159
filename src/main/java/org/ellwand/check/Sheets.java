package org.ellwand.check;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.BiPredicate;
import java.util.function.Predicate;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Bound;
import org.ellwand.acoustics.Energy;
import org.ellwand.acoustics.Resolution;
import org.ellwand.acoustics.Spectrum;
import org.ellwand.acoustics.Weighting;
import org.ellwand.amount.Unit;
import org.ellwand.measurement.Cause;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Reading;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.SharedBy;
import org.ellwand.measurement.Stimulus;
import org.ellwand.measurement.Uncertainty;

/** The curves of a session as checks look at them: levels in dB by band, grouped by what the readings have in common. */
final class Sheets {
    static final Set<String> REPEATS = Set.of("insertion", "take");

    private Sheets() {}

    /** The curves of levels that are some. */
    static List<CurveReading> levels(Session session, Predicate<CurveReading> wanted) {
        return session.readings().stream()
                .filter(r -> r.values() == Reading.Values.LEVELS)
                .filter(wanted)
                .toList();
    }

    static boolean isQuiet(Session session, CurveReading reading) {
        return session.stimulusOf(reading.conditions())
                .filter(Stimulus::isQuiet)
                .isPresent();
    }

    /** Curves of levels under a sound. */
    static List<CurveReading> sounding(Session session, Predicate<CurveReading> wanted) {
        return levels(session, wanted.and(r -> !isQuiet(session, r)));
    }

    static List<CurveReading> openEars(Session session) {
        return sounding(session, CurveReading::isOpenEar);
    }

    static List<CurveReading> fields(Session session) {
        return sounding(session, CurveReading::isFieldMicrophone);
    }

    static List<CurveReading> inPlace(Session session) {
        return sounding(session, CurveReading::isInPlace);
    }

    /** Readings that are equal in all but some conditions, in the order of the file. */
    static Map<Conditions, List<CurveReading>> grouped(List<CurveReading> readings, Set<String> but) {
        Map<Conditions, List<CurveReading>> groups = new LinkedHashMap<>();
        readings.forEach(r -> groups.computeIfAbsent(r.conditions().without(but), k -> new ArrayList<>())
                .add(r));
        return groups;
    }

    /** The measured levels of a reading; bounds are left out. */
    static NavigableMap<Band, Double> curve(CurveReading reading) {
        Spectrum spectrum = reading.spectrum();
        int bands = spectrum.bandList().size();
        Ascending levels = new Ascending(bands);
        for (int i = 0; i < bands; i++) {
            if (spectrum.boundOf(i) == Bound.MEASURED) {
                levels.add(spectrum.bandList().get(i), spectrum.levelDb(i));
            }
        }
        return levels.curve();
    }

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

    static NavigableMap<Band, Double> meanOf(List<CurveReading> readings) {
        return mean(readings.stream().map(Sheets::curve).toList());
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

    /** What the session declares of causes shared by each reading, in a band: the root of the sum of their squares. */
    static double readingDb(Session session, Band band) {
        return declaredDb(session, band, SharedBy.READING);
    }

    /** What the session declares of causes shared by each insertion, in a band. */
    static double insertionDb(Session session, Band band) {
        return declaredDb(session, band, SharedBy.INSERTION);
    }

    private static double declaredDb(Session session, Band band, SharedBy sharedBy) {
        if (!(session.uncertainty() instanceof Uncertainty.Declared declared)) {
            return 0;
        }
        return Math.sqrt(declared.causes().stream()
                .filter(c -> c.sharedBy() == sharedBy && c.unit() == Unit.DB)
                .mapToDouble(c -> c.sizeAt(band.nominalHz()))
                .map(size -> size * size)
                .sum());
    }

    /**
     * Standard deviation, by what is declared of readings, of the mean of a curve over bands: causes that move all bands
     * together stay, those independent across bands average out.
     */
    static double meanReadingDb(Session session, Collection<Band> bands) {
        return meanDb(session, bands, SharedBy.READING);
    }

    /** The same by what is declared of insertions. */
    static double meanInsertionDb(Session session, Collection<Band> bands) {
        return meanDb(session, bands, SharedBy.INSERTION);
    }

    private static double meanDb(Session session, Collection<Band> bands, SharedBy sharedBy) {
        if (!(session.uncertainty() instanceof Uncertainty.Declared declared) || bands.isEmpty()) {
            return 0;
        }
        return Math.sqrt(declared.causes().stream()
                .filter(c -> c.sharedBy() == sharedBy && c.unit() == Unit.DB)
                .mapToDouble(c -> ofMean(c, bands))
                .sum());
    }

    private static double ofMean(Cause cause, Collection<Band> bands) {
        double sum = bands.stream()
                .mapToDouble(b -> cause.sizeAt(b.nominalHz()))
                .map(size -> cause.independentAcrossBands() ? size * size : size)
                .sum();
        double mean = sum / bands.size();
        return cause.independentAcrossBands() ? mean / bands.size() : mean * mean;
    }

    /** Whether a reading is of pink noise, whose third octaves and octaves are all as loud. */
    static boolean isPink(Session session, CurveReading reading) {
        return Levels.kind(session, reading).toLowerCase(Locale.ROOT).contains("pink");
    }

    /** Whether the bands are as narrow as a resolution, or narrower. */
    static boolean isAsFineAs(Resolution resolution, NavigableMap<Band, Double> curve) {
        return !curve.isEmpty() && !curve.firstKey().resolution().isCoarserThan(resolution);
    }

    /** The gain of the open ear over the field, by stimulus, where both were measured. */
    static Map<Conditions, NavigableMap<Band, Double>> openEarGains(Session session) {
        Map<Conditions, NavigableMap<Band, Double>> gains = new LinkedHashMap<>();
        List<CurveReading> fields = fields(session);
        grouped(openEars(session), REPEATS).forEach((conditions, takes) -> {
            List<CurveReading> field = fields.stream()
                    .filter(f -> f.get("stimulus").equals(conditions.get("stimulus")))
                    .toList();
            NavigableMap<Band, Double> gain = less(meanOf(takes), meanOf(field));
            if (!gain.isEmpty()) {
                gains.put(conditions, gain);
            }
        });
        return gains;
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

    /** How a finding names readings: without the session, which it names beside. */
    static String name(Conditions conditions) {
        return conditions.without(Set.of("session")).toString();
    }

    /** The level of a stimulus in dB SPL. */
    static Optional<Double> levelDb(Session session, CurveReading reading) {
        return session.stimulusOf(reading.conditions()).flatMap(s -> s.levelIn(Unit.DB_SPL));
    }
}
