package org.ellwand.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import org.ellwand.acoustics.Weighting;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WeightingFilterTest {
    /** The recording's own rate, as the meter takes it: 44.1 and 48 kHz are doubled first. */
    @ParameterizedTest
    @ValueSource(ints = {44_100, 48_000, 88_200, 96_000, 192_000})
    void theResponseIsThatOfTheFormula(int rateHz) {
        double topHz = Ladder.topRateHz(rateHz);
        for (Weighting weighting : Weighting.values()) {
            WeightingFilter filter = new WeightingFilter(weighting, topHz);
            for (int n = -20; n <= 13; n++) {
                double hz = 1000 * Math.pow(10, n / 10.0);
                assertThat(filter.atDb(hz, topHz))
                        .as(weighting + " at " + hz + " Hz")
                        .isCloseTo(weighting.atDb(hz), offset(0.03));
            }
        }
    }

    /**
     * Tones through the whole meter. Weightings: IEC 61672-1 table, and its class 1 limits of the edition of 2002, as restated
     * in a public Python file ("ISO61672-1 IEC:2002, Table 2"), at the exact frequencies. The standard was not opened.
     */
    @ParameterizedTest
    @CsvSource({
        "31.622777, -39.4, -3.0, 2.0, 2.0",
        "63.095734, -26.2, -0.8, 1.5, 1.5",
        "125.892541, -16.1, -0.2, 1.5, 1.5",
        "251.188643, -8.6, 0.0, 1.4, 1.4",
        "501.187234, -3.2, 0.0, 1.4, 1.4",
        "1000, 0, 0, 1.1, 1.1",
        "1995.262315, 1.2, -0.2, 1.6, 1.6",
        "3981.071706, 1.0, -0.8, 1.6, 1.6",
        "7943.282347, -1.1, -3.0, 3.1, 2.1",
        "12589.254118, -4.3, -6.2, 6.0, 3.0",
        "15848.931925, -6.6, -8.5, 17.0, 3.5"
    })
    void tonesKeepToClassOne(double hz, double aDb, double cDb, double belowDb, double aboveDb) throws Exception {
        for (int rateHz : new int[] {44_100, 48_000, 96_000}) {
            double[] levels = levels(hz, rateHz);
            assertThat(levels[0] - aDb).isBetween(-belowDb, aboveDb).isCloseTo(0, offset(0.1));
            assertThat(levels[1] - cDb).isBetween(-belowDb, aboveDb).isCloseTo(0, offset(0.1));
            assertThat(levels[2]).isCloseTo(0, offset(0.02));
        }
    }

    /** A, C and Z of a tone of mean square 1, after the start. */
    private static double[] levels(double hz, int rateHz) {
        double[] levels = new double[3];
        Ladder ladder = new Ladder(rateHz, 1, SoundMeter.BLOCK);
        WeightedMeter[] meters = new WeightedMeter[3];
        for (int i = 0; i < 3; i++) {
            meters[i] = new WeightedMeter(
                    Weighting.values()[i], ladder.rateHz(0), 0, 1, 1, 2 * SoundMeter.BLOCK + 2, LevelListener.NONE);
        }
        double[] block = new double[SoundMeter.BLOCK];
        for (int k = 0; k < 16; k++) {
            for (int i = 0; i < block.length; i++) {
                block[i] = Math.sqrt(2) * Math.sin(2 * Math.PI * hz * (k * block.length + i) / rateHz);
            }
            ladder.feed(block, block.length);
            for (int i = 0; i < 3; i++) {
                meters[i].feed(ladder.samples(0), ladder.count(0));
            }
        }
        for (int i = 0; i < 3; i++) {
            levels[i] = meters[i].levels().equivalentDb();
        }
        return levels;
    }
}
