package org.ellwand.statistics;

import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ContinuousSampler;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.apache.commons.rng.simple.RandomSource;

/**
 * An endless stream of standard normal draws that depends on its seed alone. Generator XO_SHI_RO_256_PP with the modified
 * ziggurat of commons-rng: the same numbers on every Java version, which those of {@code java.util.random} are not.
 */
public final class NormalStream {
    private final ContinuousSampler sampler;

    /**
     * A stream at its beginning.
     *
     * @param seed the same gives the same draws; see {@link Seeds}
     */
    public NormalStream(long seed) {
        UniformRandomProvider source = RandomSource.XO_SHI_RO_256_PP.create(seed);
        sampler = ZigguratSampler.NormalizedGaussian.of(source);
    }

    /** {@return the next draw, of mean 0 and standard deviation 1} */
    public double next() {
        return sampler.sample();
    }

    /**
     * Adds {@code size} times the next draws to the first {@code count} elements.
     *
     * @param target changed in place
     * @param count how many, at most the length of {@code target}
     * @param size standard deviation of what is added
     */
    public void addTo(double[] target, int count, double size) {
        for (int i = 0; i < count; i++) {
            target[i] += size * sampler.sample();
        }
    }

    /**
     * Fills the first {@code count} elements with the next draws.
     *
     * @param target changed in place
     * @param count how many, at most the length of {@code target}
     */
    public void fill(double[] target, int count) {
        for (int i = 0; i < count; i++) {
            target[i] = sampler.sample();
        }
    }
}
