package org.ellwand.sound;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Resolution;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** A second of sound at 48 kHz through the third octaves from 100 Hz to 8 kHz on the ladder of rates, beside all at one rate. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class FilterBench {
    private static final double RATE_HZ = 48_000;
    private static final int LOWEST = -10;
    private static final int HIGHEST = 9;

    private final List<Band> bands = IntStream.rangeClosed(LOWEST, HIGHEST)
            .mapToObj(index -> new Band(Resolution.THIRD_OCTAVE, index))
            .toList();
    private final double[] block = noise();

    private static double[] noise() {
        SplittableRandom random = new SplittableRandom(1);
        return IntStream.range(0, SoundMeter.BLOCK)
                .mapToDouble(i -> random.nextDouble() - 0.5)
                .toArray();
    }

    private static int blocks() {
        return (int) (RATE_HZ / SoundMeter.BLOCK);
    }

    @Benchmark
    public double ours() {
        List<BandMeter> meters =
                bands.stream().map(band -> new BandMeter(band, RATE_HZ)).toList();
        int steps = 1 + meters.stream().mapToInt(BandMeter::step).max().orElseThrow();
        Ladder ladder = new Ladder(RATE_HZ, steps, SoundMeter.BLOCK);
        for (int i = 0; i < blocks(); i++) {
            ladder.feed(block, block.length);
            meters.forEach(meter -> meter.feed(ladder));
        }
        return meters.stream().mapToDouble(BandMeter::energy).sum();
    }

    @Benchmark
    public double insteadAllAtOneRate() {
        List<BandPass> filters = new ArrayList<>();
        bands.forEach(band -> filters.add(new BandPass(band.lowerEdgeHz(), band.upperEdgeHz(), 2 * RATE_HZ)));
        double energy = 0;
        for (int i = 0; i < 2 * blocks(); i++) {
            for (BandPass filter : filters) {
                energy += filter.energy(block, block.length);
            }
        }
        return energy;
    }
}
