package org.ellwand.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import java.nio.file.Path;
import org.ellwand.input.InputException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CalibrationTest {
    @TempDir
    Path folder;

    private Calibration of(int rateHz, double... samples) throws Exception {
        return Calibration.of(Sounds.file(folder, rateHz, samples), 1, 94);
    }

    /** A tone of amplitude a has the mean square a²/2, so full scale lies 10 lg(2/a²) above its 94 dB. */
    @ParameterizedTest
    @CsvSource({"44100, 1000", "48000, 1003.7", "96000, 250", "192000, 992"})
    void aToneGivesLevelAndFrequency(int rateHz, double hz) throws Exception {
        Calibration calibration = of(rateHz, Sounds.sine(hz, 0.2, 5, rateHz));
        assertThat(calibration.fullScaleDb()).isCloseTo(94 + 10 * Math.log10(2 / 0.04), offset(0.001));
        assertThat(calibration.frequencyHz()).isCloseTo(hz, offset(0.01));
        assertThat(calibration.spreadDb()).isLessThan(0.001);
        assertThat(calibration.restDb()).isLessThan(-60);
    }

    @Test
    void whatIsBeforeAndAfterTheToneIsLeftOut() throws Exception {
        double[] samples = Sounds.noise(0.002, 12, 48_000, 4);
        double[] tone = Sounds.sine(1000, 0.2, 6, 48_000);
        for (int i = 0; i < tone.length; i++) {
            samples[i + 123_456] += tone[i];
        }
        Calibration calibration = of(48_000, samples);
        assertThat(calibration.fullScaleDb()).isCloseTo(94 + 10 * Math.log10(2 / 0.04), offset(0.01));
        assertThat(calibration.steadyS()).isBetween(5.5, 6.0);
        assertThat(calibration.jumps()).isZero();
        assertThat(calibration.restDb()).isCloseTo(10 * Math.log10(0.000004 / 0.02), offset(0.3));
    }

    /** Ten times as much offset as tone: what is constant is no sound, and the level is that of the tone alone. */
    @Test
    void anOffsetIsNoTone() throws Exception {
        double[] samples = Sounds.sine(1000, 0.05, 5, 48_000);
        for (int i = 0; i < samples.length; i++) {
            samples[i] += 0.5;
        }
        Calibration calibration = of(48_000, samples);
        assertThat(calibration.frequencyHz()).isCloseTo(1000, offset(0.01));
        assertThat(calibration.fullScaleDb()).isCloseTo(94 + 10 * Math.log10(2 / 0.0025), offset(0.001));
        assertThat(calibration.restDb()).isLessThan(-60);
    }

    @Test
    void aToneThatFadesIsNotSteady() throws Exception {
        double[] samples = Sounds.sine(1000, 0.2, 5, 48_000);
        for (int i = 0; i < samples.length; i++) {
            samples[i] *= Math.pow(10, -0.1 * i / samples.length / 2);
        }
        assertThat(of(48_000, samples).spreadDb()).isBetween(0.9, 1.0);
    }

    /** A clock that loses one sample, and one that loses a millisecond and a half. */
    @ParameterizedTest
    @CsvSource({"1", "72"})
    void samplesThatAreLeftOutShowInThePhase(int lost) throws Exception {
        double[] samples = Sounds.sine(1000, 0.2, 6, 48_000);
        assertThat(of(48_000, samples).jumps()).isZero();
        System.arraycopy(samples, 100_000 + lost, samples, 100_000, samples.length - 100_000 - lost);
        double[] shorter = java.util.Arrays.copyOf(samples, samples.length - lost);
        assertThat(of(48_000, shorter).jumps()).isEqualTo(1);
    }

    @Test
    void faultsBesideTheToneAreNoFaultsOfIt() throws Exception {
        double[] samples = new double[8 * 48_000];
        double[] tone = Sounds.sine(1000, 0.2, 3, 48_000);
        System.arraycopy(tone, 0, samples, 48_000, tone.length);
        System.arraycopy(tone, 0, samples, 5 * 48_000, 48_000);
        assertThat(of(48_000, samples).faults().dropped()).isZero();
        java.util.Arrays.fill(samples, 2 * 48_000, 2 * 48_000 + 200, 0);
        assertThat(of(48_000, samples).faults().dropped()).isEqualTo(1);
    }

    @Test
    void noiseIsNoTone() {
        assertThatThrownBy(() -> of(48_000, Sounds.noise(0.1, 5, 48_000, 4)))
                .isInstanceOf(InputException.class)
                .hasMessage("sound.wav: holds no tone that stays within 1 dB for a second;"
                        + " record the calibrator for some seconds");
    }

    @Test
    void halfASecondIsTooShort() {
        assertThatThrownBy(() -> of(48_000, Sounds.sine(1000, 0.1, 0.5, 48_000)))
                .isInstanceOf(InputException.class);
    }
}
