package org.ellwand.check;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Bound;
import org.ellwand.acoustics.Spectrum;
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

    /**
     * Of each sound the first reading of the field microphone whose bands take in 125 Hz to 8 kHz, so that their sum is about the level of
     * the sound. A later reading that differs from the first is a drift ({@link FieldDrift}).
     */
    static List<CurveReading> wholeFields(Session session) {
        return grouped(fields(session), REPEATS).values().stream()
                .map(takes -> takes.get(0))
                .filter(reading -> {
                    LevelCurve curve = curve(reading);
                    return Curves.at(curve, 125).isPresent()
                            && Curves.at(curve, 8000).isPresent();
                })
                .toList();
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
    static LevelCurve curve(CurveReading reading) {
        Spectrum spectrum = reading.spectrum();
        if (spectrum.isMeasured()) {
            return new LevelCurve(spectrum.bandList(), spectrum.levelsDb());
        }
        int[] measured = IntStream.range(0, spectrum.bandList().size())
                .filter(i -> spectrum.boundOf(i) == Bound.MEASURED)
                .toArray();
        return new LevelCurve(
                Arrays.stream(measured).mapToObj(spectrum.bandList()::get).toList(),
                Arrays.stream(measured).mapToDouble(spectrum::levelDb).toArray());
    }

    /**
     * Readings whose means can be held against each other: those that have half of the bands of the fullest at least. Where a
     * background left a reading hardly a band, its mean is of other bands than theirs.
     */
    static List<CurveReading> comparable(List<CurveReading> readings) {
        int most = readings.stream().mapToInt(r -> curve(r).size()).max().orElse(0);
        return readings.stream()
                .filter(r -> 2 * curve(r).size() >= Math.max(1, most))
                .toList();
    }

    static LevelCurve meanOf(List<CurveReading> readings) {
        return Curves.mean(readings.stream().map(Sheets::curve).toList());
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
        double squares = 0;
        for (Cause cause : declared.causes()) {
            if (cause.sharedBy() == sharedBy && cause.unit() == Unit.DB) {
                double size = cause.sizeAt(band.nominalHz());
                squares += size * size;
            }
        }
        return Math.sqrt(squares);
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

    /** The same by what is declared of a session as a whole. */
    static double meanSessionDb(Session session, Collection<Band> bands) {
        return meanDb(session, bands, SharedBy.SESSION);
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

    /** The gain of the open ear over the field, by stimulus, where both were measured. */
    static Map<Conditions, LevelCurve> openEarGains(Session session) {
        Map<Conditions, LevelCurve> gains = new LinkedHashMap<>();
        List<CurveReading> fields = fields(session);
        grouped(openEars(session), REPEATS).forEach((conditions, takes) -> {
            List<CurveReading> field = fields.stream()
                    .filter(f -> f.get("stimulus").equals(conditions.get("stimulus")))
                    .toList();
            LevelCurve gain = Curves.less(meanOf(takes), meanOf(field));
            if (!gain.isEmpty()) {
                gains.put(conditions, gain);
            }
        });
        return gains;
    }

    /** How a finding names readings: without the session, which it names beside. */
    static String name(Conditions conditions) {
        return conditions.without(Set.of("session")).toString();
    }

    /** The level of a stimulus in dB SPL. */
    static Optional<Double> levelDb(Session session, CurveReading reading) {
        return levelIn(session, reading, Unit.DB_SPL);
    }

    /** The level of a stimulus, where it is stated in this unit. */
    static Optional<Double> levelIn(Session session, CurveReading reading, Unit unit) {
        return session.stimulusOf(reading.conditions()).flatMap(s -> s.levelIn(unit));
    }
}
