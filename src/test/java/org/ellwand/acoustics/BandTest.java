package org.ellwand.acoustics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class BandTest {
    /** ISO 266 nominal third octaves, as stored in python-acoustics, acoustics/standards/iec_61260_1_2014.py. */
    private static final double[] ISO_266_THIRDS_HZ = {
        25, 31.5, 40, 50, 63, 80, 100, 125, 160, 200, 250, 315, 400, 500, 630, 800, 1000, 1250, 1600, 2000, 2500, 3150,
        4000, 5000, 6300, 8000, 10000, 12500, 16000, 20000
    };

    private static final double[] ISO_266_OCTAVES_HZ = {31.5, 63, 125, 250, 500, 1000, 2000, 4000, 8000, 16000};

    @Test
    void thirdOctavesHaveTheNominalsOfIso266() {
        double[] nominals = IntStream.rangeClosed(-16, 13)
                .mapToDouble(x -> new Band(Resolution.THIRD_OCTAVE, x).nominalHz())
                .toArray();
        assertThat(nominals).containsExactly(ISO_266_THIRDS_HZ);
    }

    @Test
    void octavesHaveTheNominalsOfIso266() {
        double[] nominals = IntStream.rangeClosed(-5, 4)
                .mapToDouble(x -> new Band(Resolution.OCTAVE, x).nominalHz())
                .toArray();
        assertThat(nominals).containsExactly(ISO_266_OCTAVES_HZ);
    }

    /** IEC 61260-1:2014, formulas 1 to 5, worked with forty digits; printed to 0.001 Hz. */
    @ParameterizedTest
    @CsvSource({
        "31.5, 31.623, 22.387, 44.668",
        "63, 63.096, 44.668, 89.125",
        "125, 125.893, 89.125, 177.828",
        "250, 251.189, 177.828, 354.813",
        "500, 501.187, 354.813, 707.946",
        "1000, 1000, 707.946, 1412.538",
        "2000, 1995.262, 1412.538, 2818.383",
        "4000, 3981.072, 2818.383, 5623.413",
        "8000, 7943.282, 5623.413, 11220.185",
        "16000, 15848.932, 11220.185, 22387.211"
    })
    void octaveEdges(double nominalHz, double exactHz, double lowerHz, double upperHz) {
        assertBand(Band.nearest(Resolution.OCTAVE, nominalHz), exactHz, lowerHz, upperHz);
    }

    /** As above, the digits of one decade; in the others they repeat. */
    @ParameterizedTest
    @CsvSource({
        "100, 100, 89.125, 112.202", "125, 125.893, 112.202, 141.254", "160, 158.489, 141.254, 177.828",
        "200, 199.526, 177.828, 223.872", "250, 251.189, 223.872, 281.838", "315, 316.228, 281.838, 354.813",
        "400, 398.107, 354.813, 446.684", "500, 501.187, 446.684, 562.341", "630, 630.957, 562.341, 707.946",
        "800, 794.328, 707.946, 891.251"
    })
    void thirdOctaveEdges(double nominalHz, double exactHz, double lowerHz, double upperHz) {
        assertBand(Band.nearest(Resolution.THIRD_OCTAVE, nominalHz), exactHz, lowerHz, upperHz);
        Band decadeUp = Band.nearest(Resolution.THIRD_OCTAVE, nominalHz * 10);
        assertThat(decadeUp.exactHz()).isCloseTo(exactHz * 10, within(0.006));
    }

    private static void assertBand(Band band, double exactHz, double lowerHz, double upperHz) {
        assertThat(band.exactHz()).isCloseTo(exactHz, within(0.0006));
        assertThat(band.lowerEdgeHz()).isCloseTo(lowerHz, within(0.0006));
        assertThat(band.upperEdgeHz()).isCloseTo(upperHz, within(0.0006));
    }

    /**
     * The formula for even b by hand: 1000 · 10^(0.3 · (2x+1)/(2b)). Sixth octave, x = 0: 10^3.025 = 1059.254, three
     * digits 1060; x = 10: 10^3.525 = 3349.654, 3350; x = 17: 10^3.875 = 7498.942, two digits 7500. Twelfth octave,
     * x = 0: 10^3.0125 = 1029.201, 1030; x = -1: 10^2.9875 = 971.628, 970; x = 27: 10^3.6875 = 4869.675, 4870.
     */
    @ParameterizedTest
    @CsvSource({
        "SIXTH_OCTAVE, 0, 1059.254, 1060", "SIXTH_OCTAVE, 10, 3349.654, 3350", "SIXTH_OCTAVE, 17, 7498.942, 7500",
        "SIXTH_OCTAVE, -1, 944.061, 940", "TWELFTH_OCTAVE, 0, 1029.201, 1030", "TWELFTH_OCTAVE, -1, 971.628, 970",
        "TWELFTH_OCTAVE, 27, 4869.675, 4870", "TWELFTH_OCTAVE, -36, 129.569, 130", "TWELFTH_OCTAVE, -60, 32.546, 32.5"
    })
    void narrowBandsAreRoundedToThreeOrTwoDigits(Resolution resolution, int index, double exactHz, double nominalHz) {
        Band band = new Band(resolution, index);
        assertThat(band.exactHz()).isCloseTo(exactHz, within(0.0006));
        assertThat(band.nominalHz()).isEqualTo(nominalHz);
    }

    @ParameterizedTest
    @EnumSource(Resolution.class)
    void everyBandIsReadByItsNominalAndItsExactFrequency(Resolution resolution) {
        Band lowest = Band.nearest(resolution, 20);
        for (int x = lowest.index(); new Band(resolution, x).exactHz() < 25_000; x++) {
            Band band = new Band(resolution, x);
            assertThat(Bands.read(resolution, band.nominalHz())).contains(band);
            assertThat(Bands.read(resolution, band.exactHz())).contains(band);
            assertThat(Band.nearest(resolution, band.nominalHz())).isEqualTo(band);
        }
    }

    @ParameterizedTest
    @CsvSource({"980, true", "1020, true", "979.9, false", "1020.1, false", "1269, true", "1285, false", "0, false"})
    void aFrequencyFitsWithinTwoPercent(double hz, boolean fits) {
        assertThat(Bands.read(Resolution.THIRD_OCTAVE, hz).isPresent()).isEqualTo(fits);
    }

    @Test
    void frequenciesNobodyMeasuresAreNoBands() {
        assertThat(Bands.read(Resolution.OCTAVE, 1)).isEmpty();
        assertThat(Bands.read(Resolution.OCTAVE, 1e9)).isEmpty();
        assertThat(Bands.read(Resolution.OCTAVE, Double.NaN)).isEmpty();
        assertThat(Bands.read(Resolution.THIRD_OCTAVE, 10)).isPresent();
        assertThat(Bands.read(Resolution.THIRD_OCTAVE, 100_000)).isPresent();
    }

    @Test
    void theTwoNearestBandsLieAroundTheFrequency() {
        assertThat(Bands.nearestTwo(Resolution.THIRD_OCTAVE, 1100))
                .extracting(Band::nominalHz)
                .containsExactly(1000.0, 1250.0);
        assertThat(Bands.nearestTwo(Resolution.THIRD_OCTAVE, 1150))
                .extracting(Band::nominalHz)
                .containsExactly(1250.0, 1000.0);
    }

    /** The tables of the standard go on by tens: 31.5 Hz, 31.5 kHz; an octave is every third of them. */
    @Test
    void nominalsGoOnBeyondWhatIsHeard() {
        assertThat(new Band(Resolution.THIRD_OCTAVE, -35).nominalHz()).isEqualTo(0.315);
        assertThat(new Band(Resolution.THIRD_OCTAVE, -30).nominalHz()).isEqualTo(1);
        assertThat(new Band(Resolution.THIRD_OCTAVE, 30).nominalHz()).isEqualTo(1_000_000);
        assertThat(new Band(Resolution.THIRD_OCTAVE, 31).nominalHz()).isEqualTo(1_250_000);
        assertThat(new Band(Resolution.OCTAVE, 11).nominalHz()).isEqualTo(2_000_000);
    }

    @Test
    void bandsStandByWidthAndThenByFrequency() {
        Band octave = new Band(Resolution.OCTAVE, 5);
        Band low = new Band(Resolution.THIRD_OCTAVE, -2);
        Band high = new Band(Resolution.THIRD_OCTAVE, 3);
        assertThat(Stream.of(high, low, octave).sorted()).containsExactly(octave, low, high);
    }

    @ParameterizedTest
    @EnumSource(Resolution.class)
    void aResolutionIsReadByItsName(Resolution resolution) {
        assertThat(Resolution.named(resolution.text())).contains(resolution);
        assertThat(Resolution.named("octaves")).isEmpty();
    }

    @Test
    void finerBandsTileCoarserOnes() {
        for (int x = -60; x < 60; x++) {
            Band twelfth = new Band(Resolution.TWELFTH_OCTAVE, x);
            for (Resolution coarser :
                    new Resolution[] {Resolution.OCTAVE, Resolution.THIRD_OCTAVE, Resolution.SIXTH_OCTAVE}) {
                Band outer = twelfth.within(coarser);
                assertThat(twelfth.lowerEdgeHz()).isGreaterThan(outer.lowerEdgeHz() * (1 - 1e-12));
                assertThat(twelfth.upperEdgeHz()).isLessThan(outer.upperEdgeHz() * (1 + 1e-12));
            }
        }
    }
}
