package org.ellwand.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.ellwand.amount.Unit;
import org.ellwand.check.Finding.Consequence;
import org.ellwand.check.Finding.Errs;
import org.ellwand.check.Finding.Measure;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.HarmonicReading;
import org.ellwand.measurement.Session;
import org.ellwand.words.Remark;

/**
 * Harmonics that are noise. What an analyser reads at a multiple of the tone is the harmonic and the noise in its filter together, so that a
 * distortion never reads low by noise, and reads high where the harmonics lie near it. The noise is that of the product in quiet in the band that holds
 * the harmonic, which no narrower filter exceeds: a harmonic less than 6 dB above it may be noise for the most part (10 lg(1 − 10^(−0.6)) = −1.26 dB
 * are the noise's at 6 dB; the scheme is that of {@link BackgroundFloor}). Such a reading is a bound: a distortion may be less, and cannot fail. Without quiet, harmonics from the
 * second on that number four or more and differ by less than {@link #FLAT_DB} in all are noted: a curved characteristic makes them fall, and noise
 * of one filter width does not (common practice, no source). Accuses fewer than 1 in 1000 sound sessions.
 */
final class HarmonicFloor implements DataCheck {
    static final String AT_NOISE = "harmonics-at-noise";

    private static final double CLEAR_DB = 6;
    private static final double FLAT_DB = 2;
    private static final int SEVERAL = 4;

    /** So far below the strongest, harmonics change a sum of powers by less than 1 %. */
    private static final double COUNTS_DB = 20;

    private static final Set<String> TAKING = Set.of("stimulus", "insertion", "take", "session");

    @Override
    public String name() {
        return "harmonics and noise";
    }

    @Override
    public String needs() {
        return "harmonics";
    }

    @Override
    public Checked check(Material material) {
        Session session = material.asRead();
        Tally tally = new Tally(this, session);
        for (HarmonicReading reading : session.harmonics()) {
            NavigableMap<Integer, Double> harmonics = new TreeMap<>(reading.levelDbByOrder()).tailMap(2, true);
            if (!harmonics.isEmpty()) {
                tally.looked();
                Map<Integer, Double> noise = noise(session, reading, harmonics);
                if (noise.isEmpty()) {
                    flat(tally, reading, harmonics);
                } else {
                    near(tally, reading, harmonics, noise);
                }
            }
        }
        return tally.done();
    }

    /** The noise in the band of each harmonic, where the product was read in quiet and the tone is known. */
    private static Map<Integer, Double> noise(
            Session session, HarmonicReading reading, NavigableMap<Integer, Double> harmonics) {
        Conditions state = reading.conditions().without(TAKING);
        List<CurveReading> quiet = Sheets.levels(
                session,
                r -> Sheets.isQuiet(session, r)
                        && r.conditions().without(TAKING).equals(state));
        Optional<Double> toneHz = reading.fundamental().map(tone -> tone.in(Unit.HZ));
        if (quiet.isEmpty() || toneHz.isEmpty()) {
            return Map.of();
        }
        LevelCurve floor = Sheets.meanOf(quiet);
        Map<Integer, Double> noise = new TreeMap<>();
        harmonics
                .keySet()
                .forEach(order -> floor.forEach((band, level) -> {
                    double hz = order * toneHz.get();
                    if (hz >= band.lowerEdgeHz() && hz < band.upperEdgeHz()) {
                        noise.put(order, level);
                    }
                }));
        return noise;
    }

    private static void near(
            Tally tally, HarmonicReading reading, Map<Integer, Double> harmonics, Map<Integer, Double> noise) {
        double strongest = harmonics.values().stream().mapToDouble(d -> d).max().orElseThrow();
        List<Integer> orders = new ArrayList<>();
        double least = CLEAR_DB;
        for (Map.Entry<Integer, Double> harmonic : harmonics.entrySet()) {
            double above = harmonic.getValue() - noise.getOrDefault(harmonic.getKey(), Double.NEGATIVE_INFINITY);
            if (above < CLEAR_DB && harmonic.getValue() > strongest - COUNTS_DB) {
                orders.add(harmonic.getKey());
                least = Math.min(least, above);
            }
        }
        if (!orders.isEmpty()) {
            tally.add(
                    reading.named().conditions(),
                    List.of(),
                    Errs.READS_HIGH,
                    Consequence.BOUNDED,
                    new Measure(least, CLEAR_DB, "dB"),
                    Remark.of(AT_NOISE)
                            .with("orders", orders)
                            .with("above", least)
                            .with("threshold", CLEAR_DB));
        }
    }

    private static void flat(Tally tally, HarmonicReading reading, Map<Integer, Double> harmonics) {
        double highest = harmonics.values().stream().mapToDouble(d -> d).max().orElseThrow();
        double lowest = harmonics.values().stream().mapToDouble(d -> d).min().orElseThrow();
        if (harmonics.size() >= SEVERAL && highest - lowest < FLAT_DB) {
            tally.add(
                    reading.named().conditions(),
                    List.of(),
                    Errs.READS_HIGH,
                    Consequence.NOTED,
                    new Measure(highest - lowest, FLAT_DB, "dB"),
                    Remark.of("harmonics-flat")
                            .with("harmonics", harmonics.size())
                            .with("apart", highest - lowest)
                            .with("threshold", FLAT_DB));
        }
    }
}
