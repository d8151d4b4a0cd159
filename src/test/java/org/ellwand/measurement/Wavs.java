package org.ellwand.measurement;

import org.ellwand.sound.SampleFormat;
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
}
