package org.ellwand.acoustics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WeightingTest {
    /**
     * IEC 61672-1:2013, table 3, as stored in python-acoustics, acoustics/data/iec_61672_1_2013.csv: nominal frequency
     * in Hz, A and C in dB, rounded to 0.1 dB. The tolerance is that rounding.
     */
    @ParameterizedTest
    @CsvSource({
        "10, -70.4, -14.3", "12.5, -63.4, -11.2", "16, -56.7, -8.5", "20, -50.5, -6.2", "25, -44.7, -4.4",
        "31.5, -39.4, -3.0", "40, -34.6, -2.0", "50, -30.2, -1.3", "63, -26.2, -0.8", "80, -22.5, -0.5",
        "100, -19.1, -0.3", "125, -16.1, -0.2", "160, -13.4, -0.1", "200, -10.9, 0", "250, -8.6, 0",
        "315, -6.6, 0", "400, -4.8, 0", "500, -3.2, 0", "630, -1.9, 0", "800, -0.8, 0",
        "1000, 0, 0", "1250, 0.6, 0", "1600, 1.0, -0.1", "2000, 1.2, -0.2", "2500, 1.3, -0.3",
        "3150, 1.2, -0.5", "4000, 1.0, -0.8", "5000, 0.5, -1.3", "6300, -0.1, -2.0", "8000, -1.1, -3.0",
        "10000, -2.5, -4.4", "12500, -4.3, -6.2", "16000, -6.6, -8.5", "20000, -9.3, -11.2"
    })
    void theTableOfTheStandardIsTheFormulaAtExactFrequencies(double nominalHz, double aDb, double cDb) {
        double exactHz =
                Bands.read(Resolution.THIRD_OCTAVE, nominalHz).orElseThrow().exactHz();
        assertThat(Weighting.A.atDb(exactHz)).isCloseTo(aDb, within(0.05));
        assertThat(Weighting.C.atDb(exactHz)).isCloseTo(cDb, within(0.05));
    }

    @Test
    void nominalFrequenciesWouldMissTheTable() {
        assertThat(Weighting.A.atDb(160)).isCloseTo(-13.24, within(0.005));
        assertThat(Weighting.A.atDb(158.489319)).isCloseTo(-13.350305, within(1e-6));
    }

    @Test
    void isZeroAtOneKilohertzAndZIsZeroEverywhere() {
        assertThat(Weighting.A.atDb(1000)).isZero();
        assertThat(Weighting.C.atDb(1000)).isZero();
        assertThat(Weighting.Z.atDb(63)).isZero();
    }

    /**
     * The poles rebuilt from the construction in IEC 61672-1:2013, annex E (from memory): reference 1 kHz, band limits
     * 10^1.5 and 10^3.9 Hz, A-weighting cut-off 10^2.45 Hz, D² = 1/2. The level at 1 kHz before normalising is
     * −2.000 dB for A and −0.062 dB for C in the standard.
     */
    @Test
    void polesFollowFromTheirConstruction() {
        double r = 1e6;
        double l = 1e3;
        double h = Math.pow(10, 7.8);
        double d = Math.sqrt(0.5);
        double b = (r + l * h / r - d * (l + h)) / (1 - d);
        double root = Math.sqrt(b * b - 4 * l * h);
        double f1 = Math.sqrt((-b - root) / 2);
        double f4 = Math.sqrt((-b + root) / 2);
        double f2 = (3 - Math.sqrt(5)) / 2 * Math.pow(10, 2.45);
        assertThat(f1).isCloseTo(20.598997, within(1e-6));
        assertThat(f2).isCloseTo(107.652649, within(1e-6));
        assertThat(f4).isCloseTo(12194.217148, within(1e-6));
        assertThat(Weighting.A.relative(1000)).isCloseTo(-2.000, within(5e-4));
        assertThat(Weighting.C.relative(1000)).isCloseTo(-0.062, within(5e-4));
    }
}
