package org.ellwand.sound;

import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.Optional;

/** How a sample is stored, and what it is worth: full scale is ±1. Little-endian, as in every WAV file. */
public enum SampleFormat {
    /** Whole numbers of 16 bits. */
    PCM_16(1, 2) {
        @Override
        double decode(ByteBuffer bytes, int at) {
            return bytes.getShort(at) * 0x1p-15;
        }

        @Override
        void encode(ByteBuffer bytes, double value) {
            bytes.putShort((short) code(value, 15));
        }
    },
    /** Whole numbers of 24 bits. */
    PCM_24(1, 3) {
        @Override
        double decode(ByteBuffer bytes, int at) {
            int low = bytes.getShort(at) & 0xFFFF;
            return ((bytes.get(at + 2) << 16) | low) * 0x1p-23;
        }

        @Override
        void encode(ByteBuffer bytes, double value) {
            int code = (int) code(value, 23);
            bytes.putShort((short) code).put((byte) (code >> 16));
        }
    },
    /** Whole numbers of 32 bits. */
    PCM_32(1, 4) {
        @Override
        double decode(ByteBuffer bytes, int at) {
            return bytes.getInt(at) * 0x1p-31;
        }

        @Override
        void encode(ByteBuffer bytes, double value) {
            bytes.putInt((int) code(value, 31));
        }
    },
    /** Binary fractions of 32 bits. */
    FLOAT_32(3, 4) {
        @Override
        double decode(ByteBuffer bytes, int at) {
            return bytes.getFloat(at);
        }

        @Override
        void encode(ByteBuffer bytes, double value) {
            bytes.putFloat((float) value);
        }
    },
    /** Binary fractions of 64 bits. */
    FLOAT_64(3, 8) {
        @Override
        double decode(ByteBuffer bytes, int at) {
            return bytes.getDouble(at);
        }

        @Override
        void encode(ByteBuffer bytes, double value) {
            bytes.putDouble(value);
        }
    };

    /** Tag of whole numbers in the header. */
    static final int PCM_TAG = 1;

    private final int tag;
    private final int bytes;

    SampleFormat(int tag, int bytes) {
        this.tag = tag;
        this.bytes = bytes;
    }

    int tag() {
        return tag;
    }

    /** Bytes per sample of one channel. */
    int bytes() {
        return bytes;
    }

    boolean isPcm() {
        return tag == PCM_TAG;
    }

    /** The distance of two neighbouring sample values near full scale. */
    double step() {
        return isPcm() ? Math.scalb(1.0, 1 - 8 * bytes) : 0x1p-24;
    }

    /** The sample that begins at a byte. */
    abstract double decode(ByteBuffer bytes, int at);

    /** Appends a sample; whole numbers are rounded and held within full scale. */
    abstract void encode(ByteBuffer bytes, double value);

    private static long code(double value, int bits) {
        long most = 1L << bits;
        return Math.max(-most, Math.min(most - 1, Math.round(value * most)));
    }

    static Optional<SampleFormat> of(int tag, int bits) {
        return Arrays.stream(values())
                .filter(format -> format.tag == tag && format.bytes * 8 == bits)
                .findFirst();
    }
}
