package org.ellwand.sound;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.ellwand.input.InputException;
import org.ellwand.statistics.NormalStream;

/** Sounds made for tests. */
final class Sounds {
    private Sounds() {}

    static double[] sine(double frequencyHz, double amplitude, double seconds, double rateHz) {
        double[] samples = new double[(int) Math.round(seconds * rateHz)];
        for (int i = 0; i < samples.length; i++) {
            samples[i] = amplitude * Math.sin(2 * Math.PI * frequencyHz * i / rateHz);
        }
        return samples;
    }

    static double[] noise(double rms, double seconds, double rateHz, long seed) {
        double[] samples = new double[(int) Math.round(seconds * rateHz)];
        NormalStream stream = new NormalStream(seed);
        for (int i = 0; i < samples.length; i++) {
            samples[i] = rms * stream.next();
        }
        return samples;
    }

    static WavFile file(Path folder, int rateHz, double[]... channels) throws IOException, InputException {
        return file(folder.resolve("sound.wav"), SampleFormat.FLOAT_64, rateHz, channels);
    }

    static WavFile file(Path path, SampleFormat format, int rateHz, double[]... channels)
            throws IOException, InputException {
        Files.write(path, WavWriter.bytes(format, rateHz, channels));
        return WavFile.read(path, String.valueOf(path.getFileName()));
    }

    static SoundLevels measured(WavFile file, SoundAnalysis analysis, LevelListener listener)
            throws IOException, InputException {
        return SoundMeter.measure(RecordedPart.whole(file, 1), analysis, listener);
    }

    static SoundLevels measured(WavFile file, SoundAnalysis analysis) throws IOException, InputException {
        return measured(file, analysis, LevelListener.NONE);
    }
}
