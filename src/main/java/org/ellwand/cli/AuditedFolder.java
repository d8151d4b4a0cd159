package org.ellwand.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.ellwand.input.InputException;
import org.ellwand.input.Inside;
import org.ellwand.input.Place;

/** The folder that a command works on. */
final class AuditedFolder {
    private AuditedFolder() {}

    /** @throws InputException if the folder is none, may not be read, or holds no claims or measurements */
    static void check(Path folder) throws InputException {
        check(folder, "claims", "measurements");
    }

    /** @throws InputException if the folder is none, may not be read, or holds no claims; there need be no measurements yet */
    static void checkClaims(Path folder) throws InputException {
        check(folder, "claims");
    }

    /**
     * The templates of the folder; absent where it has none.
     *
     * @throws InputException where they are a link that leaves the folder, or may not be read
     */
    static Optional<Path> templates(Path folder) throws InputException, IOException {
        Path templates = folder.resolve("templates");
        if (!Files.isDirectory(templates)) {
            return Optional.empty();
        }
        Inside.check(folder, "templates", "templates");
        if (!Files.isReadable(templates) || !Files.isExecutable(templates)) {
            throw new InputException(Place.ofFile("templates"), "the folder cannot be read: no permission");
        }
        return Optional.of(templates);
    }

    private static void check(Path folder, String... neededFolders) throws InputException {
        if (!Files.exists(folder)) {
            throw new InputException(Place.ofFile(folder.toString()), "no such folder");
        }
        if (!Files.isDirectory(folder)) {
            throw new InputException(
                    Place.ofFile(folder.toString()), "is a file; give the folder that holds claims/ and measurements/");
        }
        if (!Files.isReadable(folder) || !Files.isExecutable(folder)) {
            throw new InputException(Place.ofFile(folder.toString()), "cannot be read: no permission");
        }
        for (String needed : neededFolders) {
            if (!Files.isDirectory(folder.resolve(needed))) {
                throw new InputException(
                        Place.ofFile(folder.toString()),
                        "holds no folder " + needed + "/; 'ellwand start FOLDER' makes an example of one that does");
            }
        }
    }
}
