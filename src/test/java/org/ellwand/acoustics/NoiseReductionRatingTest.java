package org.ellwand.acoustics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ellwand.statistics.Sample;
import org.junit.jupiter.api.Test;

/**
 * The worked example of 40 CFR 211.207, figure 2, line by line (read at govregs.com,
 * title40_chapterI-i26_part211_subpartB_section211.207). The figure prints one decimal: the tolerance where nothing else stands.
 */
class NoiseReductionRatingTest {
    private static final double PRINTED = 0.05;

    private static final NoiseReductionRating FIGURE_2 = new NoiseReductionRating(table(
            List.of(21.0, 22.0, 23.0, 29.0, 41.0, 43.0, 47.0, 41.0, 36.0),
            List.of(3.7, 3.3, 3.8, 4.7, 3.3, 3.3, 3.4, 6.1, 6.5)));

    private static AttenuationTable table(List<Double> mean, List<Double> deviation) {
        SortedMap<Integer, Sample> byHz = new TreeMap<>();
        for (int i = 0; i < mean.size(); i++) {
            byHz.put(NoiseReductionRating.FREQUENCIES_HZ.get(i), new Sample(mean.get(i), deviation.get(i)));
        }
        return new AttenuationTable(byHz);
    }

    private static void printed(double[] computed, double... figure) {
        assertThat(computed).containsExactly(figure, within(1e-9));
    }

    @Test
    void step3IsPinkNoiseCWeighted() {
        printed(FIGURE_2.cWeightedDb(), 99.8, 100, 100, 100, 99.8, 99.2, 97.0);
    }

    @Test
    void step5IsPinkNoiseAWeightedAddedAsItIsSigned() {
        printed(FIGURE_2.aWeightedDb(), 83.9, 91.4, 96.8, 100, 101.2, 101, 98.9);
    }

    @Test
    void step6AveragesThePairsOfFrequencies() {
        printed(FIGURE_2.meanDb(), 21, 22, 23, 29, 41, 45, 38.5);
    }

    @Test
    void step7DoublesTheDeviationsAndAddsThoseOfAPair() {
        printed(FIGURE_2.twoDeviationsDb(), 7.4, 6.6, 7.6, 9.4, 6.6, 6.7, 12.6);
    }

    @Test
    void step8IsWhatReachesTheEar() {
        printed(FIGURE_2.protectedDb(), 70.3, 76.0, 81.4, 80.4, 66.8, 62.7, 73.0);
    }

    /** Printed 107.9 and 85.1; to more digits 107.953889 (which rounds to 108.0) and 85.116336 (own arithmetic). */
    @Test
    void theSums() {
        assertThat(Energy.sumDb(FIGURE_2.cWeightedDb())).isCloseTo(107.953889, within(1e-6));
        assertThat(Energy.sumDb(FIGURE_2.protectedDb())).isCloseTo(85.1, within(PRINTED));
        assertThat(Energy.sumDb(FIGURE_2.protectedDb())).isCloseTo(85.116336, within(1e-6));
    }

    /** Printed 19.8. With 107.9 dB it is 19.7837, with the exact sum it would be 19.8376 (own arithmetic). */
    @Test
    void theRatingTakesTheFixedSumOfTheRegulation() {
        assertThat(FIGURE_2.ratingDb()).isCloseTo(19.8, within(PRINTED));
        assertThat(FIGURE_2.ratingDb()).isCloseTo(107.9 - 85.116336 - 3, within(1e-6));
        assertThat(FIGURE_2.ratingDb()).isNotCloseTo(19.8376, within(0.01));
    }

    /** NRR = a − (106.98505 + 3 − 107.9) = a − 2.08505 without deviations: needs no table of data (own arithmetic). */
    @Test
    void aFlatAttenuation() {
        List<Double> flat = List.of(20.0, 20.0, 20.0, 20.0, 20.0, 20.0, 20.0, 20.0, 20.0);
        List<Double> none = List.of(0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0);
        double rating = new NoiseReductionRating(table(flat, none)).ratingDb();
        assertThat(rating).isCloseTo(20 - 2.0850, within(1e-4));
    }
}
