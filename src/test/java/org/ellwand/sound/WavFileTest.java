package org.ellwand.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HexFormat;
import org.ellwand.input.InputException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class WavFileTest {
    private static final double[] VALUES = {0, 0.5, -0.5, 0.25, -1, 0.125};

    @TempDir
    Path folder;

    private WavFile written(byte[] bytes) throws IOException, InputException {
        return WavFile.read(Files.write(folder.resolve("a.wav"), bytes), "a.wav");
    }

    private static double[] all(WavFile file, int channel) throws IOException, InputException {
        double[] samples = new double[(int) file.frames() + 3];
        try (SampleReader reader = file.open(channel)) {
            int count = reader.read(samples);
            assertThat(reader.read(samples)).isZero();
            return Arrays.copyOf(samples, count);
        }
    }

    @ParameterizedTest
    @EnumSource
    void everyFormatGivesItsSamples(SampleFormat format) throws IOException, InputException {
        WavFile file = written(WavWriter.bytes(format, 96_000, new double[VALUES.length], VALUES));
        assertThat(file.rateHz()).isEqualTo(96_000);
        assertThat(file.channels()).isEqualTo(2);
        assertThat(file.frames()).isEqualTo(6);
        assertThat(all(file, 1)).containsOnly(0);
        assertThat(all(file, 2)).containsExactly(VALUES);
    }

    @Test
    void aPartIsReadFromItsFirstSample() throws IOException, InputException {
        WavFile file = written(WavWriter.bytes(SampleFormat.PCM_24, 48_000, VALUES));
        double[] two = new double[9];
        try (SampleReader reader = file.open(1, 3, 2)) {
            assertThat(reader.read(two)).isEqualTo(2);
        }
        assertThat(two).startsWith(0.25, -1, 0);
    }

    /** Header as in the Library of Congress's description of WAVE_FORMAT_EXTENSIBLE, from memory: 40 bytes with the tag in an identifier. */
    private static ByteBuffer extensible(String kind, int dataSize) {
        ByteBuffer bytes = ByteBuffer.allocate(128).order(ByteOrder.LITTLE_ENDIAN);
        bytes.put(ascii(kind)).putInt(-1).put(ascii("WAVE"));
        if (kind.equals("RF64")) {
            bytes.put(ascii("ds64"))
                    .putInt(28)
                    .putLong(120)
                    .putLong(4)
                    .putLong(1)
                    .putInt(0);
        }
        bytes.put(ascii("fmt ")).putInt(40).putShort((short) 0xFFFE).putShort((short) 2);
        bytes.putInt(48_000).putInt(192_000).putShort((short) 4).putShort((short) 16);
        bytes.putShort((short) 22).putShort((short) 16).putInt(3).putShort((short) 1);
        bytes.put(HexFormat.of().parseHex("000000001000800000aa00389b71"));
        return bytes.put(ascii("data"))
                .putInt(dataSize)
                .putShort((short) 0x4000)
                .putShort((short) 0xC000);
    }

    private static byte[] ascii(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }

    private static byte[] cut(ByteBuffer bytes) {
        return Arrays.copyOf(bytes.array(), bytes.position());
    }

    @Test
    void anExtensibleFormatIsReadByItsIdentifier() throws IOException, InputException {
        WavFile file = written(cut(extensible("RIFF", 4)));
        assertThat(all(file, 1)).containsExactly(0.5);
        assertThat(all(file, 2)).containsExactly(-0.5);
    }

    @Test
    void aLongFileHasItsLengthInItsFirstChunk() throws IOException, InputException {
        assertThat(written(cut(extensible("RF64", -1))).frames()).isEqualTo(1);
    }

    @Test
    void chunksBeforeTheSamplesAreSkippedWithTheirPadding() throws IOException, InputException {
        byte[] plain = WavWriter.bytes(SampleFormat.PCM_16, 44_100, VALUES);
        ByteBuffer bytes = ByteBuffer.allocate(plain.length + 12).put(plain, 0, 12);
        bytes.put(ascii("note")).put(new byte[] {3, 0, 0, 0}).put(ascii("abc")).put((byte) 0);
        bytes.put(plain, 12, plain.length - 12);
        assertThat(all(written(bytes.array()), 1)).containsExactly(VALUES);
    }

    /** Byte to change, what is written there (16 bits), and what is said. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    0  | 0     | byte 0: is not a WAV file: it begins with neither RIFF nor RF64, then WAVE
                    16 | 4000  | byte 12: the chunk 'fmt ' of 4000 bytes ends behind the end of the file, which has 56 bytes
                    16 | 8     | byte 28: the chunk '?X??' of 1048578 bytes ends behind the end of the file, which has 56 bytes
                    20 | 85    | byte 20: samples of 16 bits with format tag 85; accepted are whole numbers (tag 1) of 16, 24 and 32 bits and floats (tag 3) of 32 and 64
                    22 | 0     | byte 22: 0 channels; accepted are 1 to 256
                    22 | 3     | byte 32: a frame of 2 bytes, but 3 channels of 16 bits make 6
                    24 | 22050 | byte 24: 22050 samples per second; accepted are 44100 to 192000
                    34 | 12    | byte 20: samples of 12 bits with format tag 1; accepted are whole numbers (tag 1) of 16, 24 and 32 bits and floats (tag 3) of 32 and 64
                    36 | 0     | byte 56: the file ends before the samples ('data' was not found)
                    40 | 14    | byte 36: the header says 14 bytes of samples, the file holds 12: the recording was cut off, or its recorder did not close it
                    40 | 11    | byte 36: 11 bytes of samples are no whole number of frames of 2 bytes
                    40 | 0     | byte 36: the header says 0 bytes of samples, the file holds 12
                    """)
    void aWrongHeaderIsRefusedWithItsPlace(int at, int value, String text) {
        ByteBuffer bytes = ByteBuffer.wrap(WavWriter.bytes(SampleFormat.PCM_16, 44_100, VALUES))
                .order(ByteOrder.LITTLE_ENDIAN);
        bytes.putShort(at, (short) value);
        assertThatThrownBy(() -> written(bytes.array()))
                .isInstanceOf(InputException.class)
                .hasMessage("a.wav: " + text);
    }

    /** Whole numbers of 32 and 64 bits that no file is long enough for; the lengths may overflow no sum. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    16 | ffffffff | byte 12: the chunk 'fmt ' of 4294967295 bytes ends behind the end of the file, which has 56 bytes
                    16 | ffffff7f | byte 12: the chunk 'fmt ' of 2147483647 bytes ends behind the end of the file, which has 56 bytes
                    22 | ffff     | byte 22: 65535 channels; accepted are 1 to 256
                    24 | ffffffff | byte 24: 4294967295 samples per second; accepted are 44100 to 192000
                    40 | ffffffff | byte 36: the header says 4294967295 bytes of samples, the file holds 12: the recording was cut off, or its recorder did not close it
                    40 | 00000080 | byte 36: the header says 2147483648 bytes of samples, the file holds 12: the recording was cut off, or its recorder did not close it
                    """)
    void aHugeNumberInTheHeaderIsRefusedWithItsPlace(int at, String hex, String text) {
        ByteBuffer bytes = ByteBuffer.wrap(WavWriter.bytes(SampleFormat.PCM_16, 44_100, VALUES));
        bytes.put(at, HexFormat.of().parseHex(hex));
        assertThatThrownBy(() -> written(bytes.array()))
                .isInstanceOf(InputException.class)
                .hasMessage("a.wav: " + text);
    }

    @ParameterizedTest
    @ValueSource(longs = {5, Long.MAX_VALUE, Long.MIN_VALUE, -1})
    void aHugeLengthOfALongFileIsRefused(long length) {
        byte[] bytes = cut(extensible("RF64", -1));
        ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN).putLong(28, length);
        assertThatThrownBy(() -> written(bytes))
                .isInstanceOf(InputException.class)
                .hasMessageStartingWith("a.wav: byte 96: the header says ");
    }

    @Test
    void noMoreThanAThousandChunksAreLookedAt() {
        byte[] plain = WavWriter.bytes(SampleFormat.PCM_16, 44_100, VALUES);
        ByteBuffer bytes = ByteBuffer.allocate(12 + 8 * 1001).put(plain, 0, 12);
        while (bytes.hasRemaining()) {
            bytes.put(ascii("none")).putInt(0);
        }
        assertThatThrownBy(() -> written(bytes.array()))
                .hasMessage("a.wav: byte 8012: more than 1000 chunks stand before the samples");
    }

    @Test
    void everyCutHeaderIsRefused() {
        byte[] whole = WavWriter.bytes(SampleFormat.PCM_16, 44_100, VALUES);
        for (int length = 0; length < whole.length; length++) {
            byte[] part = Arrays.copyOf(whole, length);
            assertThatThrownBy(() -> written(part)).isInstanceOf(InputException.class);
        }
    }

    @Test
    void aSampleThatIsNoNumberIsRefusedWithItsPlace() throws IOException, InputException {
        WavFile file = written(WavWriter.bytes(SampleFormat.FLOAT_32, 48_000, new double[] {0, Double.NaN}));
        assertThatThrownBy(() -> all(file, 1)).hasMessage("a.wav: byte 48: a sample is not a number");
    }
}
