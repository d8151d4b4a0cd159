package org.ellwand.measurement;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.ellwand.input.InputException;
import org.ellwand.sound.SampleFormat;
import org.ellwand.sound.SampleReader;
import org.ellwand.sound.Stimuli;
import org.ellwand.sound.WavFile;
import org.ellwand.sound.WavWriter;
import org.ellwand.statistics.NormalStream;

/** Recordings made for tests, at 48 kHz. */
final class Wavs {
    static final int RATE_HZ = 48_000;

    private Wavs() {}

    static byte[] bytes(double[]... channels) {
        return WavWriter.bytes(SampleFormat.FLOAT_32, RATE_HZ, channels);
    }

    static double[] tone(double hz, double amplitude, double seconds) {
        double[] samples = new double[(int) (seconds * RATE_HZ)];
        for (int i = 0; i < samples.length; i++) {
            samples[i] = amplitude * Math.sin(2 * Math.PI * hz * i / RATE_HZ);
        }
        return samples;
    }

    static double[] noise(double seconds) {
        double[] samples = new double[(int) (seconds * RATE_HZ)];
        NormalStream stream = new NormalStream(11);
        for (int i = 0; i < samples.length; i++) {
            samples[i] = 0.1 * stream.next();
        }
        return samples;
    }

    /** A sound behind the sync mark of a stimulus. */
    static double[] marked(double[] sound) throws IOException, InputException {
        Path stimulus = Files.createTempFile("mark", ".wav");
        try {
            Files.write(
                    stimulus, Stimuli.tones(RATE_HZ, List.of(1000.0), -20, 0.5).wav());
            double[] first = new double[(int) (1.25 * RATE_HZ)];
            try (SampleReader reader = WavFile.read(stimulus, "mark.wav").open(1)) {
                reader.read(first);
            }
            double[] all = Arrays.copyOf(first, first.length + sound.length);
            System.arraycopy(sound, 0, all, first.length, sound.length);
            return all;
        } finally {
            Files.delete(stimulus);
        }
    }
}
