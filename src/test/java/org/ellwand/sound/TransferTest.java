package org.ellwand.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TransferTest {
    private static final int RATE_HZ = 48_000;

    @TempDir
    Path folder;

    private RecordedPart part(String name, double... samples) throws Exception {
        WavFile file = Sounds.file(folder.resolve(name), SampleFormat.FLOAT_64, RATE_HZ, samples);
        return RecordedPart.of(file, Optional.empty(), Optional.empty(), Optional.empty());
    }

    /** A path of −20 dB that lags behind. */
    private static double[] behind(double[] sound, int frames) {
        double[] late = new double[sound.length];
        for (int i = Math.max(0, frames); i < Math.min(sound.length, sound.length + frames); i++) {
            late[i] = 0.1 * sound[i - frames];
        }
        return late;
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 7, 480, 4801, -33})
    void aDelayIsFoundToTheSample(int frames) throws Exception {
        double[] sound = Sounds.noise(0.1, 20, RATE_HZ, 21);
        Transfer transfer = Transfer.of(part("a.wav", sound), part("b.wav", behind(sound, frames)));
        assertThat(transfer.delayS() * RATE_HZ).isCloseTo(frames, offset(1e-6));
        assertThat(transfer.bands()).hasSize(21);
        assertThat(transfer.gainDb()).allSatisfy(db -> assertThat(db).isCloseTo(-20, offset(0.1)));
        assertThat(transfer.coherence()).allSatisfy(c -> assertThat(c).isBetween(0.98, 1.0001));
        assertThat(transfer.note()).isEmpty();
    }

    /** As much noise as sound: half of the energy follows, and the level reads 3 dB high. */
    @Test
    void noiseTakesCoherenceAndNotGain() throws Exception {
        double[] sound = Sounds.noise(0.1, 60, RATE_HZ, 21);
        double[] heard = Sounds.noise(0.01, 60, RATE_HZ, 22);
        for (int i = 0; i < heard.length; i++) {
            heard[i] += 0.1 * sound[i];
        }
        Transfer transfer = Transfer.of(part("a.wav", sound), part("b.wav", heard));
        assertThat(transfer.coherence()).allSatisfy(c -> assertThat(c).isCloseTo(0.5, offset(0.06)));
        assertThat(transfer.gainDb()).allSatisfy(db -> assertThat(db).isCloseTo(-20, offset(0.4)));
        assertThat(transfer.note().orElseThrow().of("b.wav").text())
                .startsWith(
                        "b.wav: in 21 of 21 third octaves less than 0.80 of the sound follows the stimulus (coherence), least at");
    }

    @Test
    void anotherSoundDoesNotFollow() throws Exception {
        Transfer transfer = Transfer.of(
                part("a.wav", Sounds.noise(0.1, 20, RATE_HZ, 21)), part("b.wav", Sounds.noise(0.1, 20, RATE_HZ, 22)));
        assertThat(transfer.coherence()).allSatisfy(c -> assertThat(c).isLessThan(0.1));
    }

    /** The sound by a clock that runs fast by some parts in a million: its samples lie between those of the other, which a cubic tells. */
    private static double[] drifted(double[] sound, double share) {
        double[] heard = new double[sound.length];
        for (int i = 0; i < heard.length; i++) {
            double at = i * (1 + share);
            int k = (int) Math.floor(at);
            double t = at - k;
            double[] y = new double[4];
            for (int j = 0; j < 4; j++) {
                int n = k - 1 + j;
                y[j] = n >= 0 && n < sound.length ? sound[n] : 0;
            }
            // Lagrange through four samples; below a tenth of the rate it tells the sound to a hundredth.
            heard[i] = 0.1
                    * (y[0] * -t * (t - 1) * (t - 2) / 6
                            + y[1] * (t + 1) * (t - 1) * (t - 2) / 2
                            + y[2] * -(t + 1) * t * (t - 2) / 2
                            + y[3] * (t + 1) * t * (t - 1) / 6);
        }
        return heard;
    }

    /** A path of −20 dB recorded on another clock: all follows, to the last band, and the delay grows by what the clocks differ by. */
    @ParameterizedTest
    @ValueSource(doubles = {10e-6, -30e-6, 100e-6})
    void twoClocksAreNoNoise(double share) throws Exception {
        int rateHz = 96_000;
        double[] sound = Sounds.noise(0.1, 30, rateHz, 21);
        WavFile played = Sounds.file(folder.resolve("a.wav"), SampleFormat.FLOAT_64, rateHz, sound);
        WavFile heard = Sounds.file(folder.resolve("b.wav"), SampleFormat.FLOAT_64, rateHz, drifted(sound, share));
        Transfer transfer = Transfer.of(RecordedPart.whole(played, 1), RecordedPart.whole(heard, 1));
        assertThat(transfer.note()).isEmpty();
        assertThat(transfer.coherence()).allSatisfy(c -> assertThat(c).isBetween(0.97, 1.01));
        // A response that is read ahead of its time lags by ever less.
        assertThat(transfer.drift()).isCloseTo(-share, offset(0.3e-6));
    }

    /** What is noise stays noise: half of the energy does not follow on any clock. */
    @Test
    void noiseOnTwoClocksIsStillFound() throws Exception {
        double[] sound = Sounds.noise(0.1, 30, RATE_HZ, 21);
        double[] heard = drifted(sound, 20e-6);
        double[] noise = Sounds.noise(0.01, 30, RATE_HZ, 22);
        for (int i = 0; i < heard.length; i++) {
            heard[i] += noise[i];
        }
        Transfer transfer = Transfer.of(part("a.wav", sound), part("b.wav", heard));
        assertThat(transfer.coherence().subList(0, 15))
                .allSatisfy(c -> assertThat(c).isCloseTo(0.5, offset(0.1)));
        assertThat(transfer.drift()).isCloseTo(-20e-6, offset(1e-6));
    }

    @Test
    void aShortPartCannotBeCompared() throws Exception {
        double[] sound = Sounds.noise(0.1, 2, RATE_HZ, 21);
        RecordedPart part = part("a.wav", sound);
        assertThatThrownBy(() -> Transfer.of(part, part))
                .hasMessage("a.wav: is too short to be compared with a.wav: 4 s are needed");
    }
}
