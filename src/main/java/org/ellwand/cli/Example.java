package org.ellwand.cli;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ellwand.input.InputException;
import org.ellwand.input.Place;

/** The small example that comes with the program: its files, one a line in {@code files.txt}, beside that list. */
final class Example {
    private static final String LIST = "files.txt";

    private final String resources;

    /** @param resources where the example lies on the class path, with a slash at both ends */
    Example(String resources) {
        this.resources = resources;
    }

    static Example builtIn() {
        return new Example("/org/ellwand/start/");
    }

    /** @throws InputException if the folder is a file, not empty, or may not be written */
    void writeTo(Path folder) throws InputException, IOException {
        refuseWhatIsThere(folder);
        SortedMap<String, byte[]> files = read();
        try {
            for (var file : files.entrySet()) {
                Path path = folder.resolve(file.getKey());
                Files.createDirectories(path.resolveSibling(""));
                Files.write(path, file.getValue());
            }
        } catch (AccessDeniedException e) {
            throw new InputException(
                    Place.ofFile(folder.toString()), "cannot be written: no permission for " + e.getFile());
        }
    }

    private static void refuseWhatIsThere(Path folder) throws InputException, IOException {
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            throw new InputException(Place.ofFile(folder.toString()), "is a file; give a folder");
        }
        if (Files.isDirectory(folder)) {
            try (var entries = Files.list(folder)) {
                if (entries.findAny().isPresent()) {
                    throw new InputException(
                            Place.ofFile(folder.toString()), "is not empty; give an empty or a new folder");
                }
            }
        }
    }

    private SortedMap<String, byte[]> read() throws IOException {
        SortedMap<String, byte[]> files = new TreeMap<>();
        List<String> names =
                new String(bytes(LIST), StandardCharsets.UTF_8).lines().toList();
        for (String name : names) {
            if (!name.isBlank()) {
                files.put(name.strip(), bytes(name.strip()));
            }
        }
        return files;
    }

    private byte[] bytes(String name) throws IOException {
        try (InputStream in = Example.class.getResourceAsStream(resources + name)) {
            if (in == null) {
                throw new FileNotFoundException(resources + name + " is missing from the program");
            }
            return in.readAllBytes();
        }
    }
}
