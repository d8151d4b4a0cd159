package org.ellwand.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.ellwand.amount.Interval;
import org.ellwand.amount.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NumbersTest {
    @ParameterizedTest
    @CsvSource({
        "0.99949, > 0.999",
        "0.999, 0.999",
        "0.99234, 0.992",
        "0.93, 0.93",
        "0.9497, 0.9497",
        "0.9531, 0.95",
        "0.0049, 0.005",
        "0.0009, < 0.001",
        "1, > 0.999",
        "0, < 0.001"
    })
    void aProbabilityIsRoundedButNeverOverTheConfidence(double probability, String text) {
        assertThat(Numbers.probability(probability, 0.95)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({"14.97, 14.97", "14.6, 14.6", "15.04, 15.0", "-3.04, −3.0", "-0.04, 0.0", "20.999, 21.0", "21.04, 21.04"
    })
    void aLevelHasOneDecimalUnlessThatWouldCarryItOverTheLimit(double value, String text) {
        assertThat(Numbers.value(value, Unit.DB, Interval.of(15, 21, Unit.DB))).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({"0.0488, 0.098", "0.5058, 1.0", "6.2, 12", "0.21, 0.42"})
    void expandedUncertaintyHasTwoDigits(double u, String text) {
        assertThat(Numbers.expanded(u)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({
        "0.1, 0.1",
        "2.0E-3, 0.002",
        "-3.04, -3.04",
        "2.2E22, 22000000000000000000000",
        "0.30000000000000004, 0.30000000000000004"
    })
    void machinesReadTheSameDouble(double value, String text) {
        assertThat(Numbers.exact(value)).isEqualTo(text);
        assertThat(Double.parseDouble(Numbers.exact(value))).isEqualTo(value);
    }

    @Test
    void frequenciesReadAsPeopleWriteThem() {
        assertThat(Numbers.hertz(31.5)).isEqualTo("31.5 Hz");
        assertThat(Numbers.hertz(3150)).isEqualTo("3.15 kHz");
    }
}
