package org.ellwand.check;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Weighting;
import org.ellwand.check.Finding.Consequence;
import org.ellwand.check.Finding.Errs;
import org.ellwand.check.Finding.Measure;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Reading;
import org.ellwand.measurement.Session;
import org.ellwand.words.Remark;

/**
 * A level that was referred to something else than its name says.
 *
 * <p>Gain over the field in the place of gain over the open ear: the level in the ear less the field's holds the resonance of the
 * ear, some 17 dB near 2.7 kHz, which a difference of two levels in the same ear does not. A gain that follows the gain of
 * the open ear (correlation above 0.8 and at least half its size) is accused of it. The ear's gain is the session's own where
 * open ear and field microphone were read, else the average one: free field to eardrum, frontal, ANSI S3.4-2007 (numbers as read in an
 * auditory-model toolbox). A hearing aid made to give back that resonance has this finding too, so it is noted only.
 *
 * <p>Differences in the place of levels: under a sound of {@value #LOUD_DB} dB and more no ear, open or plugged, reads {@value
 * #BEYOND_BONE_DB} dB less than the sound has, because bone passes more. (Thresholds: common practice, no source.) Accuses fewer than 1 in 1000 sound
 * sessions.
 */
final class ReferenceMixUp implements DataCheck {
    private static final double CORRELATION = 0.8;
    private static final double SHARE = 0.5;
    private static final double LOUD_DB = 70;
    private static final double BEYOND_BONE_DB = 60;
    private static final double OFF_BACKGROUND_DB = 10;
    private static final double LOWEST_HZ = 250;
    private static final double HIGHEST_HZ = 8000;
    private static final int FEWEST = 6;
    private static final double LEAST_PEAK_DB = 10;

    /** Gain of the average ear by nominal frequency, third octaves from 250 Hz to 8 kHz, dB. */
    private static final Map<Double, Double> AVERAGE = Map.ofEntries(
            Map.entry(250.0, 0.9),
            Map.entry(315.0, 1.4),
            Map.entry(400.0, 1.9),
            Map.entry(500.0, 2.3),
            Map.entry(630.0, 2.8),
            Map.entry(800.0, 3.2),
            Map.entry(1000.0, 2.6),
            Map.entry(1250.0, 3.1),
            Map.entry(1600.0, 7.5),
            Map.entry(2000.0, 12.5),
            Map.entry(2500.0, 16.8),
            Map.entry(3150.0, 16.1),
            Map.entry(4000.0, 14.2),
            Map.entry(5000.0, 10.7),
            Map.entry(6300.0, 6.3),
            Map.entry(8000.0, 1.0));

    @Override
    public String name() {
        return "reference of a gain";
    }

    @Override
    public String needs() {
        return "the attenuation or insertion gain of six bands from 250 Hz to 8 kHz";
    }

    @Override
    public Checked check(Material material) {
        Session session = material.session();
        Tally tally = new Tally(this, session);
        Attenuations ears = material.attenuations();
        List<CurveReading> quiet = BackgroundFloor.quiet(material.asRead());
        Map<Conditions, List<LevelCurve>> gains = new LinkedHashMap<>();
        session.readings()
                .forEach(reading -> gain(session, ears, reading)
                        .ifPresent(gain -> gains.computeIfAbsent(
                                        reading.conditions().without(Sheets.REPEATS), k -> new ArrayList<>())
                                .add(gain)));
        Map<Conditions, LevelCurve> ownEars = Sheets.openEarGains(session);
        Map<Optional<String>, LevelCurve> own = new HashMap<>();
        Average average = new Average();
        gains.forEach((of, curves) -> {
            LevelCurve ear = own.computeIfAbsent(of.get("ear"), name -> ownGain(ownEars, name));
            LevelCurve gain = Curves.mean(curves);
            follows(tally, earGain(ear, average, gain), of, gain);
        });
        Sheets.sounding(material.asRead(), r -> !r.isFieldMicrophone())
                .forEach(reading -> level(tally, material.asRead(), quiet, reading));
        return tally.done();
    }

    /** The insertion gain of a reading in place; nothing where its open ear is missing. */
    private static Optional<LevelCurve> gain(Session session, Attenuations ears, CurveReading reading) {
        if (!reading.isInPlace() || Sheets.isQuiet(session, reading)) {
            return Optional.empty();
        }
        Optional<LevelCurve> curve =
                reading.values() == Reading.Values.LEVELS ? ears.of(reading) : Optional.of(Sheets.curve(reading));
        boolean isGain = reading.values() == Reading.Values.INSERTION_GAIN;
        return curve.map(differences -> Curves.between(differences, LOWEST_HZ, HIGHEST_HZ))
                .map(differences -> isGain ? differences : differences.negated());
    }

