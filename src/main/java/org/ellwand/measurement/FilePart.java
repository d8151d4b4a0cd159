package org.ellwand.measurement;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.Files;
import java.nio.file.Path;

/** The bytes of a file from one place to another. */
final class FilePart extends InputStream {
    private final SeekableByteChannel channel;
    private long left;

    /**
     * Opens the file.
     *
     * @param from in bytes from its start
     * @param to behind the last byte
     */
    FilePart(Path path, long from, long to) throws IOException {
        channel = Files.newByteChannel(path).position(from);
        left = to - from;
    }

    @Override
    public int read() throws IOException {
        byte[] one = new byte[1];
        return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
    }

    @Override
    public int read(byte[] bytes, int offset, int length) throws IOException {
        if (left == 0) {
            return -1;
        }
        int read = channel.read(ByteBuffer.wrap(bytes, offset, (int) Math.min(length, left)));
        left -= Math.max(read, 0);
        return read;
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }
}
