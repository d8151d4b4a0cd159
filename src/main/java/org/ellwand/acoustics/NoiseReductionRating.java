package org.ellwand.acoustics;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.ellwand.statistics.Sample;

/**
 * Noise Reduction Rating, 40 CFR 211.207 and its figure 2 (read): pink noise of 100 dB in each octave band, C-weighted, less the
 * same A-weighted and protected, less 3 dB for spectral uncertainty.
 *
 * <p>Protected means less the mean attenuation, plus two standard deviations. At 4 and 8 kHz the attenuations of two test
 * frequencies each are averaged (3150 and 4000 Hz, 6300 and 8000 Hz) and their deviations added instead of doubled. The figure
 * fixes 107.9 dB for the C-weighted sum, which is 107.954 dB to more digits. Its heading of step 5 says minus, its numbers add the
 * (signed) A-weighting.
 *
 * @param attenuation at {@link #FREQUENCIES_HZ}
 */
public record NoiseReductionRating(AttenuationTable attenuation) {
    /** Test frequencies, in Hz. */
    public static final List<Integer> FREQUENCIES_HZ = List.of(125, 250, 500, 1000, 2000, 3150, 4000, 6300, 8000);

    /** Octave bands of the computation: the test frequencies that each takes, in Hz. */
    private static final List<List<Integer>> BANDS = List.of(
            List.of(125),
            List.of(250),
            List.of(500),
            List.of(1000),
            List.of(2000),
            List.of(3150, 4000),
            List.of(6300, 8000));

    private static final double[] C_WEIGHTING_DB = {-0.2, 0, 0, 0, -0.2, -0.8, -3.0};
    private static final double[] A_WEIGHTING_DB = {-16.1, -8.6, -3.2, 0, 1.2, 1.0, -1.1};
    private static final double PINK_DB = 100;
    private static final double C_WEIGHTED_SUM_DB = 107.9;
    private static final double SPECTRAL_UNCERTAINTY_DB = 3;

    /** {@return step 3: the C-weighted levels of the pink noise in dB, by octave band from 125 Hz} */
    public double[] cWeightedDb() {
        return Arrays.stream(C_WEIGHTING_DB).map(c -> PINK_DB + c).toArray();
    }

    /** {@return step 5: the A-weighted levels of the pink noise in dB, by octave band from 125 Hz} */
    public double[] aWeightedDb() {
        return Arrays.stream(A_WEIGHTING_DB).map(a -> PINK_DB + a).toArray();
    }

    /**
     * {@return step 6: the mean attenuations in dB, by octave band from 125 Hz}
     *
     * @throws IllegalArgumentException where the table lacks one of {@link #FREQUENCIES_HZ}
     */
    public double[] meanDb() {
        return BANDS.stream().mapToDouble(band -> mean(band, Sample::mean)).toArray();
    }

    /**
     * {@return step 7: two standard deviations in dB, by octave band from 125 Hz}
     *
     * @throws IllegalArgumentException where the table lacks one of {@link #FREQUENCIES_HZ}
     */
    public double[] twoDeviationsDb() {
        return BANDS.stream()
                .mapToDouble(band -> 2 * mean(band, Sample::deviation))
                .toArray();
    }

    private double mean(List<Integer> frequenciesHz, ToDoubleFunction<Sample> of) {
        double sum = frequenciesHz.stream().map(attenuation::at).mapToDouble(of).sum();
        return sum / frequenciesHz.size();
    }

    /**
     * {@return step 8: the A-weighted levels when protected in dB, by octave band from 125 Hz}
     *
     * @throws IllegalArgumentException where the table lacks one of {@link #FREQUENCIES_HZ}
     */
    public double[] protectedDb() {
        double[] aWeighted = aWeightedDb();
        double[] mean = meanDb();
        double[] spread = twoDeviationsDb();
        return IntStream.range(0, BANDS.size())
                .mapToDouble(i -> aWeighted[i] - mean[i] + spread[i])
                .toArray();
    }

    /**
     * {@return the rating in dB, not rounded}
     *
     * @throws IllegalArgumentException where the table lacks one of {@link #FREQUENCIES_HZ}
     */
    public double ratingDb() {
        return C_WEIGHTED_SUM_DB - Energy.sumDb(protectedDb()) - SPECTRAL_UNCERTAINTY_DB;
    }
}
