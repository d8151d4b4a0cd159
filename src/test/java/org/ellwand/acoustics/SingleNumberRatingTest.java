package org.ellwand.acoustics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ellwand.statistics.Sample;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The reference noises and formulas of ISO 4869-2:1994 (from memory where nothing else is said). */
class SingleNumberRatingTest {
    /** C less A in the octaves from 63 Hz: IEC 61672-1, table 3. */
    private static final double[] C_LESS_A_DB = {
        -0.8 + 26.2, -0.2 + 16.1, 8.6, 3.2, 0, -0.2 - 1.2, -0.8 - 1.0, -3.0 + 1.1
    };

    private static final List<ReferenceNoise> NOISES = Stream.concat(
                    ReferenceNoise.HIGH.stream(), ReferenceNoise.LOW.stream())
            .toList();

    private static double[] cWeighted(ReferenceNoise noise) {
        return IntStream.range(0, C_LESS_A_DB.length)
                .mapToDouble(i -> noise.aWeightedDb().get(i) + C_LESS_A_DB[i])
                .toArray();
    }

    private static double sumDb(ReferenceNoise noise) {
        return Energy.sumDb(
                noise.aWeightedDb().stream().mapToDouble(level -> level).toArray());
    }

    /**
     * L_C − L_A and d as the standard prints them (read in a public restatement): the sums come to 100 dB(A) and to these
     * differences only if every level is right. Sums and differences with three decimals: own arithmetic.
     */
    @ParameterizedTest
    @CsvSource({
        "1, -1.2, -1.20, 100.024, -1.197",
        "2, -0.5, -0.49, 100.012, -0.487",
        "3,  0.1,  0.14, 100.020,  0.146",
        "4,  1.6,  1.56, 100.030,  1.567",
        "5,  2.3, -2.98,  99.989,  2.303",
        "6,  4.3, -1.01, 100.004,  4.270",
        "7,  6.1,  0.85,  99.958,  6.136",
        "8,  8.4,  3.14, 100.000,  8.417"
    })
    void referenceNoises(int number, double printed, double weight, double sum, double difference) {
        ReferenceNoise noise = NOISES.get(number - 1);
        assertThat(noise.weight()).isEqualTo(weight);
        assertThat(sumDb(noise)).isCloseTo(100, within(0.05)).isCloseTo(sum, within(0.0006));
        double computed = Energy.sumDb(cWeighted(noise)) - sumDb(noise);
        assertThat(computed).isCloseTo(printed, within(0.05)).isCloseTo(difference, within(0.0006));
        assertThat(weight).isCloseTo(number <= 4 ? computed : computed - 5.28, within(0.01));
    }

    @Test
    void theWeightsBalance() {
        assertThat(weights(ReferenceNoise.HIGH)).isCloseTo(0.01, within(1e-9));
        assertThat(weights(ReferenceNoise.LOW)).isCloseTo(0, within(1e-9));
    }

    private static double weights(List<ReferenceNoise> noises) {
        return noises.stream().mapToDouble(ReferenceNoise::weight).sum();
    }

    /** Own arithmetic: pink noise of 100 dB(C) has 1.51 dB less in A. */
    @Test
    void pinkNoise() {
        assertThat(Energy.sumDb(cWeighted(ReferenceNoise.PINK))).isCloseTo(99.997, within(0.0006));
        assertThat(sumDb(ReferenceNoise.PINK)).isCloseTo(98.487, within(0.0006));
    }

    /** Flat 20 dB: known without any table of data (own arithmetic). */
    @ParameterizedTest
    @CsvSource({"H, 19.890", "M, 20.011", "L, 20.014", "SNR, 21.513"})
    void aFlatAttenuation(SingleNumberRating rating, double expectedDb) {
        SortedMap<Integer, Double> flat = new TreeMap<>();
        ReferenceNoise.OCTAVES_HZ.forEach(hz -> flat.put(hz, 20.0));
        assertThat(rating.ofDb(flat)).isCloseTo(expectedDb, within(0.0006));
    }

    private static AttenuationTable worked() {
        double[] mean = {7.4, 10.0, 14.4, 19.6, 22.8, 29.6, 38.8, 34.1};
        double[] deviation = {3.3, 3.6, 3.6, 4.6, 4.0, 6.2, 7.4, 5.2};
        SortedMap<Integer, Sample> byHz = new TreeMap<>();
        for (int i = 0; i < mean.length; i++) {
            byHz.put(ReferenceNoise.OCTAVES_HZ.get(i), new Sample(mean[i], deviation[i]));
        }
        return new AttenuationTable(byHz);
    }

    /** Inputs and APV from memory of the standard's annex; the ratings are arithmetic on them with the formulas. */
    @Test
    void assumedProtectionAt84Percent() {
        assertThat(new ArrayList<>(worked().assumedProtectionDb(ProtectionPerformance.factor(84))
                        .values()))
                .usingElementComparator((a, b) -> Math.abs(a - b) < 1e-9 ? 0 : 1)
                .containsExactly(4.1, 6.4, 10.8, 15.0, 18.8, 23.4, 31.4, 28.9);
    }

    @ParameterizedTest
    @CsvSource({
        "80, H, 25.32", "80, M, 18.52", "80, L, 13.00", "80, SNR, 21.85",
        "84, H, 24.47", "84, M, 17.84", "84, L, 12.41", "84, SNR, 21.15"
    })
    void formulasOnTheWorkedInputs(int performance, SingleNumberRating rating, double expectedDb) {
        double factor = ProtectionPerformance.factor(performance);
        assertThat(rating.ofDb(worked().assumedProtectionDb(factor))).isCloseTo(expectedDb, within(0.0051));
    }
}
