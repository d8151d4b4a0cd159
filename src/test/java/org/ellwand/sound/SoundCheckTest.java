package org.ellwand.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.nio.file.Path;
import java.util.Arrays;
import org.ellwand.acoustics.Resolution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SoundCheckTest {
    @TempDir
    Path folder;

    private SampleFaults faults(double... samples) throws Exception {
        WavFile file = Sounds.file(folder.resolve("a.wav"), SampleFormat.PCM_16, 48_000, samples);
        return Sounds.measured(file, SoundAnalysis.of(Resolution.OCTAVE)).check();
    }

    @Test
    void soundWithinTheRangeHasNoFaults() throws Exception {
        SampleFaults noise = faults(Sounds.noise(0.1, 5, 48_000, 3));
        assertThat(noise.clipped()).isZero();
        assertThat(noise.dropped()).isZero();
        assertThat(noise.clippedS()).isNaN();
    }

    @ParameterizedTest
    @ValueSource(doubles = {20, 100, 1000, 5000})
    void theRoundTopOfALowToneIsNotClipped(double hz) throws Exception {
        assertThat(faults(Sounds.sine(hz, 0.7, 3, 48_000)).clipped()).isZero();
    }

    @Test
    void theEndOfTheFormatIsClipping() throws Exception {
        SampleFaults faults = faults(Sounds.sine(100, 1.5, 1, 48_000));
        assertThat(faults.clipped()).isEqualTo(200);
        assertThat(faults.clippedS()).isCloseTo(Math.asin(1 / 1.5) / (2 * Math.PI * 100), offset(1e-4));
    }

    @Test
    void aCutBelowFullScaleIsClipping() throws Exception {
        double[] samples = Sounds.sine(997, 0.8, 1, 48_000);
        for (int i = 0; i < samples.length; i++) {
            samples[i] = Math.max(-0.6, Math.min(0.6, samples[i]));
        }
        SampleFaults faults = faults(samples);
        assertThat(faults.clipped()).isGreaterThan(1500);
        assertThat(faults.clippedAt()).isCloseTo(0.6, offset(1e-4));
    }

    @Test
    void equalSamplesAmidSoundAreDropped() throws Exception {
        double[] samples = Sounds.noise(0.1, 3, 48_000, 5);
        Arrays.fill(samples, 48_000, 48_000 + 96, 0);
        Arrays.fill(samples, 96_000, 96_000 + 240, samples[95_999]);
        SampleFaults faults = faults(samples);
        assertThat(faults.dropped()).isEqualTo(2);
        assertThat(faults.droppedS()).isCloseTo(1, offset(1e-4));
        assertThat(faults.longestDropS()).isCloseTo(0.005, offset(1e-4));
    }

    @Test
    void silenceBeforeASoundIsNotDropped() throws Exception {
        double[] samples = Sounds.noise(0.1, 3, 48_000, 5);
        Arrays.fill(samples, 0, 48_000, 0);
        assertThat(faults(samples).dropped()).isZero();
    }
}
