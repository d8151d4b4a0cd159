package org.ellwand.fuzz;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.SplittableRandom;

/** Makes broken files out of sound ones: bytes changed, parts cut out, doubled, moved, mixed, and words that matter put in. */
final class Mutator {
    private static final int MOST_CHANGES = 6;
    private static final int LONGEST = 60_000;

    /** What has meaning somewhere: marks of YAML and CSV, extremes of numbers, words of the formats, odd characters. */
    private static final List<String> WORDS = List.of(
            ":",
            ": ",
            "- ",
            "{",
            "}",
            "[",
            "]",
            "\"",
            "'",
            "|",
            ">",
            "&a",
            "*a",
            "!!x",
            "<<: ",
            "#",
            "---",
            "...",
            "%",
            ",",
            ";",
            "\t",
            "\n",
            "\r",
            "\r\n",
            "\n\n",
            "=",
            "@",
            "~",
            "null",
            "true",
            "NaN",
            "Infinity",
            "-Infinity",
            "1e308",
            "-1e308",
            "1e-320",
            "9999999999999999999999",
            "-0",
            "0",
            "00",
            "0x10",
            "1_000",
            "1,5",
            "\u22125",
            "\u00b1",
            "125 Hz to 8 kHz",
            "dB",
            "dB SPL",
            "dB(A)",
            "%",
            "ms",
            "s",
            "<",
            "<=",
            "> 3 dB",
            "at least",
            "up to",
            "mean",
            "every band",
            "overall",
            "slope",
            "each",
            "share of 90 %",
            "all",
            "open ear",
            "quiet",
            "lowest",
            "octave",
            "third octave",
            "twelfth octave",
            "claims",
            "rule",
            "otherwise",
            "session",
            "data",
            "file",
            "layout",
            "rows",
            "columns",
            "harmonics",
            "hz",
            "level",
            "ear",
            "insertion",
            "../../x",
            "/etc/hosts",
            "\u0000",
            "\u0007",
            "\u202e",
            "\ufeff",
            "\ud83d\ude00",
            "\u00e9",
            "(((((((((((",
            "[[[[[[[[[[[[[[[[",
            "{{{{{{{{{{{{{{{{",
            "a: a: a: a: ");

    private final SplittableRandom random;
    private final List<byte[]> sound;

    Mutator(long seed, List<byte[]> sound) {
        this.random = new SplittableRandom(seed);
        this.sound = List.copyOf(sound);
    }

    byte[] next() {
        byte[] bytes = any();
        int changes = 1 + random.nextInt(MOST_CHANGES);
        for (int i = 0; i < changes; i++) {
            bytes = changed(bytes);
        }
        return bytes.length > LONGEST ? part(bytes, 0, LONGEST) : bytes;
    }

    private byte[] any() {
        return sound.get(random.nextInt(sound.size()));
    }

    private byte[] changed(byte[] bytes) {
        int at = random.nextInt(bytes.length + 1);
        int length = Math.min(bytes.length - at, 1 + random.nextInt(1 << random.nextInt(10)));
        return switch (random.nextInt(9)) {
            case 0 ->
                joined(part(bytes, 0, at), new byte[] {(byte) random.nextInt(256)}, part(bytes, at, bytes.length));
            case 1 -> joined(part(bytes, 0, at), part(bytes, at + length, bytes.length));
            case 2 -> joined(part(bytes, 0, at + length), part(bytes, at, bytes.length));
            case 3 -> joined(part(bytes, 0, at), word(), part(bytes, at, bytes.length));
            case 4 -> joined(part(bytes, 0, at), word(), part(bytes, at + length, bytes.length));
            case 5 -> mixed(bytes, at, length);
            case 6 -> line(bytes);
            case 7 -> number(bytes, at);
            default -> repeated(bytes, at, Math.min(length, 40));
        };
    }

    private byte[] word() {
        return WORDS.get(random.nextInt(WORDS.size())).getBytes(StandardCharsets.UTF_8);
    }

    private byte[] mixed(byte[] bytes, int at, int length) {
        byte[] other = any();
        int from = random.nextInt(other.length + 1);
        int to = Math.min(other.length, from + 1 + random.nextInt(200));
        return joined(part(bytes, 0, at), part(other, from, to), part(bytes, at + length, bytes.length));
    }

    /** Two or four bytes turned into an extreme of whole numbers as binary headers hold them, least byte first. */
    private byte[] number(byte[] bytes, int at) {
        int[] extremes = {0, 1, -1, Integer.MAX_VALUE, Integer.MIN_VALUE, 0xFFFE, 0x7FFFFFF8, bytes.length};
        int value = extremes[random.nextInt(extremes.length)];
        byte[] changed = bytes.clone();
        int width = random.nextBoolean() ? 2 : 4;
        // Most of them where headers are.
        int from = random.nextBoolean() ? at : random.nextInt(64);
        for (int i = 0; i < width && from + i < changed.length; i++) {
            changed[from + i] = (byte) (value >>> (8 * i));
        }
        return changed;
    }

    /** One line swapped with another, which keeps most of the form. */
    private byte[] line(byte[] bytes) {
        String[] lines = new String(bytes, StandardCharsets.ISO_8859_1).split("\n", -1);
        int a = random.nextInt(lines.length);
        int b = random.nextInt(lines.length);
        String kept = lines[a];
        lines[a] = lines[b];
        lines[b] = random.nextBoolean() ? kept : lines[a];
        return String.join("\n", lines).getBytes(StandardCharsets.ISO_8859_1);
    }

    private byte[] repeated(byte[] bytes, int at, int length) {
        ByteArrayOutputStream more = new ByteArrayOutputStream();
        more.writeBytes(part(bytes, 0, at));
        int times = 1 << random.nextInt(9);
        for (int i = 0; i < times; i++) {
            more.writeBytes(part(bytes, at, at + length));
        }
        more.writeBytes(part(bytes, at, bytes.length));
        return more.toByteArray();
    }

    private static byte[] part(byte[] bytes, int from, int to) {
        int start = Math.min(from, bytes.length);
        byte[] part = new byte[Math.max(0, Math.min(to, bytes.length) - start)];
        System.arraycopy(bytes, start, part, 0, part.length);
        return part;
    }

    private static byte[] joined(byte[]... parts) {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        for (byte[] part : parts) {
            all.writeBytes(part);
        }
        return all.toByteArray();
    }
}
