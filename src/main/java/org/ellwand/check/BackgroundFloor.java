package org.ellwand.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Bound;
import org.ellwand.acoustics.Spectrum;
import org.ellwand.check.Finding.Consequence;
import org.ellwand.check.Finding.Errs;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Reading;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.Subtracted;
import org.ellwand.words.Remark;

/**
 * Holds each reading under a sound against the background: the reading in quiet of the same session, ear and state of the
 * device (of the same insertion where there is one).
 *
 * <p>d is the level less the background, band by band. From {@link #CLEAR_DB} on the level is used as it is: it reads high
 * by at most 0.14 dB. From {@link #LOWEST_DB} on the background's energy is subtracted,
 * L' = 10 lg (10^(L/10) − 10^(A/10)), and the uncertainty grows, u'² = (u² + (q·u_A)²) / (1 − q)², q = 10^(−d/10). Below
 * that the level is only known to be at most L − {@link #LARGEST_CORRECTION_DB}: a product in place gives a bound, and
 * an open ear or a field microphone is left out in that band. The scheme of 6 and 15 dB is that of the standards of sound
 * power and sound insulation (ISO 3744, ISO 10140-4, from memory); the largest correction is 10 lg (1 − 10^−0.6).
 *
 * <p>A background hides attenuation in readings in place and invents it in readings of the open ear. A product whose gain
 * falls with level has, under a sound, at most the background it has in quiet. A sound reading has this finding only where
 * it lies that near its background: it accuses nobody of a fault.
 */
public final class BackgroundFloor {
    /** The name of this check in findings. */
    public static final String NAME = "background noise";

    /** A level so far above its background is used as it is, dB. */
    public static final double CLEAR_DB = 15;

    /** A level less far above its background only bounds the true one, dB. */
    public static final double LOWEST_DB = 6;

    /** What subtracting takes off at {@link #LOWEST_DB}, dB. */
    public static final double LARGEST_CORRECTION_DB = -10 * Math.log10(1 - Math.pow(10, -LOWEST_DB / 10));

    /** What a reading in quiet need not have in common with what it belongs to; nor a declared condition that it lacks. */
    private static final Set<String> FREE = Set.of("stimulus", "insertion", "take");

    private final Session session;
    private final List<CurveReading> quiet;
    private final List<Finding> findings = new ArrayList<>();
    private final SortedSet<String> without = new TreeSet<>();
    private final Map<Key, Worst> seen = new TreeMap<>();

    private BackgroundFloor(Session session) {
        this.session = session;
        this.quiet = quiet(session);
    }

    /**
     * A session with its backgrounds taken into account.
     *
     * @param session with corrected levels and bounds
     */
    record Corrected(Session session, List<Finding> findings, List<NotChecked> notChecked) {}

    static Corrected correct(Session session) {
        BackgroundFloor floor = new BackgroundFloor(session);
        List<CurveReading> readings =
                session.readings().stream().map(floor::corrected).toList();
        floor.report();
        List<NotChecked> notChecked = floor.without.stream()
                .map(what -> new NotChecked(NAME, session.id(), "no reading in quiet of " + what))
                .toList();
        return new Corrected(session.withReadings(readings), floor.findings, notChecked);
    }

    private CurveReading corrected(CurveReading reading) {
        if (reading.values() != Reading.Values.LEVELS || Sheets.isQuiet(session, reading)) {
            return reading;
        }
        List<CurveReading> own = quiet(session, quiet, reading);
        if (own.isEmpty()) {
            without.add(reading.device());
            return reading;
        }
        return new Correction(reading, own).made();
    }

    /** All readings in quiet of a session. */
    static List<CurveReading> quiet(Session session) {
        return Sheets.levels(session, r -> Sheets.isQuiet(session, r));
    }

    /** Readings in quiet that belong to one: those of the same insertion where there are any, else all of the same state. */
    static List<CurveReading> quiet(Session session, List<CurveReading> quiet, CurveReading reading) {
        List<CurveReading> same =
                quiet.stream().filter(r -> sameState(session, r, reading)).toList();
        List<CurveReading> own = same.stream()
                .filter(r -> r.get("insertion").equals(reading.get("insertion")))
                .toList();
        return own.isEmpty() ? same : own;
    }

