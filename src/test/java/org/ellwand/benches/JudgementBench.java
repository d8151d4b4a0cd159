package org.ellwand.benches;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.apache.commons.math3.random.Well19937c;
import org.ellwand.statistics.MixedErrors;
import org.ellwand.statistics.NormalErrors;
import org.ellwand.statistics.NormalStream;
import org.ellwand.statistics.Scatter;
import org.ellwand.statistics.Seeds;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/**
 * The probability that one limit holds, in closed form, beside counting 100 000 draws, which tell it to 0.001. The errors are
 * normal, or normal with the scatter of three insertions beside it.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class JudgementBench {
    private static final int TRIALS = 100_000;
    private static final double NORMAL_DB = 0.4;
    private static final double SCATTER_DB = 0.5;
    private static final double TO_THE_LIMIT_DB = 1.1;

    private final NormalStream stream = new NormalStream(Seeds.of("bench"));
    private final Well19937c chi = new Well19937c(1);

    @Benchmark
    public double oursNormal() {
        return new NormalErrors(NORMAL_DB).atMost(TO_THE_LIMIT_DB);
    }

    @Benchmark
    public double oursWithScatter() {
        return new MixedErrors(NORMAL_DB, List.of(new Scatter(2, SCATTER_DB))).atMost(TO_THE_LIMIT_DB);
    }

    @Benchmark
    public double insteadNormal() {
        int inside = 0;
        for (int i = 0; i < TRIALS; i++) {
            inside += NORMAL_DB * stream.next() <= TO_THE_LIMIT_DB ? 1 : 0;
        }
        return (double) inside / TRIALS;
    }

    /** The square of a chi of two degrees of freedom is twice an exponential draw. */
    @Benchmark
    public double insteadWithScatter() {
        int inside = 0;
        for (int i = 0; i < TRIALS; i++) {
            double t = stream.next() / Math.sqrt(-Math.log(1 - chi.nextDouble()));
            inside += NORMAL_DB * stream.next() + SCATTER_DB * t <= TO_THE_LIMIT_DB ? 1 : 0;
        }
        return (double) inside / TRIALS;
    }
}
