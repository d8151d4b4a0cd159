package org.ellwand.measurement;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.ellwand.input.InputException;
import org.ellwand.input.Problem;

/** An audited folder for tests. */
record Folder(Path path) {
    Folder with(String file, String text) throws IOException {
        return with(file, text.getBytes(StandardCharsets.UTF_8));
    }

    Folder with(String file, byte[] bytes) throws IOException {
        Path target = path.resolve(file);
        Files.createDirectories(target.getParent());
        Files.write(target, bytes);
        return this;
    }

    /** What is wrong with the sessions of the folder, one text each; nothing where they can be read. */
    List<String> problems() {
        try {
            SessionReader.readAll(path);
            return List.of();
        } catch (InputException e) {
            return e.problems().stream().map(Problem::toString).toList();
        }
    }

    Session only() throws InputException {
        List<Session> sessions = SessionReader.readAll(path);
        if (sessions.size() != 1) {
            throw new IllegalStateException(sessions.size() + " sessions");
        }
        return sessions.get(0);
    }
}
