package org.ellwand.sound;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HexFormat;
import org.ellwand.input.InputException;
import org.ellwand.input.Place;

/** Reads the chunks of a WAV file up to its samples. Trusts no number in it before it is held against the file's length. */
final class WavHeader implements AutoCloseable {
    private static final int MOST_CHUNKS = 1000;
    private static final int MOST_CHANNELS = 256;
    private static final int LONGEST_FORMAT = 1 << 16;
    private static final int EXTENSIBLE = 0xFFFE;
    private static final long IN_DS64 = 0xFFFFFFFFL;
    /** What follows the tag in the identifier of an extensible format. */
    private static final byte[] TAG_SUFFIX = HexFormat.of().parseHex("000000001000800000aa00389b71");

    private final FileChannel channel;
    private final Path path;
    private final String name;
    private final long length;
    private long at;
    private long longDataBytes = -1;
    private long formatAt = -1;
    private ByteBuffer format = ByteBuffer.allocate(0);

    WavHeader(Path path, String name) throws IOException {
        this.channel = FileChannel.open(path);
        this.path = path;
        this.name = name;
        this.length = channel.size();
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }

    WavFile read() throws IOException, InputException {
        ByteBuffer top = bytes(12, "the header");
        String kind = id(top, 0);
        if (!(kind.equals("RIFF") || kind.equals("RF64")) || !id(top, 8).equals("WAVE")) {
            throw wrong(0, "is not a WAV file: it begins with neither RIFF nor RF64, then WAVE");
        }
        for (int i = 0; i < MOST_CHUNKS; i++) {
            long chunkAt = at;
            ByteBuffer head = bytes(8, "the samples ('data' was not found)");
            String id = id(head, 0);
            long size = head.getInt(4) & IN_DS64;
            if (id.equals("data")) {
                return file(chunkAt, size == IN_DS64 && longDataBytes >= 0 ? longDataBytes : size);
            }
            chunk(id, size, chunkAt);
        }
        throw wrong(at, "more than " + MOST_CHUNKS + " chunks stand before the samples");
    }

    private void chunk(String id, long size, long chunkAt) throws IOException, InputException {
        long next = at + size + (size & 1);
        if (next > length) {
            throw wrong(
                    chunkAt,
                    "the chunk '" + id + "' of " + size + " bytes ends behind the end of the file, which has " + length
                            + " bytes");
        }
        if (id.equals("ds64") && size >= 16) {
            longDataBytes = bytes(16, "ds64").getLong(8);
        } else if (id.equals("fmt ")) {
            formatAt = at;
            format = bytes((int) Math.min(size, LONGEST_FORMAT), "the format");
        }
        at = next;
    }

    private WavFile file(long chunkAt, long dataBytes) throws InputException {
        if (formatAt < 0) {
            throw wrong(chunkAt, "the samples come before their format ('fmt ')");
        }
        if (format.capacity() < 16) {
            throw wrong(formatAt, "the format has " + format.capacity() + " bytes; it takes 16 or more");
        }
        int channels = format.getShort(2) & 0xFFFF;
        int bits = format.getShort(14) & 0xFFFF;
        SampleFormat samples = SampleFormat.of(tag(), bits)
                .orElseThrow(
                        () -> wrong(
                                formatAt,
                                "samples of " + bits + " bits with format tag " + tag()
                                        + "; accepted are whole numbers (tag 1) of 16, 24 and 32 bits and floats (tag 3) of 32 and 64"));
        if (channels < 1 || channels > MOST_CHANNELS) {
            throw wrong(formatAt + 2, channels + " channels; accepted are 1 to " + MOST_CHANNELS);
        }
        long rateHz = format.getInt(4) & IN_DS64;
        if (rateHz < WavFile.LOWEST_RATE_HZ || rateHz > WavFile.HIGHEST_RATE_HZ) {
            throw wrong(formatAt + 4, rateHz + " samples per second; accepted are 44100 to 192000");
        }
        int frameBytes = channels * samples.bytes();
        int stated = format.getShort(12) & 0xFFFF;
        if (stated != frameBytes) {
            throw wrong(
                    formatAt + 12,
                    "a frame of " + stated + " bytes, but " + channels + " channels of " + bits + " bits make "
                            + frameBytes);
        }
        checkData(chunkAt, dataBytes, frameBytes);
        return new WavFile(path, name, samples, (int) rateHz, channels, dataBytes / frameBytes, at);
    }

    private void checkData(long chunkAt, long dataBytes, int frameBytes) throws InputException {
        long there = length - at;
        if (dataBytes < 0 || dataBytes > there) {
            throw wrong(
                    chunkAt,
                    "the header says " + (dataBytes < 0 ? "too many" : dataBytes)
                            + " bytes of samples, the file holds " + there
                            + ": the recording was cut off, or its recorder did not close it");
        }
        if (dataBytes == 0) {
            throw wrong(chunkAt, "the header says 0 bytes of samples, the file holds " + there);
        }
        if (dataBytes % frameBytes != 0) {
            throw wrong(
                    chunkAt, dataBytes + " bytes of samples are no whole number of frames of " + frameBytes + " bytes");
        }
    }

    /** The tag; that of an extensible format stands further back. */
    private int tag() {
        int tag = format.getShort(0) & 0xFFFF;
        if (tag != EXTENSIBLE || format.capacity() < 40) {
            return tag;
        }
        byte[] suffix = new byte[TAG_SUFFIX.length];
        format.get(26, suffix);
        return Arrays.equals(suffix, TAG_SUFFIX) ? format.getShort(24) & 0xFFFF : EXTENSIBLE;
    }

    private ByteBuffer bytes(int count, String what) throws IOException, InputException {
        if (at + count > length) {
            throw wrong(length, "the file ends before " + what);
        }
        ByteBuffer buffer = ByteBuffer.allocate(count).order(ByteOrder.LITTLE_ENDIAN);
        while (buffer.hasRemaining() && channel.read(buffer, at + buffer.position()) >= 0) {
            // Reads on until all is there.
        }
        at += count;
        return buffer;
    }

    private static String id(ByteBuffer bytes, int at) {
        byte[] four = new byte[4];
        bytes.get(at, four);
        return new String(four, StandardCharsets.ISO_8859_1).replaceAll("[^ -~]", "?");
    }

    private InputException wrong(long byteAt, String text) {
        return new InputException(Place.ofFile(name), "byte " + byteAt + ": " + text);
    }
}
