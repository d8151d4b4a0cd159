package org.ellwand.input;

/**
 * Where in a file something stands.
 *
 * @param file path relative to the audited folder, with forward slashes
 * @param line 1-based; 0 where the file as a whole is meant
 * @param column 1-based column in characters; 0 where the line as a whole is meant
 */
public record Place(String file, int line, int column) implements Comparable<Place> {
    /**
     * {@return the file as a whole}
     *
     * @param file path relative to the audited folder, with forward slashes
     */
    public static Place ofFile(String file) {
        return new Place(file, 0, 0);
    }

    @Override
    public int compareTo(Place other) {
        int byFile = file.compareTo(other.file);
        if (byFile != 0) {
            return byFile;
        }
        int byLine = Integer.compare(line, other.line);
        return byLine != 0 ? byLine : Integer.compare(column, other.column);
    }

    /** {@code claims/skerry.yaml:12:5}, as terminals and editors link it. */
    @Override
    public String toString() {
        return line == 0 ? file : column == 0 ? file + ":" + line : file + ":" + line + ":" + column;
    }
}