    private static boolean sameState(Session session, CurveReading quiet, CurveReading reading) {
        // Asked of every pair of readings: plain loops.
        Map<String, String> here = quiet.conditions().values();
        Map<String, String> there = reading.conditions().values();
        for (Map.Entry<String, String> one : here.entrySet()) {
            if (!FREE.contains(one.getKey()) && !one.getValue().equals(there.get(one.getKey()))) {
                return false;
            }
        }
        for (String name : there.keySet()) {
            if (!FREE.contains(name)
                    && !here.containsKey(name)
                    && !session.declaredConditions().contains(name)) {
                return false;
            }
        }
        return true;
    }

    /** The correction of one reading. */
    private final class Correction {
        private final CurveReading reading;
        private final List<CurveReading> quiet;
        private final LevelCurve backgroundDb;
        private final Map<Band, Spectrum.Level> levels = new TreeMap<>();
        private final Map<Band, Double> shares = new TreeMap<>();

        Correction(CurveReading reading, List<CurveReading> quiet) {
            this.reading = reading;
            this.quiet = quiet;
            this.backgroundDb = Sheets.meanOf(quiet);
        }

        CurveReading made() {
            reading.spectrum().levels().forEach((band, level) -> {
                int background = backgroundDb.place(band);
                if (background < 0) {
                    levels.put(band, level);
                } else {
                    band(band, level.levelDb(), level.levelDb() - backgroundDb.numbers()[background]);
                }
            });
            return reading.with(
                    new Spectrum(reading.spectrum().resolution(), levels),
                    new Subtracted(quiet, backgroundDb.asMap(), shares));
        }

        private void band(Band band, double levelDb, double aboveDb) {
            if (aboveDb >= CLEAR_DB) {
                levels.put(band, Spectrum.Level.measured(levelDb));
            } else if (aboveDb >= LOWEST_DB) {
                double share = Math.pow(10, -aboveDb / 10);
                shares.put(band, share);
                levels.put(band, Spectrum.Level.measured(levelDb + 10 * Math.log10(1 - share)));
                note(Consequence.WIDENED, band, aboveDb);
            } else if (reading.isInPlace()) {
                levels.put(band, new Spectrum.Level(levelDb - LARGEST_CORRECTION_DB, Bound.AT_MOST));
                note(Consequence.BOUNDED, band, aboveDb);
            } else {
                note(Consequence.UNUSABLE, band, aboveDb);
            }
        }

        private void note(Consequence consequence, Band band, double aboveDb) {
            seen.computeIfAbsent(
                            new Key(reading.conditions().without(Sheets.REPEATS), consequence), k -> new Worst(reading))
                    .add(band, aboveDb);
        }
    }

    /** Readings that differ in insertion and take only, and what follows for them. */
    private record Key(Conditions conditions, Consequence consequence) implements Comparable<Key> {
        @Override
        public int compareTo(Key other) {
            int byConditions = conditions.toString().compareTo(other.conditions.toString());
            return byConditions != 0 ? byConditions : consequence.compareTo(other.consequence);
        }
    }

    /** The bands of such readings, and the level nearest to its background. */
    private static final class Worst {
        private final CurveReading reading;
        private final SortedSet<Band> bands = new TreeSet<>();
        private double aboveDb = Double.POSITIVE_INFINITY;

        Worst(CurveReading reading) {
            this.reading = reading;
        }

        void add(Band band, double above) {
            bands.add(band);
            aboveDb = Math.min(aboveDb, above);
        }
    }

    private void report() {
        seen.forEach((key, worst) -> findings.add(finding(key, worst)));
    }

    private Finding finding(Key key, Worst worst) {
        double threshold = key.consequence() == Consequence.WIDENED ? CLEAR_DB : LOWEST_DB;
        Remark remark = Remark.of(follows(key.consequence()))
                .with("above", worst.aboveDb)
                .with("threshold", threshold);
        return new Finding(
                NAME,
                session.id(),
                Sheets.name(key.conditions()),
                Curves.hertz(worst.bands),
                remark,
                errs(worst.reading),
                key.consequence(),
                Optional.of(new Finding.Measure(worst.aboveDb, threshold, "dB")),
                Finding.About.EVERYTHING);
    }

    private static String follows(Consequence consequence) {
        return switch (consequence) {
            case WIDENED -> "background-subtracted";
            case BOUNDED -> "background-bounds";
            case UNUSABLE, NOTED -> "background-too-near";
        };
    }

    private static Errs errs(CurveReading reading) {
        return reading.isInPlace()
                ? Errs.HIDES_ATTENUATION
                : reading.isOpenEar() ? Errs.INVENTS_ATTENUATION : Errs.EITHER;
    }
}
