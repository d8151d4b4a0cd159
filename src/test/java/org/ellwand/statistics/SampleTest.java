package org.ellwand.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class SampleTest {
    /** By hand: squares about the mean 9 + 1 + 1 + 1 + 0 + 0 + 4 + 16 = 32, seven degrees of freedom. */
    @Test
    void meanAndDeviationByHand() {
        Sample sample = Sample.of(List.of(2.0, 4.0, 4.0, 4.0, 5.0, 5.0, 7.0, 9.0));
        assertThat(sample.mean()).isEqualTo(5);
        assertThat(sample.deviation()).isCloseTo(Math.sqrt(32.0 / 7), within(1e-15));
    }

    /** The sum of squares less the square of the sum would have no digit left. */
    @Test
    void numbersFarFromZeroLoseNothing() {
        Sample far = Sample.of(List.of(1e9 + 1, 1e9 + 2, 1e9 + 3));
        assertThat(far.mean()).isEqualTo(1e9 + 2);
        assertThat(far.deviation()).isEqualTo(1);
    }

    @Test
    void aSingleValueHasNoDeviation() {
        assertThat(Sample.of(List.of(18.0)).mean()).isEqualTo(18);
        assertThat(Sample.of(List.of(18.0)).deviation()).isNaN();
    }
}
