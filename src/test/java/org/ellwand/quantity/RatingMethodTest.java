package org.ellwand.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.ellwand.amount.Interval;
import org.ellwand.amount.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** 40 CFR 211.207: values ending in .5 go to the next lower whole number (read). ISO 4869-2 does not say. */
class RatingMethodTest {
    private static Interval around(double nominalDb, double halfDb) {
        return Interval.of(nominalDb - halfDb, nominalDb + halfDb, Unit.DB);
    }

    @ParameterizedTest
    @CsvSource({
        "CFR, 19.5, 19",
        "CFR, 19.5000001, 20",
        "CFR, 19.4999, 19",
        "CFR, 20.5, 20",
        "CFR, 19.8, 20",
        "CFR, 20, 20",
        "ISO_1994, 21.5, 22",
        "ISO_1994, 21.4999999, 21",
        "ISO_2018, 21.87, 22",
        "ISO_2018, 22.4, 22"
    })
    void wholeDecibels(RatingMethod method, double valueDb, double roundedDb) {
        assertThat(method.roundedDb(valueDb)).isEqualTo(roundedDb);
    }

    /** 0.1 added 195 times is 19.500000000000053 in binary numbers, 19.1 + 0.4 is 19.5. */
    @Test
    void aHalfIsAHalfInBinaryNumbersToo() {
        double sum = 0;
        for (int i = 0; i < 195; i++) {
            sum += 0.1;
        }
        assertThat(sum).isNotEqualTo(19.5);
        assertThat(RatingMethod.CFR.roundedDb(sum)).isEqualTo(19);
        assertThat(RatingMethod.CFR.roundedDb(19.5 - 4e-12)).isEqualTo(19);
        assertThat(RatingMethod.ISO_1994.roundedDb(21.5 - 4e-12)).isEqualTo(22);
    }

    @ParameterizedTest
    @CsvSource({
        "CFR, 19.5, 20, false",
        "CFR, 19.5, 19, true",
        "CFR, 20.5, 20, true",
        "CFR, 19.5001, 20, true",
        "CFR, 18.5, 19, false",
        "CFR, 19.4999, 20, false",
        "ISO_1994, 21.5, 22, true",
        "ISO_1994, 21.5, 21, true",
        "ISO_1994, 21.4999, 22, false",
        "ISO_2018, 22.5, 22, true",
        "ISO_2018, 22.5, 23, true",
        "ISO_2018, 22.5001, 22, false"
    })
    void halvesAgainstAPrintedFigure(RatingMethod method, double valueDb, double printedDb, boolean met) {
        assertThat(method.meets(valueDb, around(printedDb, 0.5))).isEqualTo(met);
    }

    @ParameterizedTest
    @CsvSource({
        "CFR, 19.7837, 19.8, true",
        "CFR, 19.75, 19.8, false",
        "CFR, 19.85, 19.8, true",
        "CFR, 19.7499, 19.8, false",
        "ISO_1994, 21.85, 21.9, true",
        "ISO_1994, 21.95, 21.9, true",
        "ISO_1994, 22, 21.9, false"
    })
    void aFigureWithADecimalIsComparedUnrounded(RatingMethod method, double valueDb, double printedDb, boolean met) {
        Interval limit = around(printedDb, 0.05);
        assertThat(method.meets(valueDb, limit)).isEqualTo(met);
    }

    @Test
    void otherLimitsAreComparedAsComputed() {
        assertThat(RatingMethod.ISO_1994.meets(21.87, Interval.atLeast(22, Unit.DB)))
                .isFalse();
        assertThat(RatingMethod.ISO_1994.meets(22, Interval.atLeast(22, Unit.DB)))
                .isTrue();
        assertThat(RatingMethod.CFR.meets(21.5, Interval.atLeast(21.5, Unit.DB)))
                .isFalse();
        assertThat(RatingMethod.CFR.meets(17, Interval.of(17, 19, Unit.DB))).isTrue();
        assertThat(RatingMethod.ISO_1994.meets(20.6, around(22, 1))).isFalse();
        assertThat(RatingMethod.ISO_1994.meets(23, around(22, 1))).isTrue();
    }

    @Test
    void onlyWhereTheMethodIsSilentIsAHalfOpen() {
        assertThat(RatingMethod.ISO_1994.isOpen(21.5)).isTrue();
        assertThat(RatingMethod.ISO_1994.isOpen(21.4)).isFalse();
        assertThat(RatingMethod.CFR.isOpen(21.5)).isFalse();
    }
}
