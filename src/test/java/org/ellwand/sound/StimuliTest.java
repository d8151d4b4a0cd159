package org.ellwand.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Resolution;
import org.ellwand.acoustics.Weighting;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class StimuliTest {
    @TempDir
    Path folder;

    private WavFile written(Programme programme) throws Exception {
        Path path = folder.resolve("stimulus.wav");
        Files.write(path, programme.wav());
        return WavFile.read(path, "stimulus.wav");
    }

    /** The part of a recording that begins and ends some time after its mark. */
    private static RecordedPart part(WavFile file, Programme.Part part) throws Exception {
        double markS = (double) SyncMark.find(file, 1).orElseThrow() / file.rateHz();
        return RecordedPart.of(
                file, Optional.empty(), Optional.of(markS + part.fromS()), Optional.of(markS + part.toS()));
    }

    /** Pink: every third octave carries the same power; the lines lie between 15.4 Hz and 21 kHz, 31 third octaves. */
    @ParameterizedTest
    @CsvSource({"44100, 12", "48000, 12", "48000, 10", "96000, 12"})
    void pinkNoiseIsPinkAndHasItsCrest(int rateHz, double crestDb) throws Exception {
        Programme programme = Stimuli.pink(rateHz, List.of(-20.0), crestDb, 10, "test");
        assertThat(20 * Math.log10(programme.peak())).isBetween(-20 + crestDb - 0.3, -20 + crestDb + 0.2);
        SoundLevels levels = SoundMeter.measure(
                part(written(programme), programme.parts().get(0)),
                SoundAnalysis.of(Resolution.THIRD_OCTAVE),
                LevelListener.NONE);
        Band thousand = Band.nearest(Resolution.THIRD_OCTAVE, 1000);
        double middleDb = levels.levelDb().get(levels.bands().indexOf(thousand));
        assertThat(middleDb).isCloseTo(-20 - 10 * Math.log10(31), offset(0.4));
        for (int i = 0; i < levels.bands().size(); i++) {
            double hz = levels.bands().get(i).exactHz();
            if (hz > 99 && hz < 10_100) {
                assertThat(levels.levelDb().get(i) - middleDb).as(hz + " Hz").isCloseTo(0, offset(0.3));
            }
        }
    }

    @Test
    void theSameNameGivesTheSameBytes() {
        byte[] first = Stimuli.pink(48_000, List.of(-20.0), 12, 5, "test").wav();
        assertThat(Stimuli.pink(48_000, List.of(-20.0), 12, 5, "test").wav()).isEqualTo(first);
    }

    @Test
    void aSeriesHasItsLevels() throws Exception {
        Programme programme = Stimuli.pink(48_000, List.of(-50.0, -40.0, -30.0), 12, 5, "test");
        WavFile file = written(programme);
        for (int i = 0; i < 3; i++) {
            SoundLevels levels = SoundMeter.measure(
                    part(file, programme.parts().get(i)), SoundAnalysis.of(Resolution.OCTAVE), LevelListener.NONE);
            assertThat(levels.weighted(Weighting.Z).equivalentDb()).isCloseTo(-50 + 10 * i, offset(0.05));
        }
    }

    @Test
    void aStepHasItsTwoLevels() throws Exception {
        Programme programme = Stimuli.step(48_000, 2000, -45, -20, 2);
        assertThat(programme.parts()).extracting(Programme.Part::stepS).containsOnly(Optional.of(1.0));
        // A second before the first step begins the first part, and two before the end of all the second one.
        RecordedPart part = part(
                written(programme),
                new Programme.Part(
                        "both",
                        programme.parts().get(0).fromS() - 1,
                        programme.parts().get(1).toS(),
                        Optional.empty()));
        double[] at = new double[3];
        SoundMeter.measure(
                part, new SoundAnalysis(Resolution.OCTAVE, 900, 1100, 0.01, 0.01, Weighting.Z), (timeS, levelDb) -> {
                    int third = (int) ((timeS + 0.005) / 2);
                    if (timeS < 5.95 && Math.abs(timeS - 2 * third - 1.9) < 0.006) {
                        at[third] = levelDb;
                    }
                });
        assertThat(at[0]).isCloseTo(-45, offset(0.05));
        assertThat(at[1]).isCloseTo(-20, offset(0.05));
        assertThat(at[2]).isCloseTo(-45, offset(0.1));
    }

    /** Wherever a recording of it begins, whatever the gain, with noise about 5 dB above it and a steep slope of 12 dB per octave. */
    @ParameterizedTest
    @ValueSource(ints = {0, 777, 200_000})
    void theMarkIsFoundAgain(int lateFrames) throws Exception {
        double[] mark = SyncMark.samples(48_000);
        double[] samples = Sounds.noise(0.02, 8, 48_000, 9);
        double before = 0;
        double slow = 0;
        for (int i = 0; i < mark.length; i++) {
            // Two low-passes of first order at 1 kHz, as a plug takes the highs.
            before += 0.123 * (0.1 * mark[i] - before);
            slow += 0.123 * (before - slow);
            samples[lateFrames + 24_000 + i] += slow;
        }
        long found = SyncMark.find(Sounds.file(folder, 48_000, samples), 1).orElseThrow();
        assertThat(found - lateFrames - 24_000).isBetween(-20L, 20L);
    }

    @Test
    void noiseHoldsNoMark() throws Exception {
        WavFile file = Sounds.file(folder, 48_000, Sounds.noise(0.1, 30, 48_000, 9));
        assertThat(SyncMark.find(file, 1)).isEmpty();
        WavFile silence = Sounds.file(folder, 48_000, new double[480_000]);
        assertThat(SyncMark.find(silence, 1)).isEmpty();
    }
}
