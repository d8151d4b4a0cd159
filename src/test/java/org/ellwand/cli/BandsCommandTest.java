package org.ellwand.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.ellwand.acoustics.Resolution;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.SessionReader;
import org.ellwand.sound.SampleFormat;
import org.ellwand.sound.WavWriter;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BandsCommandTest {
    private static final int RATE_HZ = 48_000;

    @TempDir
    Path temp;

    private static CommandLineRun run(String... args) {
        return CommandLineRun.of(Main.commands(new PrintWriter(Writer.nullWriter())), args);
    }

    private static double[] sine(double hz, double amplitude, double seconds) {
        double[] samples = new double[(int) (seconds * RATE_HZ)];
        for (int i = 0; i < samples.length; i++) {
            samples[i] = amplitude * Math.sin(2 * Math.PI * hz * i / RATE_HZ);
        }
        return samples;
    }

    private String wav(String name, double[]... channels) throws IOException {
        Path file = temp.resolve(name);
        Files.write(file, WavWriter.bytes(SampleFormat.PCM_24, RATE_HZ, channels));
        return file.toString();
    }

    private CommandLineRun bands(String recording, String... more) {
        String[] first = {
            "bands", recording, "--calibration", temp.resolve("cal.wav").toString(), "--calibrated-at", "94 dB SPL"
        };
        return run(java.util.stream.Stream.concat(java.util.Arrays.stream(first), java.util.Arrays.stream(more))
                .toArray(String[]::new));
    }

    @BeforeEach
    void calibrate() throws IOException {
        wav("cal.wav", sine(1000, 0.1, 3));
    }

    /** A tone 6.02 dB stronger than the calibrator's. */
    @Test
    void theSheetGoesToStandardOutputAndTheRestBesideIt() throws IOException {
        String ear = wav("ear.wav", sine(1000, 0.2, 12));
        CommandLineRun run = bands(ear);
        assertThat(run.exitCode()).isZero();
        assertThat(run.out()).startsWith("frequency (Hz),level (dB SPL)\n20,").contains("\n1000,100.02\n");
        assertThat(run.err())
                .startsWith(ear + ", channel 1 of 1, from 0.000 s for 12.000 s at 48000 samples per second\n"
                        + "calibration: 1000.0 Hz, steady within 0.00 dB for 2.8 s; full scale is 117.01 dB SPL\n"
                        + "dB SPL, fast: equivalent, maximum, peak, exceeded for 5, 10, 50, 90 and 95 % of the time\n"
                        + "  A  100.0")
                .endsWith(ear
                        + ": 12.000 s are short for the bands up to 25 Hz: under noise the level at 20 Hz scatters by"
                        + " 0.6 dB (k = 1), which belongs into the session's uncertainty; record longer\n");
    }

    @Test
    void sheetAndTraceAreWhatASessionNames() throws Exception {
        String ear = wav("ear.wav", sine(500, 0.2, 12));
        Path measurements = Files.createDirectories(temp.resolve("yard/measurements"));
        for (String resolution : List.of("octave", "third-octave", "sixth-octave", "twelfth-octave")) {
            String sheet = measurements.resolve(resolution + ".csv").toString();
            String trace = measurements.resolve(resolution + "-trace.csv").toString();
            CommandLineRun run =
                    bands(ear, "--resolution", resolution, "--out", sheet, "--trace", trace, "--weighting", "Z");
            assertThat(run.exitCode()).isZero();
            assertThat(run.out()).isEmpty();
            assertThat(run.err()).contains("curve sheet written to " + sheet, "trace written to " + trace);
            Files.writeString(measurements.resolve("yard.yaml"), """
                    session: yard
                    ear: crew-01-left
                    resolution: %1$s
                    levels in: dB SPL
                    stimuli: {tone: {kind: pure tone, level: 100 dB SPL}}
                    uncertainty: unknown
                    data:
                      - {file: %1$s.csv, layout: rows, device: open ear, stimulus: tone}
                    traces:
                      - {file: %1$s-trace.csv, device: open ear, stimulus: tone}
                    """.formatted(resolution));
            Session session = SessionReader.read(temp.resolve("yard"), "measurements/yard.yaml");
            assertThat(session.resolution())
                    .contains(Resolution.named(resolution).orElseThrow());
            assertThat(session.readings()).hasSize(1);
            assertThat(session.traces().get(0).timeS()).hasSize(1200);
            assertThat(session.traces().get(0).levelDb().get(1000)).isBetween(100.01, 100.03);
        }
    }

    /** A slip of whoever named it, not a failure of the machine. */
    @Test
    void aRecordingThatIsNotThereIsBadInput() throws IOException {
        String ear = wav("ear.wav", sine(500, 0.1, 2));
        String gone = temp.resolve("gone.wav").toString();
        CommandLineRun missing = new CommandLineRun(2, "", gone + ": no such file\n");
        assertThat(bands(gone)).isEqualTo(missing);
        assertThat(run("bands", ear, "--calibration", gone, "--calibrated-at", "94 dB SPL"))
                .isEqualTo(missing);
        assertThat(bands(ear, "--times-from", "sync mark", "--stimulus", gone).exitCode())
                .isEqualTo(2);
        assertThat(bands(temp.toString()))
                .isEqualTo(new CommandLineRun(2, "", temp + ": is a folder; a recording is a file\n"));
    }

    @Test
    void oneChannelOfSeveralHasToBeNamed() throws IOException {
        String ear = wav("ear.wav", sine(500, 0.1, 2), sine(1000, 0.1, 2));
        assertThat(bands(ear).err()).isEqualTo(ear + ": has 2 channels; say which one is meant\n");
        assertThat(bands(ear, "--channel", "3").err()).isEqualTo(ear + ": has no channel 3; there are 1 to 2\n");
        assertThat(bands(ear, "--channel", "2").out()).contains("\n1000,94.0");
    }

    @Test
    void aPartThatIsNotThereIsRefused() throws IOException {
        String ear = wav("ear.wav", sine(500, 0.1, 2));
        assertThat(bands(ear, "--from", "1 s", "--to", "3 s"))
                .isEqualTo(
                        new CommandLineRun(2, "", ear + ": lasts 2.000 s; from 1.000 s to 3.000 s is no part of it\n"));
        assertThat(bands(ear, "--from", "1500 ms").err()).contains("from 1.500 s for 0.500 s");
        assertThat(bands(ear, "--from", "soon").err())
                .startsWith("ellwand bands: --from takes a number with its unit as '2.5 s', not 'soon'\n");
    }

    @Test
    void aFileThatIsThereIsNotWrittenOver() throws IOException {
        String ear = wav("ear.wav", sine(500, 0.1, 2));
        Path mine = Files.writeString(temp.resolve("mine.csv"), "mine");
        assertThat(bands(ear, "--out", mine.toString()))
                .isEqualTo(new CommandLineRun(2, "", mine + ": is there already; give a new file\n"));
        assertThat(mine).hasContent("mine");
    }

    @Test
    void whatIsWrongIsSaidWithWhatFollows() throws IOException {
        double[] sound = sine(200, 1.4, 2);
        java.util.Arrays.fill(sound, 48_000, 48_480, 0);
        String ear = wav("ear.wav", sound);
        wav("cal.wav", sine(1030, 0.1, 3));
        String cal = temp.resolve("cal.wav").toString();
        assertThat(bands(ear).err())
                .contains(cal
                        + ": the tone is at 1030.0 Hz and not at 1000.0 Hz: it may not be the calibrator's, and then every"
                        + " level is wrong\n")
                .contains(ear + ": the sound is cut off at 0.0 dB re full scale in 79")
                .contains(
                        ear + ": equal samples amid sound in 1 place, first at 1.000 s, for up to 10.0 ms: samples were"
                                + " lost, levels are too low by their share and the gaps sound in every band; record again\n")
                .contains(
                        ear + ": 2.000 s are short for the bands up to 160 Hz: under noise the level at 20 Hz scatters")
                .doesNotContain("DC");
        assertThat(bands(ear, "--calibrator-frequency", "1030 Hz").err()).doesNotContain("the tone is at");
    }

    @Test
    void aTakeIsHeldAgainstTheStimulusFromTheSyncMarkOn() throws IOException {
        String pink = temp.resolve("pink.wav").toString();
        CommandLineRun made = run("stimulus", "pink", "--time", "10 s", "--out", pink);
        assertThat(made.exitCode()).isZero();
        assertThat(made.err())
                .startsWith("pink written to " + pink + "; peak -8.")
                .contains("times from: sync mark\n  from: 1.250 s, to: 12.173 s   pink noise at -20.0 dB\n");
        byte[] played = Files.readAllBytes(Path.of(pink));
        double[] late = new double[(played.length - 44) / 3 + 9_600];
        for (int i = 0; i + 9_600 < late.length; i++) {
            int at = 44 + 3 * i;
            int code = (played[at + 2] << 16) | ((played[at + 1] & 0xFF) << 8) | (played[at] & 0xFF);
            late[i + 9_600] = 0.25 * code / (1 << 23);
        }
        String ear = wav("ear.wav", late);
        String sheet = temp.resolve("transfer.csv").toString();
        CommandLineRun run = bands(
                ear,
                "--times-from",
                "sync mark",
                "--from",
                "1.25 s",
                "--to",
                "12 s",
                "--stimulus",
                pink,
                "--transfer",
                sheet);
        assertThat(run.exitCode()).isZero();
        assertThat(run.err())
                .contains("from 1.950 s for 10.750 s")
                .contains(ear + ": 0.000 ms behind " + pink + " after the sync mark\ngain and coherence written to "
                        + sheet);
        assertThat(Path.of(sheet)).content().contains("\n1000,-12.04,1.000\n");
        assertThat(bands(ear, "--stimulus", pink).err())
                .startsWith(
                        "ellwand bands: --stimulus needs --times-from 'sync mark': both are compared from there on\n");
        assertThat(bands(
                                ear,
                                "--times-from",
                                "sync mark",
                                "--stimulus",
                                temp.resolve("cal.wav").toString())
                        .err())
                .endsWith("cal.wav: the sync mark is not heard in the first 120 s\n");
    }

    /** Exit code 2 says that nothing came of it: then no file is there. */
    @Test
    void whatCannotBeDoneLeavesNoFiles() throws IOException {
        String ear = wav("ear.wav", sine(500, 0.1, 8));
        String sheet = temp.resolve("sheet.csv").toString();
        String trace = temp.resolve("trace.csv").toString();
        assertThat(bands(
                        ear,
                        "--out",
                        sheet,
                        "--trace",
                        temp.resolve("./sheet.csv").toString()))
                .extracting(CommandLineRun::exitCode, CommandLineRun::err)
                .containsExactly(
                        2,
                        "ellwand bands: --out and --trace name the same file; give each its own\n"
                                + "ellwand bands --help shows what is accepted\n");
        String pink = temp.resolve("pink.wav").toString();
        String pink44 = temp.resolve("pink44.wav").toString();
        assertThat(run("stimulus", "pink", "--time", "5 s", "--out", pink).exitCode())
                .isZero();
        assertThat(run("stimulus", "pink", "--time", "5 s", "--rate", "44100", "--out", pink44)
                        .exitCode())
                .isZero();
        CommandLineRun otherRate =
                bands(pink, "--times-from", "sync mark", "--stimulus", pink44, "--out", sheet, "--trace", trace);
        assertThat(otherRate.exitCode()).isEqualTo(2);
        assertThat(otherRate.err()).isEqualTo(pink + ": has 48000 samples per second, and " + pink44 + " has 44100\n");
        String there = Files.writeString(temp.resolve("there.csv"), "mine").toString();
        assertThat(bands(
                                pink,
                                "--times-from",
                                "sync mark",
                                "--stimulus",
                                pink,
                                "--out",
                                sheet,
                                "--trace",
                                trace,
                                "--transfer",
                                there)
                        .exitCode())
                .isEqualTo(2);
        assertThat(temp.resolve("sheet.csv")).doesNotExist();
        assertThat(temp.resolve("trace.csv")).doesNotExist();
        assertThat(temp.resolve("there.csv")).hasContent("mine");
    }

    @Test
    void whatIsAboutATraceNeedsOne() throws IOException {
        String ear = wav("ear.wav", sine(500, 0.1, 2));
        assertThat(bands(ear, "--every", "20 ms"))
                .extracting(CommandLineRun::exitCode, CommandLineRun::out)
                .containsExactly(2, "");
        assertThat(bands(ear, "--weighting", "C").err())
                .startsWith("ellwand bands: --weighting needs --trace: it is about the trace alone\n");
        assertThat(bands(ear, "--weighting", "B").err())
                .startsWith("ellwand bands: --weighting takes A, C or Z, not 'B'\n");
        assertThat(bands(ear, "--channel", "left").err())
                .startsWith("ellwand bands: --channel takes a whole number, not 'left'\n");
        assertThat(run("audit", temp.toString(), "--png=3").err())
                .startsWith("ellwand audit: --png takes true or false, not '3'\n");
    }

    @Test
    void whatIsNoStimulusIsRefused() {
        String out = temp.resolve("a.wav").toString();
        assertThat(run("stimulus", "brown", "--out", out).err())
                .startsWith("ellwand stimulus: there is no stimulus 'brown'; there are pink, step and tones\n");
        assertThat(run("stimulus", "pink", "--level", "-6 dB", "--time", "1 s", "--out", out)
                        .err())
                .startsWith(
                        "ellwand stimulus: the sound would be cut off: its peak is 6.0 dB above full scale; take a lower level\n");
        assertThat(run("stimulus", "tones", "--rate", "8000", "--out", out).err())
                .startsWith("ellwand stimulus: --rate takes 44100, 48000, 88200, 96000, 176400 or 192000, not 8000\n");
        assertThat(temp.resolve("a.wav")).doesNotExist();
    }
}
