package org.ellwand.cli;

import java.io.FilterWriter;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;

/**
 * Text that steers no terminal: control characters (C0, C1, delete) and marks that turn the direction of writing become
 * question marks. Everything that commands print goes through {@link #over}; names and messages that must stay on one line
 * go through {@link #line} before.
 */
final class Plain {
    private Plain() {}

    /** One line, whatever was in the text. */
    static String line(String text) {
        return characters(text.replaceAll("\\R", " "));
    }

    /** A writer in front of another. Line ends and tabs stay, a carriage return only before a line feed. */
    static PrintWriter over(Writer target) {
        return new PrintWriter(new Checked(target), true);
    }

    private static String characters(String text) {
        StringBuilder plain = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean lineEnd = c == '\r' && i + 1 < text.length() && text.charAt(i + 1) == '\n';
            plain.append(steers(c) && !lineEnd ? '?' : c);
        }
        return plain.toString();
    }

    /** Marks of direction: Unicode Standard Annex 9, table of explicit and implicit formatting characters. */
    private static boolean steers(char c) {
        return (Character.isISOControl(c) && c != '\n' && c != '\t')
                || (c >= '\u202A' && c <= '\u202E')
                || (c >= '\u2066' && c <= '\u2069')
                || c == '\u200E'
                || c == '\u200F'
                || c == '\u061C';
    }

    private static final class Checked extends FilterWriter {
        Checked(Writer target) {
            super(target);
        }

        @Override
        public void write(int c) throws IOException {
            out.write(steers((char) c) ? '?' : c);
        }

        @Override
        public void write(char[] characters, int from, int count) throws IOException {
            write(new String(characters, from, count), 0, count);
        }

        @Override
        public void write(String text, int from, int count) throws IOException {
            out.write(characters(text.substring(from, from + count)));
        }
    }
}
