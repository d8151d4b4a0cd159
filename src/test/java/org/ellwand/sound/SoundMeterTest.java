package org.ellwand.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Resolution;
import org.ellwand.acoustics.Weighting;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Sounds of known level through the whole path. */
class SoundMeterTest {
    private static final SoundAnalysis THIRDS = SoundAnalysis.of(Resolution.THIRD_OCTAVE);

    @TempDir
    Path folder;

    private static double bandDb(SoundLevels levels, double hz) {
        Band band = Band.nearest(levels.bands().get(0).resolution(), hz);
        return levels.levelDb().get(levels.bands().indexOf(band));
    }

    /** A sine of amplitude a has the mean square a²/2. */
    @ParameterizedTest
    @CsvSource({"44100, 31.62277660168379", "48000, 1000", "96000, 15848.931924611135", "192000, 7943.282347242815"})
    void aToneHasItsLevelInItsBand(int rateHz, double hz) throws Exception {
        WavFile file = Sounds.file(folder, rateHz, Sounds.sine(hz, 0.5, 4, rateHz));
        SoundLevels levels = Sounds.measured(file, THIRDS);
        double expectedDb = 10 * Math.log10(0.125);
        assertThat(levels.durationS()).isEqualTo(4);
        Band band = Band.nearest(Resolution.THIRD_OCTAVE, hz);
        // A tone that is cut spreads: about 1/(pi² B T) of it leaves the band.
        double lostDb = 10 / Math.log(10) / (Math.PI * Math.PI * 4 * (band.upperEdgeHz() - band.lowerEdgeHz()));
        assertThat(bandDb(levels, hz)).isCloseTo(expectedDb, offset(0.002 + 2 * lostDb));
        assertThat(levels.weighted(Weighting.Z).equivalentDb()).isCloseTo(expectedDb, offset(0.02));
        assertThat(levels.weighted(Weighting.Z).maximumDb()).isCloseTo(expectedDb, offset(0.2));
        assertThat(bandDb(levels, hz < 100 ? hz * 10 : hz / 10)).isLessThan(expectedDb - 70);
    }

    /** White noise: the level of a band is that of its share of half the rate; 0.11 dB more by the filter's bandwidth. */
    @ParameterizedTest
    @EnumSource
    void whiteNoiseSpreadsOverTheBands(Resolution resolution) throws Exception {
        WavFile file = Sounds.file(folder, 48_000, Sounds.noise(0.1, 20, 48_000, 7));
        SoundLevels levels = Sounds.measured(file, SoundAnalysis.of(resolution));
        assertThat(levels.bands())
                .hasSize(10 * resolution.bandsPerOctave() + (resolution.bandsPerOctave() == 3 ? 1 : 0));
        for (int i = 0; i < levels.bands().size(); i++) {
            Band band = levels.bands().get(i);
            double share = (band.upperEdgeHz() - band.lowerEdgeHz()) / 24_000;
            // Above 24 kHz there is no noise for the upper slope of the highest bands.
            double slopeDb = band.upperEdgeHz() > 17_000 ? 0.12 : 0.01;
            assertThat(levels.levelDb().get(i) - 10 * Math.log10(0.01 * share) - 0.11)
                    .as(band.nominalHz() + " Hz")
                    .isCloseTo(0, offset(slopeDb + 4 * levels.scatterDb(band)));
        }
    }

    /** However short the sound, the mean level of a band over many of them is that of the noise. */
    @Test
    void shortNoiseIsNotMeasuredLow() throws Exception {
        double sum = 0;
        int trials = 60;
        for (int seed = 0; seed < trials; seed++) {
            WavFile file = Sounds.file(folder, 48_000, Sounds.noise(0.1, 0.5, 48_000, seed));
            sum += Math.pow(10, bandDb(Sounds.measured(file, THIRDS), 125) / 10);
        }
        Band band = Band.nearest(Resolution.THIRD_OCTAVE, 125);
        double expected = 0.01 * (band.upperEdgeHz() - band.lowerEdgeHz()) / 24_000;
        assertThat(10 * Math.log10(sum / trials / expected)).isCloseTo(0.11, offset(0.6));
    }

