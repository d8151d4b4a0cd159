package org.ellwand.measurement;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** The text of a data file: UTF-8, with or without a mark at its start; a byte that is not UTF-8 is an error. */
record SheetText(SheetText.Bytes bytes) {
    private static final char MARK = '\uFEFF';
    /** No more than the parser asks for at a time, so that it is handed on without a copy in between. */
    private static final int BUFFER = 1 << 13;

    /** What the text is decoded from, from its start each time. */
    interface Bytes {
        InputStream open() throws IOException;
    }

    static SheetText of(Path path) {
        return new SheetText(() -> Files.newInputStream(path));
    }

    /** Reading it throws a {@link java.nio.charset.CharacterCodingException} at a byte that is not UTF-8. */
    BufferedReader open() throws IOException {
        BufferedReader reader = new BufferedReader(new InputStreamReader(bytes.open(), strictDecoder()), BUFFER);
        reader.mark(1);
        if (reader.read() != MARK) {
            reader.reset();
        }
        return reader;
    }

    /** The 1-based line of the first byte that is not UTF-8. */
    int lineOfBadByte() throws IOException {
        CharsetDecoder decoder = strictDecoder();
        ByteBuffer bytes = ByteBuffer.allocate(BUFFER);
        CharBuffer chars = CharBuffer.allocate(BUFFER);
        LineCount lines = new LineCount();
        try (InputStream in = this.bytes.open()) {
            boolean end = false;
            while (!end) {
                int read = in.read(bytes.array(), bytes.position(), bytes.remaining());
                bytes.position(bytes.position() + Math.max(read, 0)).flip();
                CoderResult result = decoder.decode(bytes, chars, read < 0);
                lines.add(chars.flip());
                end = read < 0 || result.isError();
                bytes.compact();
                chars.clear();
            }
        }
        return lines.line;
    }

    private static CharsetDecoder strictDecoder() {
        return StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
    }

    /** Counts lines that end in LF, CR or both. */
    private static final class LineCount {
        private int line = 1;
        private char last;

        void add(CharBuffer chars) {
            while (chars.hasRemaining()) {
                char c = chars.get();
                if (c == '\r' || (c == '\n' && last != '\r')) {
                    line++;
                }
                last = c;
            }
        }
    }
}
