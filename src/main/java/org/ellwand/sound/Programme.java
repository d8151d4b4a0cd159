package org.ellwand.sound;

import java.util.List;
import java.util.Optional;

/** A sound to play and record: half a second of silence, the sync mark, half a second of silence, and parts. */
public final class Programme {
    private final List<Part> parts;
    private final int rateHz;
    private final double[] samples;

    Programme(List<Part> parts, int rateHz, double[] samples) {
        this.parts = List.copyOf(parts);
        this.rateHz = rateHz;
        this.samples = samples;
    }

    /**
     * A stretch of sound to measure.
     *
     * @param what it is
     * @param fromS after the mark's beginning
     * @param toS its end
     * @param stepS when the sound steps, after the beginning of the part; absent: it does not
     */
    public record Part(String what, double fromS, double toS, Optional<Double> stepS) {}

    /** {@return the stretches to measure, in the order in which they are played} */
    public List<Part> parts() {
        return parts;
    }

    /** Its samples, full scale ±1. */
    double[] samples() {
        return samples.clone();
    }

    /** {@return the largest sample, full scale 1} */
    public double peak() {
        return PinkNoise.peak(samples);
    }

    /** {@return the programme as a WAV file of 24 bits, one channel} */
    public byte[] wav() {
        return WavWriter.bytes(SampleFormat.PCM_24, rateHz, samples);
    }
}
