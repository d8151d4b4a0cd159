package org.ellwand.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Map;
import java.util.Optional;
import org.ellwand.input.InputException;
import org.ellwand.input.Place;

/** The file for a build server: in the report, where it is asked for there, else a file of its own, written whole. */
final class JunitFile {
    private final Path asGiven;
    private final Path file;
    private final Path report;

    private JunitFile(Path asGiven, Path file, Path report) {
        this.asGiven = asGiven;
        this.file = file;
        this.report = report;
    }

    /**
     * Looks whether the file may be written, before anything takes time.
     *
     * @throws InputException if it would stand among the inputs or is a folder, a link or a device, or its folder is not there or may not be written
     */
    static Optional<JunitFile> at(Optional<Path> asked, Path report, Path audited) throws InputException, IOException {
        if (asked.isEmpty()) {
            return Optional.empty();
        }
        Path given = asked.get();
        Path absolute = given.toAbsolutePath().normalize();
        Path parent = absolute.resolveSibling("");
        Path real = Files.isDirectory(parent) ? parent.toRealPath().resolve(absolute.getFileName()) : absolute;
        JunitFile file = new JunitFile(given, real, report);
        file.check(audited.toRealPath());
        return Optional.of(file);
    }

    private void check(Path audited) throws InputException {
        if (file.startsWith(audited.resolve("claims")) || file.startsWith(audited.resolve("measurements"))) {
            throw refused("lies among the inputs; give a file elsewhere");
        }
        if (Files.isDirectory(file)) {
            throw refused("is a folder; give a file");
        }
        if (Files.exists(file, LinkOption.NOFOLLOW_LINKS) && !Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            throw refused("is a link, a device or a pipe, and would be replaced; give a file");
        }
        if (!isInReport() && !Files.isDirectory(file.resolveSibling(""))) {
            throw refused("lies in a folder that is not there");
        }
        if (!isInReport() && !Files.isWritable(file.resolveSibling(""))) {
            throw refused("lies in a folder that may not be written");
        }
        if (isInReport() && !String.valueOf(file.getFileName()).endsWith(".xml")) {
            throw refused("in the report needs a name that ends in .xml");
        }
    }

    private InputException refused(String why) {
        return new InputException(Place.ofFile("--junit " + asGiven), why);
    }

    private boolean isInReport() {
        return file.startsWith(report);
    }

    /** Puts the results among the report's files, where they belong there. */
    void addTo(Map<String, byte[]> files, byte[] results) {
        if (isInReport()) {
            files.put(report.relativize(file).toString().replace('\\', '/'), results);
        }
    }

    /** Writes the results, where they do not belong to the report. */
    void writeOutside(byte[] results) throws IOException {
        if (isInReport()) {
            return;
        }
        Path fresh = file.resolveSibling("." + file.getFileName() + ".ellwand-new-"
                + ProcessHandle.current().pid());
        try {
            Files.write(fresh, results);
            Files.move(fresh, file, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            Files.deleteIfExists(fresh);
        }
    }
}