    private static void follows(Tally tally, LevelCurve ear, Conditions of, LevelCurve gain) {
        if (ear.size() < FEWEST) {
            return;
        }
        tally.looked();
        LevelCurve common = gain.at(ear.bands());
        double product = product(common, ear);
        double earSquare = product(ear, ear);
        double correlation = product / Math.sqrt(product(common, common) * earSquare);
        double share = product / earSquare;
        if (correlation > CORRELATION && share > SHARE) {
            tally.add(
                    of,
                    common.bands(),
                    Errs.HIDES_ATTENUATION,
                    Consequence.NOTED,
                    new Measure(correlation, CORRELATION, "correlation"),
                    Remark.of("gain-over-field")
                            .with("correlation", correlation)
                            .with("threshold", CORRELATION));
        }
    }

    /** The gain of the session's own ear of a name, where it was measured. */
    private static LevelCurve ownGain(Map<Conditions, LevelCurve> ownEars, Optional<String> ear) {
        Map<Band, Double> own = new TreeMap<>();
        ownEars.forEach((open, gain) -> {
            if (open.get("ear").equals(ear)) {
                Curves.between(gain, LOWEST_HZ, HIGHEST_HZ).forEach(own::put);
            }
        });
        return LevelCurve.of(own);
    }

    /** Of the session's own ear, where it sounds like one; else of the average ear; at bands that a curve has. */
    private static LevelCurve earGain(LevelCurve own, Average average, LevelCurve like) {
        boolean soundsLikeOne = Arrays.stream(own.numbers()).anyMatch(db -> db > LEAST_PEAK_DB);
        LevelCurve ear = soundsLikeOne ? own : average.at(like);
        return ear.hasBandsOf(like)
                ? ear
                : ear.at(like.bands().stream()
                        .filter(band -> ear.place(band) >= 0)
                        .toList());
    }

    /** The gain of the average ear at the bands of a curve; of the curve that was asked for last it is kept. */
    private static final class Average {
        private LevelCurve last = LevelCurve.EMPTY;
        private LevelCurve gain = LevelCurve.EMPTY;

        LevelCurve at(LevelCurve like) {
            if (!like.hasBandsOf(last)) {
                last = like;
                gain = averageAt(like.bands());
            }
            return gain;
        }
    }

    private static LevelCurve averageAt(List<Band> bands) {
        List<Band> known =
                bands.stream().filter(b -> AVERAGE.containsKey(b.nominalHz())).toList();
        return new LevelCurve(
                known,
                known.stream()
                        .mapToDouble(b -> AVERAGE.getOrDefault(b.nominalHz(), 0.0))
                        .toArray());
    }

    /** Sum over the bands of the products of what lies off each curve's mean. */
    private static double product(LevelCurve one, LevelCurve other) {
        double meanOne = Curves.average(one);
        double meanOther = Curves.average(other);
        double[] products = new double[one.size()];
        for (int b = 0; b < products.length; b++) {
            products[b] = (one.numbers()[b] - meanOne) * (other.numbers()[b] - meanOther);
        }
        return Arrays.stream(products).sum();
    }

    private static void level(Tally tally, Session session, List<CurveReading> hush, CurveReading reading) {
        Optional<Double> stated = Sheets.levelDb(session, reading).filter(db -> db >= LOUD_DB);
        LevelCurve curve = Sheets.curve(reading);
        if (stated.isEmpty() || curve.size() < FEWEST) {
            return;
        }
        tally.looked();
        // The sum lies above its loudest band.
        double loudest = Double.NEGATIVE_INFINITY;
        for (double level : curve.numbers()) {
            loudest = Math.max(loudest, level);
        }
        if (stated.get() - loudest <= BEYOND_BONE_DB) {
            return;
        }
        double sum = Curves.overallDb(curve, Weighting.Z);
        double below = stated.get() - sum;
        // A tube that hears nothing reads its background; that is another fault.
        LevelCurve quiet = Sheets.meanOf(BackgroundFloor.quiet(session, hush, reading));
        boolean heard = !quiet.isEmpty() && sum > Curves.overallDb(quiet, Weighting.Z) - OFF_BACKGROUND_DB;
        if (below > BEYOND_BONE_DB && !heard) {
            tally.add(
                    reading.conditions(),
                    List.of(),
                    Errs.EITHER,
                    Consequence.UNUSABLE,
                    new Measure(below, BEYOND_BONE_DB, "dB"),
                    Remark.of("no-levels")
                            .with("sum", sum)
                            .with("stated", stated.get())
                            .with("below", below)
                            .with("threshold", BEYOND_BONE_DB));
        }
    }
}