    /**
     * IEC 61672-1, table of tone bursts of 4 kHz re the steady tone: fast 200 ms −1.0, 50 ms −4.8, 2 ms −18.0; slow 500 ms
     * −4.1, 200 ms −7.4 dB (from memory), which is 10 lg(1 − e^(−T/τ)) rounded.
     */
    @ParameterizedTest
    @CsvSource({
        "0.125, 0.2, -1.0",
        "0.125, 0.05, -4.8",
        "0.125, 0.002, -18.0",
        "1, 0.5, -4.1",
        "1, 0.2, -7.4",
        "0.035, 0.02, -3.6"
    })
    void aBurstReadsLowByItsLength(double timeConstantS, double burstS, double expectedDb) throws Exception {
        double[] samples = new double[3 * 48_000];
        double[] burst = Sounds.sine(4000, 0.5, burstS, 48_000);
        System.arraycopy(burst, 0, samples, 48_000, burst.length);
        WavFile file = Sounds.file(folder, 48_000, samples);
        SoundAnalysis analysis = new SoundAnalysis(Resolution.OCTAVE, 20, 20_000, timeConstantS, 0.001, Weighting.A);
        double steadyDb = 10 * Math.log10(0.125) + Weighting.A.atDb(4000);
        double maximumDb = Sounds.measured(file, analysis).weighted(Weighting.A).maximumDb();
        assertThat(maximumDb - steadyDb).isCloseTo(10 * Math.log10(-Math.expm1(-burstS / timeConstantS)), offset(0.05));
        assertThat(maximumDb - steadyDb).isCloseTo(expectedDb, offset(0.1));
    }

    /** After a tone ends its level falls by 10 lg e / τ per second: 34.7 dB/s fast, 4.3 dB/s slow. */
    @Test
    void theTraceFallsExponentially() throws Exception {
        double[] samples = new double[2 * 48_000];
        double[] tone = Sounds.sine(1000, 0.5, 1, 48_000);
        System.arraycopy(tone, 0, samples, 0, tone.length);
        List<double[]> trace = new ArrayList<>();
        Sounds.measured(
                Sounds.file(folder, 48_000, samples),
                THIRDS,
                (timeS, levelDb) -> trace.add(new double[] {timeS, levelDb}));
        assertThat(trace).hasSize(200);
        assertThat(trace.get(99)[0]).isCloseTo(1.0, offset(1e-9));
        assertThat(trace.get(99)[1]).isCloseTo(10 * Math.log10(0.125), offset(0.01));
        assertThat(trace.get(149)[1] - trace.get(109)[1]).isCloseTo(-0.4 * 10 / Math.log(10) / 0.125, offset(0.01));
    }

    /** A quarter of the time 20 dB louder. */
    @Test
    void percentilesTellHowOftenItWasLoud() throws Exception {
        double[] samples = Sounds.sine(1000, 0.01, 40, 48_000);
        System.arraycopy(Sounds.sine(1000, 0.1, 10, 48_000), 0, samples, 15 * 48_000, 10 * 48_000);
        WeightedLevels levels =
                Sounds.measured(Sounds.file(folder, 48_000, samples), THIRDS).weighted(Weighting.C);
        assertThat(levels.exceeded10Db()).isCloseTo(10 * Math.log10(0.005), offset(0.02));
        assertThat(levels.exceeded50Db()).isCloseTo(10 * Math.log10(0.00005), offset(0.02));
        assertThat(levels.exceeded95Db()).isCloseTo(10 * Math.log10(0.00005), offset(0.02));
        assertThat(levels.peakDb()).isCloseTo(-20, offset(0.3));
    }

    @Test
    void aConstantIsNoSound() throws Exception {
        double[] samples = Sounds.sine(1000, 0.1, 5, 48_000);
        for (int i = 0; i < samples.length; i++) {
            samples[i] += 0.2;
        }
        SoundLevels levels = Sounds.measured(Sounds.file(folder, 48_000, samples), THIRDS);
        assertThat(levels.check().offset()).isCloseTo(0.2, offset(1e-4));
        assertThat(levels.weighted(Weighting.Z).equivalentDb()).isCloseTo(10 * Math.log10(0.005), offset(0.01));
        assertThat(bandDb(levels, 1000)).isCloseTo(10 * Math.log10(0.005), offset(0.01));
        assertThat(bandDb(levels, 31.5)).isLessThan(-70);
    }

