package org.ellwand.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Resolution;
import org.ellwand.measurement.SharedBy;
import org.ellwand.quantity.Computation;
import org.ellwand.quantity.Outcome;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** The mean attenuation of three insertions in 19 bands from their levels, as every trial computes it, beside maps of curves. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class CurvesBench {
    private static final int BANDS = 19;
    private static final int INSERTIONS = 3;

    private final Workings workings = Workings.of(
            "quantity: attenuation, level: 94 dB SPL, bands: 125 Hz to 8 kHz, statistic: mean, limit: at least 15 dB",
            Outcome.MEAN,
            bench().session());
    private final Computation computation = workings.estimates().computation;
    private final double[][] levelsDb = workings.preparation().levelsDb();
    private final double[] out = new double[1];
    private final NavigableMap<Band, Double> open = curve(80);
    private final List<NavigableMap<Band, Double>> inPlace = new ArrayList<>();

    public CurvesBench() {
        for (int i = 0; i < INSERTIONS; i++) {
            inPlace.add(curve(60 + i));
        }
    }

    private static Bench bench() {
        Bench bench = new Bench("crew-01", Resolution.THIRD_OCTAVE)
                .cause("insertion", 1, SharedBy.INSERTION, false)
                .cause("reading", 0.5, SharedBy.READING, true)
                .reading("device=open ear, stimulus=n94", 125, levels(80));
        for (int i = 0; i < INSERTIONS; i++) {
            bench.reading("device=Skerry, stimulus=n94, insertion=" + (i + 1), 125, levels(60 + i));
        }
        return bench;
    }

    private static double[] levels(double firstDb) {
        double[] levels = new double[BANDS];
        for (int b = 0; b < BANDS; b++) {
            levels[b] = firstDb + 0.1 * b;
        }
        return levels;
    }

    private static NavigableMap<Band, Double> curve(double firstDb) {
        NavigableMap<Band, Double> curve = new TreeMap<>();
        double[] levels = levels(firstDb);
        for (int b = 0; b < BANDS; b++) {
            curve.put(new Band(Resolution.THIRD_OCTAVE, b - 9), levels[b]);
        }
        return curve;
    }

    @Benchmark
    public double ours() {
        computation.compute(levelsDb, out);
        return out[0];
    }

    @Benchmark
    public double insteadMaps() {
        double sum = 0;
        for (NavigableMap<Band, Double> curve : inPlace) {
            for (var level : curve.entrySet()) {
                sum += open.getOrDefault(level.getKey(), 0.0) - level.getValue();
            }
        }
        return sum / (BANDS * INSERTIONS);
    }
}
