package org.ellwand.measurement;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.ellwand.input.Nearest;
import org.ellwand.input.Place;

/** Finds the data files of a session: in its own folder or below, and nowhere else. */
final class DataFiles {
    private final Path folder;
    private final String prefix;
    private final Found problems;
    private final Consumer<String> found;

    /**
     * A file that is there.
     *
     * @param relative its path relative to the audited folder, with forward slashes
     */
    record DataFile(Path path, String relative) {}

    /**
     * @param audited the audited folder
     * @param sessionFile path of the session file relative to it
     * @param found is told the relative path of every file that is found, before anything is done with it
     */
    DataFiles(Path audited, String sessionFile, Found problems, Consumer<String> found) {
        this.found = found;
        this.prefix = sessionFile.substring(0, sessionFile.lastIndexOf('/') + 1);
        this.folder = audited.resolve(prefix).toAbsolutePath().normalize();
        this.problems = problems;
    }

    /** The file of this name; reports at the place where it is named what is wrong with it. */
    Optional<DataFile> find(String name, Place named) {
        try {
            Path path = folder.resolve(name).normalize();
            String fault = fault(name, path);
            if (fault.isEmpty()) {
                String below = folder.relativize(path).toString().replace('\\', '/');
                found.accept(prefix + below);
                return Optional.of(new DataFile(path, prefix + below));
            }
            problems.add(named, fault);
        } catch (InvalidPathException | IOException e) {
            problems.add(named, "'" + name + "' cannot be read: " + e.getMessage());
        }
        return Optional.empty();
    }

    private String fault(String name, Path path) throws IOException {
        if (!path.startsWith(folder)) {
            return "'" + name + "' lies outside the folder of the session";
        }
        if (!Files.exists(path)) {
            return "there is no file '" + name + "' beside the session" + Nearest.hint(name, siblings());
        }
        if (!path.toRealPath().startsWith(folder.toRealPath())) {
            return "'" + name + "' is reached through a link that leaves the folder of the session";
        }
        return Files.isRegularFile(path) ? "" : "'" + name + "' is not a file";
    }

    private List<String> siblings() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> String.valueOf(file.getFileName()))
                    .sorted()
                    .toList();
        }
    }
}
