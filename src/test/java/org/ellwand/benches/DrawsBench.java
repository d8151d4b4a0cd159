package org.ellwand.benches;

import java.util.Random;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.ellwand.statistics.NormalStream;
import org.ellwand.statistics.Seeds;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** One normal draw, beside those that come with Java (of which the second differs from one Java to the next). */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class DrawsBench {
    private static final int DRAWS = 10_000;

    private final double[] draws = new double[DRAWS];
    private final NormalStream stream = new NormalStream(Seeds.of("bench"));
    private final Random random = new Random(1);
    private final SplittableRandom splittable = new SplittableRandom(1);

    @Benchmark
    @OperationsPerInvocation(DRAWS)
    public double[] ours() {
        stream.fill(draws, DRAWS);
        return draws;
    }

    @Benchmark
    @OperationsPerInvocation(DRAWS)
    public double[] insteadRandom() {
        for (int i = 0; i < DRAWS; i++) {
            draws[i] = random.nextGaussian();
        }
        return draws;
    }

    @Benchmark
    @OperationsPerInvocation(DRAWS)
    public double[] insteadSplittable() {
        for (int i = 0; i < DRAWS; i++) {
            draws[i] = splittable.nextGaussian();
        }
        return draws;
    }
}
