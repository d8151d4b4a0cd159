package org.ellwand.fuzz;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.ellwand.input.InputException;
import org.ellwand.sound.SampleFormat;
import org.ellwand.sound.SampleReader;
import org.ellwand.sound.WavFile;
import org.ellwand.sound.WavWriter;

/** Recordings, made for the purpose, and a session that says everything that can be said of them. */
final class Sounds {
    private static final int RATE_HZ = 48_000;
    private static final double TONE_HZ = 1000;
    private static final double AMPLITUDE = 0.1;

    static final String SESSION = """
            session: yard
            product: Skerry
            ear: crew-01-left
            resolution: third-octave
            levels in: dB SPL
            stimuli: {sound: {kind: pink noise, level: 90 dB SPL}, tone: {kind: pure tone, level: 90 dB SPL}}
            uncertainty: unknown
            calibrator: {file: cal.wav, level: 94 dB SPL, channel: 1}
            recordings:
              - {file: ear.wav, device: open ear, stimulus: sound, from: 0.1 s, to: 1 s}
              - {file: ear.wav, setting: flood, stimulus: sound, insertion: 1, stimulus file: ear.wav}
              - {file: ear.wav, gives: harmonics, fundamental: 1 kHz, setting: flood, stimulus: tone}
              - file: ear.wav
                gives: trace
                time constant: 20 ms
                setting: flood
                stimulus: tone
                step: {at: 0.5 s, from: 94 dB SPL, to: 74 dB SPL}
            """;

    private Sounds() {}

    static void write(Path folder) throws IOException {
        Path measurements = Files.createDirectories(folder.resolve("measurements"));
        Files.writeString(measurements.resolve("yard.yaml"), SESSION);
        Files.write(measurements.resolve("cal.wav"), WavWriter.bytes(SampleFormat.PCM_16, RATE_HZ, tone(2)));
        Files.write(measurements.resolve("ear.wav"), WavWriter.bytes(SampleFormat.PCM_24, RATE_HZ, tone(1), tone(1)));
    }

    /** One of every format, of one channel and of two. */
    static List<byte[]> wavs() {
        double[] samples = Arrays.copyOf(tone(1), 500);
        return Arrays.stream(SampleFormat.values())
                .flatMap(format -> List.of(
                        WavWriter.bytes(format, RATE_HZ, samples), WavWriter.bytes(format, 96_000, samples, samples))
                        .stream())
                .toList();
    }

    private static double[] tone(int seconds) {
        double[] samples = new double[seconds * RATE_HZ];
        Arrays.setAll(samples, i -> AMPLITUDE * Math.sin(2 * Math.PI * TONE_HZ * i / RATE_HZ));
        return samples;
    }

    /** Reads every sample of every channel. */
    static void read(Path path, String name) throws IOException, InputException {
        WavFile file = WavFile.read(path, name);
        double[] block = new double[4096];
        for (int channel = 1; channel <= file.channels(); channel++) {
            try (SampleReader reader = file.open(channel)) {
                long all = 0;
                for (int count = reader.read(block); count > 0; count = reader.read(block)) {
                    all += count;
                }
                if (all != file.frames()) {
                    throw new AssertionError(all + " of " + file.frames() + " frames");
                }
            }
        }
    }
}
