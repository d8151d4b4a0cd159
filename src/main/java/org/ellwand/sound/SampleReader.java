package org.ellwand.sound;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import org.ellwand.input.InputException;
import org.ellwand.input.Place;

/** The samples of one channel of a WAV file, one block after the other: memory does not grow with the file. */
public final class SampleReader implements AutoCloseable {
    private static final int BLOCK_BYTES = 1 << 18;

    private final WavFile file;
    private final FileChannel channel;
    private final ByteBuffer bytes;
    private final int offset;
    private long left;

    SampleReader(WavFile file, int channelNumber, long from, long count) throws IOException {
        this.file = file;
        this.channel = FileChannel.open(file.path());
        this.channel.position(file.dataAt() + from * file.frameBytes());
        int frames = Math.max(1, BLOCK_BYTES / file.frameBytes());
        this.bytes = ByteBuffer.allocate(frames * file.frameBytes()).order(ByteOrder.LITTLE_ENDIAN);
        this.bytes.limit(0);
        this.offset = (channelNumber - 1) * file.format().bytes();
        this.left = count;
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }

    /**
     * Reads the next samples, full scale ±1.
     *
     * @param target filled from its beginning
     * @return how many were read: as many as fit, fewer at the end, 0 behind it
     * @throws InputException where a sample is no number, or the file became shorter meanwhile
     * @throws IOException where the file cannot be read
     */
    public int read(double[] target) throws IOException, InputException {
        int done = 0;
        while (done < target.length && left > 0) {
            if (!bytes.hasRemaining()) {
                fill();
            }
            done += decode(target, done);
        }
        return done;
    }

    private int decode(double[] target, int done) throws IOException, InputException {
        int frameBytes = file.frameBytes();
        int count = Math.min(bytes.remaining() / frameBytes, target.length - done);
        SampleFormat format = file.format();
        int at = bytes.position();
        for (int i = 0; i < count; i++) {
            double value = format.decode(bytes, at + offset);
            if (!Double.isFinite(value)) {
                long byteAt = channel.position() - bytes.limit() + at + offset;
                throw new InputException(Place.ofFile(file.name()), "byte " + byteAt + ": a sample is not a number");
            }
            target[done + i] = value;
            at += frameBytes;
        }
        bytes.position(at);
        left -= count;
        return count;
    }

    private void fill() throws IOException, InputException {
        bytes.clear();
        bytes.limit((int) Math.min(bytes.capacity(), left * file.frameBytes()));
        while (bytes.hasRemaining()) {
            if (channel.read(bytes) < 0) {
                throw new InputException(
                        Place.ofFile(file.name()),
                        "byte " + channel.position() + ": the file ends before its samples do");
            }
        }
        bytes.flip();
    }
}
