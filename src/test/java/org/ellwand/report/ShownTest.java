package org.ellwand.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import org.ellwand.amount.Interval;
import org.ellwand.amount.Unit;
import org.junit.jupiter.api.Test;

class ShownTest {
    private static final Shown DECIBELS = new Shown(Unit.DB, 1, Interval.of(15, 21, Unit.DB));
    private static final Shown PERCENT = new Shown(Unit.PERCENT, 100, Interval.atLeast(80, Unit.PERCENT));

    @Test
    void aValueHasAsManyDecimalsAsItsUncertaintyAndTwoAtMost() {
        assertThat(DECIBELS.pair(17.93, OptionalDouble.of(0.52))).isEqualTo("17.9 ± 1.0 dB");
        assertThat(DECIBELS.pair(17.934, OptionalDouble.of(0.056))).isEqualTo("17.93 ± 0.11 dB");
        assertThat(DECIBELS.pair(17.934, OptionalDouble.of(0.0415))).isEqualTo("17.93 ± 0.08 dB");
        assertThat(DECIBELS.pair(17.934, OptionalDouble.of(0.0001))).isEqualTo("17.9 dB ± 0.00020 dB");
        assertThat(DECIBELS.pair(17.93, OptionalDouble.empty())).isEmpty();
    }

    @Test
    void aRatioWrittenInPerCentIsPrintedSoThroughout() {
        assertThat(PERCENT.value(0.8345)).isEqualTo("83.5 %");
        assertThat(PERCENT.uncertainty(OptionalDouble.of(0.04), 1)).isEqualTo("4.0 %");
        assertThat(PERCENT.limitModel())
                .containsEntry("kind", "at least")
                .containsEntry("lower", "80")
                .containsEntry("unit", "%");
    }

    @Test
    void aDifferenceHasTheDecimalsOfTheValue() {
        assertThat(new Shown(Unit.HOUR, 1, Interval.atLeast(24, Unit.HOUR)).difference(2.5, 21.5))
                .isEqualTo("2.5 h");
    }
}
