package org.ellwand.sound;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.ellwand.acoustics.Resolution;
import org.ellwand.input.InputException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ResultCacheTest {
    private static final double[] NUMBERS = {1.0 / 3, -0.0, Double.NaN, Double.NEGATIVE_INFINITY, 1e-300};

    @TempDir
    Path folder;

    private int measured;

    private SortedMap<String, double[]> numbers() {
        measured++;
        return new TreeMap<>(java.util.Map.of("row", NUMBERS, "empty", new double[0]));
    }

    /** Each time as another run of the program would. */
    private double[] get(WavFile file, String asked) throws IOException, InputException {
        SortedMap<String, double[]> got = new ResultCache(folder.resolve("cache")).get(file, asked, this::numbers);
        assertThat(got).containsOnlyKeys("row", "empty");
        return got.getOrDefault("row", new double[0]);
    }

    private WavFile sound(double amplitude) throws IOException, InputException {
        return Sounds.file(folder, 48_000, Sounds.sine(500, amplitude, 0.5, 48_000));
    }

    private Path only() throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve("cache"))) {
            return files.reduce((first, second) -> {
                        throw new AssertionError("more than one");
                    })
                    .orElseThrow();
        }
    }

    @Test
    void whatWasMeasuredIsRememberedToTheLastDigit() throws Exception {
        assertThat(get(sound(0.1), "a")).isEqualTo(NUMBERS);
        assertThat(get(sound(0.1), "a")).isEqualTo(NUMBERS);
        assertThat(measured).isEqualTo(1);
    }

    @Test
    void anotherSoundAndAnotherQuestionAreMeasured() throws Exception {
        get(sound(0.1), "a");
        get(sound(0.2), "a");
        get(sound(0.2), "b");
        assertThat(measured).isEqualTo(3);
    }

    @Test
    void theNameAndTheDateOfAFileDoNotMatter() throws Exception {
        get(sound(0.1), "a");
        Path copy = Files.copy(sound(0.1).path(), folder.resolve("copy.wav"));
        get(WavFile.read(copy, "copy.wav"), "a");
        assertThat(measured).isEqualTo(1);
    }

    @Test
    void itMayBeDeletedOrBroken() throws Exception {
        get(sound(0.1), "a");
        Files.delete(only());
        assertThat(get(sound(0.1), "a")).isEqualTo(NUMBERS);
        String whole = Files.readString(only());
        for (int length = 0; length < whole.length() - 1; length++) {
            Files.writeString(only(), whole.substring(0, length));
            assertThat(get(sound(0.1), "a")).isEqualTo(NUMBERS);
        }
        assertThat(measured).isEqualTo(whole.length() + 1);
    }

    @Test
    void whereItCannotBeWrittenEverythingIsMeasured() throws Exception {
        Files.writeString(folder.resolve("cache"), "a file in the way");
        get(sound(0.1), "a");
        get(sound(0.1), "a");
        assertThat(measured).isEqualTo(2);
    }

    @Test
    void levelsComeBackAsTheyWere() throws Exception {
        WavFile file = Sounds.file(folder, 48_000, Sounds.noise(0.1, 3, 48_000, 5));
        RecordedPart whole = RecordedPart.whole(file, 1);
        SoundAnalysis analysis = SoundAnalysis.of(Resolution.THIRD_OCTAVE);
        SoundLevels plain = SoundMeter.measure(whole, analysis, LevelListener.NONE);
        for (int run = 0; run < 2; run++) {
            RecordedSounds sounds = new RecordedSounds(new ResultCache(folder.resolve("cache")));
            assertThat(sounds.levels(whole, analysis)).isEqualTo(plain);
        }
    }
}
