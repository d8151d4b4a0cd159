package org.ellwand.sound;

import java.io.IOException;
import java.nio.file.Path;
import org.ellwand.input.InputException;

/**
 * A WAV file whose header was read.
 *
 * @param path where it lies
 * @param name as messages call it
 * @param format how its samples are stored
 * @param rateHz samples per second
 * @param channels from 1 on
 * @param frames samples per channel
 * @param dataAt byte at which the samples begin
 */
public record WavFile(Path path, String name, SampleFormat format, int rateHz, int channels, long frames, long dataAt) {
    /** Lowest sampling rate that is read, in Hz. */
    public static final int LOWEST_RATE_HZ = 44_100;

    /** Highest sampling rate that is read, in Hz. */
    public static final int HIGHEST_RATE_HZ = 192_000;

    /**
     * Reads the header. Files are RIFF, or RF64 with a {@code ds64} chunk where they are longer than 4 GiB (EBU Tech 3306,
     * from memory); formats are PCM and float, plain or extensible.
     *
     * @param path where it lies
     * @param name as messages are to call the file
     * @return the header; no samples are read
     * @throws InputException where it is no such file, with the byte at which it ceases to be one
     * @throws IOException where it cannot be read
     */
    public static WavFile read(Path path, String name) throws IOException, InputException {
        try (WavHeader header = new WavHeader(path, name)) {
            return header.read();
        }
    }

    /** {@return how long it lasts, in s} */
    public double durationS() {
        return (double) frames / rateHz;
    }

    int frameBytes() {
        return channels * format.bytes();
    }

    /**
     * Opens the samples of one channel.
     *
     * @param channel from 1 on
     * @param from first frame
     * @param count how many frames
     * @return the samples, to be read and closed
     * @throws IOException where the file cannot be opened
     * @throws IllegalArgumentException where the file does not hold these frames
     */
    public SampleReader open(int channel, long from, long count) throws IOException {
        if (channel < 1 || channel > channels || from < 0 || count < 0 || from + count > frames) {
            throw new IllegalArgumentException(
                    "channel " + channel + ", frames " + from + " and " + count + " on are not all in " + name);
        }
        return new SampleReader(this, channel, from, count);
    }

    /**
     * {@return all samples of one channel, to be read and closed}
     *
     * @param channel from 1 on
     * @throws IOException where the file cannot be opened
     */
    public SampleReader open(int channel) throws IOException {
        return open(channel, 0, frames);
    }
}