    @Test
    void aShortRecordingDoesNotReachLowBands() throws Exception {
        SoundLevels levels = Sounds.measured(Sounds.file(folder, 48_000, Sounds.noise(0.1, 0.2, 48_000, 1)), THIRDS);
        Band hundred = Band.nearest(Resolution.THIRD_OCTAVE, 100);
        Band hundredTwentyFive = Band.nearest(Resolution.THIRD_OCTAVE, 125);
        // 23.1 Hz and 29.1 Hz wide: 4.6 and 5.8 in 0.2 s.
        assertThat(levels.isLongEnough(hundred)).isFalse();
        assertThat(levels.isLongEnough(hundredTwentyFive)).isTrue();
        assertThat(levels.scatterDb(hundredTwentyFive)).isCloseTo(4.3429 / Math.sqrt(29.07 * 0.2), offset(0.01));
    }

    /** The sound had not begun where a part of it begins: its trace goes on, and does not rise from nothing. */
    @Test
    void aTraceOfAPartGoesOnFromWhatWasBefore() throws Exception {
        WavFile file = Sounds.file(folder, 48_000, Sounds.sine(1000, 0.5, 4, 48_000));
        RecordedPart part = RecordedPart.of(file, Optional.of(1), Optional.of(2.0), Optional.of(3.0));
        for (double timeConstantS : new double[] {SoundAnalysis.FAST_S, SoundAnalysis.SLOW_S, 0.005}) {
            SoundAnalysis analysis = new SoundAnalysis(Resolution.OCTAVE, 900, 1100, timeConstantS, 0.01, Weighting.A);
            List<Double> trace = new ArrayList<>();
            SoundMeter.measure(part, analysis, (timeS, levelDb) -> trace.add(levelDb));
            assertThat(trace).hasSize(100);
            // With 5 ms the level follows the tone itself a little.
            assertThat(trace.get(0)).isCloseTo(10 * Math.log10(0.125), offset(timeConstantS < 0.1 ? 0.15 : 0.02));
        }
    }

    /** The levels of a whole file every 10 ms, in dB re full scale. */
    private List<Double> traced(double[] samples, double timeConstantS, Weighting weighting) throws Exception {
        SoundAnalysis analysis = new SoundAnalysis(Resolution.OCTAVE, 900, 1100, timeConstantS, 0.01, weighting);
        List<Double> trace = new ArrayList<>();
        Sounds.measured(Sounds.file(folder, 48_000, samples), analysis, (timeS, levelDb) -> trace.add(levelDb));
        return trace;
    }

    /**
     * Nothing is before a file: a tone of amplitude a has 10 lg(a²/2) from the first level on, and does not rise to it. The weightings A and C answer the
     * beginning of a tone below 20 Hz too, which is over after some periods of that.
     */
    @ParameterizedTest
    @CsvSource({"0.125, Z", "1, Z", "0.125, A", "1, A", "1, C"})
    void aSteadySoundIsSteadyFromTheStartOfAFile(double timeConstantS, Weighting weighting) throws Exception {
        assertThat(traced(Sounds.sine(1000, 0.5, 3, 48_000), timeConstantS, weighting))
                .hasSizeGreaterThanOrEqualTo(300)
                .allSatisfy(levelDb -> assertThat(levelDb)
                        .isCloseTo(
                                10 * Math.log10(0.125) + weighting.atDb(1000),
                                offset(weighting == Weighting.Z ? 0.05 : 0.2)));
    }

    /**
     * A step by 20 dB at time s, sooner than a time constant: what was heard has the weight 1 − e^(−t/τ), of which that before the step has e^(−(t − s)/τ) −
     * e^(−t/τ).
     */
    @ParameterizedTest
    @CsvSource({"0.01, 0.1", "0.1, 0.01"})
    void aStepSoonAfterTheStartKeepsItsMeaning(double before, double after) throws Exception {
        double[] samples = Sounds.sine(1000, after, 3, 48_000);
        System.arraycopy(Sounds.sine(1000, before, 0.4, 48_000), 0, samples, 0, (int) (0.4 * 48_000));
        List<Double> trace = traced(samples, 1, Weighting.Z);
        for (int i = 0; i < 300; i++) {
            double t = (i + 1) * 0.01;
            double first = t <= 0.4 ? 1 - Math.exp(-t) : Math.exp(-(t - 0.4)) - Math.exp(-t);
            double second = t <= 0.4 ? 0 : 1 - Math.exp(-(t - 0.4));
            double meanSquare = (first * before * before + second * after * after) / 2 / (1 - Math.exp(-t));
            assertThat(trace.get(i)).as(t + " s").isCloseTo(10 * Math.log10(meanSquare), offset(0.05));
        }
    }
}
