package org.ellwand.measurement;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.nio.ByteBuffer;
import java.nio.channels.SeekableByteChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * A large sheet with one number a row, cut at line ends into parts that are read side by side: each with the lines down to the
 * header above it, and so a sheet by itself. In a sheet without quotes every line end ends a row.
 */
final class SheetParts {
    /** Small enough that parts are ready at about the same time, large enough that what all have in common costs nothing. */
    private static final int PART_BYTES = 4 << 20;

    /** No line of a sheet that is worth it is longer, nor all down to its header. */
    private static final int LONGEST = 1 << 16;

    private final Path path;
    private final int headerLine;
    /** The file down to the line end of its header. */
    private final byte[] head;
    /** Where parts begin, and where the last one ends, in bytes from the start of the file. */
    private final List<Long> cuts;

    private SheetParts(Path path, int headerLine, byte[] head, List<Long> cuts) {
        this.path = path;
        this.headerLine = headerLine;
        this.head = head;
        this.cuts = cuts;
    }

    /**
     * The parts of a sheet of two of them or more; empty where it is shorter, or where it is not to be cut.
     *
     * @param headerLine 0 for the first line that is not empty
     */
    static Optional<SheetParts> ofLarge(Path path, int headerLine) {
        return of(path, headerLine, PART_BYTES);
    }

    static Optional<SheetParts> of(Path path, int headerLine, int partBytes) {
        try {
            long size = Files.size(path);
            byte[] head = size < 2L * partBytes ? new byte[0] : head(path, headerLine);
            List<Long> cuts = head.length == 0 ? List.of() : cuts(path, head.length, size, partBytes);
            return cuts.size() < 3 ? Optional.empty() : Optional.of(new SheetParts(path, headerLine, head, cuts));
        } catch (IOException e) {
            // It is said by whoever reads it whole.
            return Optional.empty();
        }
    }

    /** Nothing where quotes or line ends without a line feed may stand above the rows. */
    private static byte[] head(Path path, int headerLine) throws IOException {
        ByteArrayOutputStream head = new ByteArrayOutputStream();
        for (int line = 1; line <= Math.max(1, headerLine) || isBlank(head, headerLine); line++) {
            Optional<byte[]> next = line(path, head.size());
            if (next.isEmpty() || head.size() > LONGEST) {
                return new byte[0];
            }
            head.writeBytes(next.get());
        }
        String text = head.toString(StandardCharsets.ISO_8859_1);
        boolean plain = text.indexOf('"') < 0 && text.replace("\r\n", "").indexOf('\r') < 0;
        return plain ? head.toByteArray() : new byte[0];
    }

    private static boolean isBlank(ByteArrayOutputStream head, int headerLine) {
        String text = head.toString(StandardCharsets.UTF_8);
        return headerLine == 0 && text.replace("\uFEFF", "").isBlank();
    }

    private static List<Long> cuts(Path path, long from, long size, int partBytes) throws IOException {
        List<Long> cuts = new ArrayList<>(List.of(from));
        for (long at = from + partBytes; at < size; at += partBytes) {
            Optional<byte[]> rest = line(path, at);
            if (rest.isEmpty()) {
                return List.of();
            }
            long cut = at + rest.get().length;
            if (cut > cuts.get(cuts.size() - 1) && cut < size) {
                cuts.add(cut);
            }
        }
        cuts.add(size);
        return cuts;
    }

    /** From a place in the file to behind the next line feed; empty where there is none near. */
    private static Optional<byte[]> line(Path path, long from) throws IOException {
        byte[] bytes = bytes(path, from, LONGEST);
        for (int i = 0; i < bytes.length; i++) {
            if (bytes[i] == '\n') {
                return Optional.of(Arrays.copyOf(bytes, i + 1));
            }
        }
        return Optional.empty();
    }

    private static byte[] bytes(Path path, long from, int most) throws IOException {
        try (SeekableByteChannel channel = Files.newByteChannel(path)) {
            ByteBuffer bytes = ByteBuffer.allocate((int) Math.max(0, Math.min(most, channel.size() - from)));
            channel.position(from);
            int read = 0;
            while (read >= 0 && bytes.hasRemaining()) {
                read = channel.read(bytes);
            }
            return bytes.hasRemaining() ? Arrays.copyOf(bytes.array(), bytes.position()) : bytes.array();
        }
    }

    /**
     * The whole sheet; empty where anything in it is amiss, or a cell stands in quotes: then it must be read from its start,
     * which tells what.
     *
     * @param form of a sheet whose problems go there
     */
    Optional<TidySheet> read(String file, Function<Found, SheetForm> form) {
        List<Optional<TidySheet>> parts = IntStream.range(0, cuts.size() - 1)
                .parallel()
                .mapToObj(part -> read(part, file, form))
                .toList();
        if (parts.stream().anyMatch(Optional::isEmpty)) {
            return Optional.empty();
        }
        TidySheet whole = parts.get(0).orElseThrow();
        int linesAbove = whole.lines();
        boolean together = true;
        for (Optional<TidySheet> next : parts.subList(1, parts.size())) {
            TidySheet part = next.orElseThrow();
            linesAbove -= headLines();
            together &= whole.join(part, linesAbove);
            linesAbove += part.lines();
        }
        return together ? Optional.of(whole) : Optional.empty();
    }

    private Optional<TidySheet> read(int part, String file, Function<Found, SheetForm> form) {
        Found found = new Found();
        TidySheet sheet = new TidySheet(form.apply(found));
        new Sheet(new SheetText(() -> open(part)), file, headerLine, found).read(sheet);
        return found.size() > 0 || sheet.hasQuotes() ? Optional.empty() : Optional.of(sheet);
    }

    private InputStream open(int part) throws IOException {
        long from = cuts.get(part);
        byte[] rows = bytes(path, from, (int) (cuts.get(part + 1) - from));
        return new SequenceInputStream(new ByteArrayInputStream(head), new ByteArrayInputStream(rows));
    }

    private int headLines() {
        int lines = 0;
        for (byte b : head) {
            lines += b == '\n' ? 1 : 0;
        }
        return lines;
    }
}
