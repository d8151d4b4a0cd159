package org.ellwand.amount;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class UnitTest {
    @Test
    void spellingsKeepTheirCase() {
        assertThat(Unit.spelled("mA")).contains(Unit.MILLIAMPERE);
        assertThat(Unit.spelled("MA")).isEmpty();
        assertThat(Unit.spelled("dBA")).contains(Unit.DB_A);
    }

    @Test
    void aMisspeltUnitResemblesTheOneThatIsMeant() {
        assertThat(Unit.resembling("khz")).contains(Unit.KHZ);
        assertThat(Unit.resembling("dB (a)")).contains(Unit.DB_A);
        assertThat(Unit.resembling("dBSPL")).contains(Unit.DB_SPL);
        assertThat(Unit.resembling("decibels")).isEmpty();
        assertThat(Unit.resembling("")).isEmpty();
    }

    @Test
    void hoursConvertToMinutes() {
        assertThat(Unit.HOUR.convert(1.5, Unit.MINUTE)).isEqualTo(90);
        assertThat(Unit.HOUR.factor()).isEqualTo(3600);
    }

    @Test
    void levelsDifferByPlainDecibels() {
        assertThat(Unit.DB_SPL.ofDifferences()).isEqualTo(Unit.DB);
        assertThat(Unit.DB_A.ofDifferences()).isEqualTo(Unit.DB);
        assertThat(Unit.DB_C.ofDifferences()).isEqualTo(Unit.DB);
        assertThat(Unit.KHZ.ofDifferences()).isEqualTo(Unit.KHZ);
    }
}
