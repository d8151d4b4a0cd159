package org.ellwand.sound;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/** WAV files as bytes: for sounds that fit into memory. */
public final class WavWriter {
    private static final int HEADER = 44;

    private WavWriter() {}

    /**
     * A file.
     *
     * @param format how the samples are stored
     * @param rateHz samples per second
     * @param channels samples of each channel, all of one length; full scale is ±1
     * @return the whole file
     * @throws ArithmeticException where it would be longer than 2 GiB
     */
    public static byte[] bytes(SampleFormat format, int rateHz, double[]... channels) {
        int frames = channels[0].length;
        int frameBytes = channels.length * format.bytes();
        int dataBytes = Math.multiplyExact(frames, frameBytes);
        byte[] whole = new byte[Math.addExact(HEADER, dataBytes + (dataBytes & 1))];
        ByteBuffer bytes = ByteBuffer.wrap(whole).order(ByteOrder.LITTLE_ENDIAN);
        bytes.put(ascii("RIFF")).putInt(bytes.capacity() - 8).put(ascii("WAVE"));
        bytes.put(ascii("fmt ")).putInt(16).putShort((short) format.tag()).putShort((short) channels.length);
        bytes.putInt(rateHz).putInt(rateHz * frameBytes);
        bytes.putShort((short) frameBytes).putShort((short) (format.bytes() * 8));
        bytes.put(ascii("data")).putInt(dataBytes);
        for (int i = 0; i < frames; i++) {
            for (double[] channel : channels) {
                format.encode(bytes, channel[i]);
            }
        }
        return whole;
    }

    private static byte[] ascii(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }
}
