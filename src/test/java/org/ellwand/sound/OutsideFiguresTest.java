package org.ellwand.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Resolution;
import org.ellwand.acoustics.Weighting;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Files made by sox, against what sox and SciPy say of the same files. Skipped where these are not installed. */
class OutsideFiguresTest {
    private static final Pattern RMS = Pattern.compile("RMS\\s+amplitude:\\s+([0-9.]+)");

    /** Mean squares of third-octave bands by Butterworth filters of eighth order at the file's own rate, without decimation. */
    private static final String SCIPY = """
            import sys, numpy, scipy.signal, scipy.io.wavfile
            rate, samples = scipy.io.wavfile.read(sys.argv[1])
            samples = samples / 2.0**31 if samples.dtype == numpy.int32 else samples.astype(float)
            for n in range(-10, 10):
                middle = 1000 * 10**(n / 10)
                edges = [middle * 10**-0.05, middle * 10**0.05]
                sos = scipy.signal.butter(4, edges, 'bandpass', fs=rate, output='sos')
                print(repr(float(numpy.mean(scipy.signal.sosfilt(sos, samples)**2))))
            """;

    @TempDir
    Path folder;

    private List<String> run(String... command) throws IOException, InterruptedException {
        Path out = folder.resolve("out.txt");
        assumeTrue(isInstalled(command[0]), command[0] + " is not installed: its figures were not compared");
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(out.toFile())
                .start();
        assertThat(process.waitFor(120, TimeUnit.SECONDS)).isTrue();
        List<String> lines = Files.readAllLines(out, StandardCharsets.UTF_8);
        assumeTrue(
                lines.stream().noneMatch(line -> line.startsWith("ModuleNotFoundError")),
                "SciPy is not installed: its figures were not compared");
        // Installed and failing is a fault, of the test or of what it was given.
        assertThat(process.exitValue())
                .as("%s: %s", String.join(" ", command), lines)
                .isZero();
        return lines;
    }

    private static boolean isInstalled(String program) {
        return Stream.of(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator))
                .anyMatch(place -> Files.isExecutable(Path.of(place, program)));
    }

    private WavFile made(String... effect) throws Exception {
        Path file = folder.resolve("sox.wav");
        List<String> command = new ArrayList<>(List.of("sox", "-R", "-n", "-r", "48000"));
        command.addAll(List.of("-b", effect[0], "-e", effect[1], "-c", "1", file.toString()));
        command.addAll(List.of(effect).subList(2, effect.length));
        run(command.toArray(String[]::new));
        return WavFile.read(file, "sox.wav");
    }

    @ParameterizedTest
    @CsvSource({
        "16, signed-integer, sine, 440",
        "24, signed-integer, sine, 1000",
        "32, signed-integer, pinknoise, 0",
        "32, floating-point, whitenoise, 0",
        "64, floating-point, sine, 6300"
    })
    void theRootMeanSquareIsThatOfSox(String bits, String encoding, String sound, String hz) throws Exception {
        WavFile file = made(bits, encoding, "synth", "5", sound, hz, "gain", "-12");
        double amplitude = run("sox", file.path().toString(), "-n", "stat").stream()
                .map(RMS::matcher)
                .filter(Matcher::find)
                .mapToDouble(found -> Double.parseDouble(found.group(1)))
                .findFirst()
                .orElseThrow();
        double levelDb = Sounds.measured(file, SoundAnalysis.of(Resolution.THIRD_OCTAVE))
                .weighted(Weighting.Z)
                .equivalentDb();
        // sox counts a constant in; it is no sound here.
        double offset = Sounds.measured(file, SoundAnalysis.of(Resolution.OCTAVE))
                .check()
                .offset();
        double expected = 10 * Math.log10(amplitude * amplitude - offset * offset);
        // sox prints six decimals.
        assertThat(levelDb).isCloseTo(expected, offset(0.005));
    }

    @Test
    void theBandsAreThoseOfSciPy() throws Exception {
        WavFile file = made("32", "signed-integer", "synth", "20", "pinknoise", "gain", "-12");
        List<Double> expected = run("python3", "-c", SCIPY, file.path().toString()).stream()
                .map(Double::valueOf)
                .toList();
        assertThat(expected).hasSize(20);
        SoundLevels levels = Sounds.measured(file, SoundAnalysis.of(Resolution.THIRD_OCTAVE));
        for (int n = -10; n < 10; n++) {
            Band band = new Band(Resolution.THIRD_OCTAVE, n);
            double levelDb = levels.levelDb().get(levels.bands().indexOf(band));
            // The two differ by how they begin and end: SciPy's has no fade, and what rings on is cut off.
            assertThat(levelDb)
                    .as(band.nominalHz() + " Hz")
                    .isCloseTo(10 * Math.log10(expected.get(n + 10)), offset(0.05));
        }
    }
}
