package org.ellwand.cli;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.ellwand.input.InputException;
import org.ellwand.input.Place;

/** A file that is written whole or not at all, and never over another. */
final class NewFile implements AutoCloseable {
    private final Path file;
    private final Path fresh;
    private boolean kept;

    /**
     * A file that is not there yet.
     *
     * @throws InputException if it is there, or its folder is not, or may not be written
     */
    NewFile(Path file) throws InputException {
        Path absolute = checked(file);
        this.file = absolute;
        this.fresh = absolute.resolveSibling("." + absolute.getFileName() + ".ellwand-new-"
                + ProcessHandle.current().pid());
    }

    /**
     * {@return its absolute path}
     *
     * @throws InputException if it is there, or its folder is not, or may not be written
     */
    static Path checked(Path file) throws InputException {
        Path absolute = file.toAbsolutePath().normalize();
        if (Files.exists(absolute)) {
            throw new InputException(Place.ofFile(file.toString()), "is there already; give a new file");
        }
        if (!Files.isDirectory(absolute.resolveSibling(""))) {
            throw new InputException(Place.ofFile(file.toString()), "lies in a folder that is not there");
        }
        if (!Files.isWritable(absolute.resolveSibling(""))) {
            throw new InputException(Place.ofFile(file.toString()), "lies in a folder that may not be written");
        }
        return absolute;
    }

    /** What is written here becomes the file with {@link #keep}. */
    BufferedWriter writer() throws IOException {
        return Files.newBufferedWriter(fresh);
    }

    void write(byte[] bytes) throws IOException {
        Files.write(fresh, bytes);
    }

    void keep() throws IOException {
        Files.move(fresh, file);
        kept = true;
    }

    @Override
    public void close() throws IOException {
        if (!kept) {
            Files.deleteIfExists(fresh);
        }
    }
}
