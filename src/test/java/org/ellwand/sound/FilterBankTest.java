package org.ellwand.sound;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.stream.Stream;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Resolution;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Holds the bands to class 1 of IEC 61260-1. Limits: of the edition of 2014 at powers of G = 10^(3/10) but for the band edge,
 * as restated in the public file bands.jl of thefirecode/Acoustics.jl; of the edition of 1995 (which are narrower) at the
 * same frequencies and at the edges, as restated in a public Python file "Limit lines for class 1 octave band filter limits"
 * by J. A. de Jong. Neither standard was opened. Frequencies for narrower bands: formula of the first file.
 */
class FilterBankTest {
    private static final double G = Math.pow(10, 0.3);
    private static final int[] RATES_HZ = {44_100, 48_000, 88_200, 96_000, 192_000};

    /** Power of G, least and greatest attenuation in dB re the middle of the band. */
    private static final double[][] LIMITS_1995 = {
        {0, -0.3, 0.3},
        {0.125, -0.3, 0.4},
        {0.25, -0.3, 0.6},
        {0.375, -0.3, 1.3},
        {0.5, 2, 5},
        {1, 17.5, Double.POSITIVE_INFINITY},
        {2, 42, Double.POSITIVE_INFINITY},
        {3, 61, Double.POSITIVE_INFINITY},
        {4, 70, Double.POSITIVE_INFINITY}
    };

    private static final double[][] LIMITS_2014 = {
        {0, -0.4, 0.4},
        {0.125, -0.4, 0.5},
        {0.25, -0.4, 0.7},
        {0.375, -0.4, 1.4},
        {1, 16.6, Double.POSITIVE_INFINITY},
        {2, 40.5, Double.POSITIVE_INFINITY},
        {3, 60, Double.POSITIVE_INFINITY},
        {4, 70, Double.POSITIVE_INFINITY}
    };

    /** Frequency over mid-band frequency; for narrower bands the octave's, compressed about 1. */
    private static double ratio(double power, int bandsPerOctave) {
        double octave = Math.pow(G, Math.abs(power));
        double upper = 1 + (Math.pow(G, 0.5 / bandsPerOctave) - 1) / (Math.sqrt(G) - 1) * (octave - 1);
        return power < 0 ? 1 / upper : upper;
    }

    @Test
    void theBreakpointsOfThirdOctavesAreThoseOfTheStandard() {
        double[] printed = {1.02667, 1.05575, 1.08746, 1.12202, 1.29437, 1.88173, 3.05365, 5.39195};
        double[] powers = {0.125, 0.25, 0.375, 0.5, 1, 2, 3, 4};
        for (int i = 0; i < printed.length; i++) {
            assertThat(ratio(powers[i], 3)).isCloseTo(printed[i], org.assertj.core.data.Offset.offset(6e-6));
        }
    }

    /** Level in dB that a tone of full scale makes in a band, over the band's own ladder. */
    private static double responseDb(Band band, double frequencyHz, int rateHz) {
        BandMeter meter = new BandMeter(band, rateHz);
        Ladder ladder = new Ladder(rateHz, meter.step() + 1, SoundMeter.BLOCK);
        double bandwidthHz = band.upperEdgeHz() - band.lowerEdgeHz();
        int settled = (int) (8 / bandwidthHz * rateHz);
        long length = (long) (Math.max(20 / bandwidthHz, 100 / frequencyHz) * rateHz);
        double[] block = new double[1 << 12];
        double before = 0;
        long at = 0;
        long from = 0;
        while (from == 0 || at < from + length) {
            for (int i = 0; i < block.length; i++) {
                block[i] = Math.sqrt(2) * Math.sin(2 * Math.PI * frequencyHz * (at + i) / rateHz);
            }
            ladder.feed(block, block.length);
            meter.feed(ladder);
            at += block.length;
            if (from == 0 && at >= settled) {
                before = meter.energy();
                from = at;
            }
        }
        return 10 * Math.log10((meter.energy() - before) * rateHz / (at - from));
    }

    @TestFactory
    Stream<DynamicTest> everyBandKeepsToClassOne() {
        return Arrays.stream(RATES_HZ)
                .boxed()
                .flatMap(rate -> Arrays.stream(Resolution.values())
                        .map(resolution -> DynamicTest.dynamicTest(
                                resolution.text() + " at " + rate, () -> checkTopBands(resolution, rate))));
    }

    /** The bands of the upper three octaves: every other one stands to a lower step of the ladder as these to theirs. */
    private static void checkTopBands(Resolution resolution, int rateHz) {
        Band highest = Band.nearest(resolution, Math.min(20_000, Ladder.highestHz(rateHz)));
        while (highest.upperEdgeHz() > Math.min(Ladder.highestHz(rateHz), 23_000)) {
            highest = new Band(resolution, highest.index() - 1);
        }
        int count = resolution == Resolution.TWELFTH_OCTAVE ? 12 : 2 * resolution.bandsPerOctave() + 1;
        for (int i = 0; i < count; i++) {
            Band band = new Band(resolution, highest.index() - i);
            double middleDb = responseDb(band, band.exactHz(), rateHz);
            assertThat(middleDb).isBetween(-0.01, 0.01);
            for (int sign = -1; sign <= 1; sign += 2) {
                checkLimits(band, rateHz, LIMITS_1995, sign, middleDb);
                checkLimits(band, rateHz, LIMITS_2014, sign, middleDb);
            }
        }
    }

    private static void checkLimits(Band band, int rateHz, double[][] limits, int sign, double middleDb) {
        for (double[] limit : limits) {
            double power = sign * limit[0];
            double hz = band.exactHz() * ratio(power, band.resolution().bandsPerOctave());
            if (hz < rateHz * 0.499) {
                assertThat(middleDb - responseDb(band, hz, rateHz))
                        .as(band.nominalHz() + " Hz at G^" + power)
                        .isBetween(limit[1], limit[2]);
            }
        }
    }

    /** SciPy 1.17.1: sosfreqz(butter(4, [891.2509, 1122.0185], 'bandpass', fs=48000, output='sos')). */
    @Test
    void theFilterIsThatOfAGeneralLibrary() {
        BandPass filter = new BandPass(891.2509381337459, 1122.0184543019634, 48_000);
        double[][] expected = SCIPY;
        for (double[] row : expected) {
            assertThat(20 * Math.log10(filter.response(row[0], 48_000)))
                    .isCloseTo(row[1], org.assertj.core.data.Offset.offset(1e-6));
        }
    }

    private static final double[][] SCIPY = {
        {100, -130.547745951},
        {500, -64.996986730},
        {800, -23.210639971},
        {891.2509381337459, -3.010299957},
        {950, -0.006672130},
        {1000, -0.000000000},
        {1100, -0.860558481},
        {1300, -28.971805763},
        {2000, -65.179250326},
        {5000, -106.664079707},
        {15000, -159.463631503}
    };
}
