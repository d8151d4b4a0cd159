package org.ellwand.measurement;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.ellwand.input.InputException;
import org.ellwand.input.Place;
import org.ellwand.input.Problems;
import org.ellwand.input.YamlNode;
import org.ellwand.input.YamlReader;

/** Reads sessions. A session with an error is refused whole; its problems are reported together. */
public final class SessionReader {
    private static final String MEASUREMENTS = "measurements";

    private SessionReader() {}

    /**
     * Reads one session and the data files it names.
     *
     * @param folder the audited folder
     * @param relativeFile the session file below it, with forward slashes: {@code measurements/yard-crew-01.yaml}
     * @return the session with all its readings
     * @throws InputException with everything that is wrong, in file order, at most 20 problems
     */
    public static Session read(Path folder, String relativeFile) throws InputException {
        return read(folder, relativeFile, file -> {});
    }

    private static Session read(Path folder, String relativeFile, Consumer<String> dataFiles) throws InputException {
        YamlNode root = YamlReader.read(folder, relativeFile);
        Found found = new Found();
        Optional<Session> session = Keys.of(root, "a session", found)
                .map(keys -> new SessionDraft(folder, relativeFile, keys, dataFiles).read());
        Problems problems = new Problems();
        problems.addAll(found.all());
        problems.throwIfAny();
        return session.orElseThrow();
    }

    /**
     * Reads every {@code .yaml} and {@code .yml} directly in {@code measurements}, sorted by name; none where there are
     * none.
     *
     * @param folder the audited folder
     * @return the sessions, in the order of the files' names
     * @throws InputException with the problems of all sessions, and where two share a name
     */
    public static List<Session> readAll(Path folder) throws InputException {
        return readAll(folder, file -> {});
    }

    /**
     * The same, telling of every data file before it is read, so that something else can be done with it meanwhile.
     *
     * @param folder the audited folder
     * @param dataFiles is told the path of each relative to the folder, perhaps more than once
     * @return the sessions, in the order of the files' names
     * @throws InputException with the problems of all sessions, and where two share a name
     */
    public static List<Session> readAll(Path folder, Consumer<String> dataFiles) throws InputException {
        Problems problems = new Problems();
        List<Session> sessions = new ArrayList<>();
        for (String file : files(folder)) {
            try {
                sessions.add(read(folder, file, dataFiles));
            } catch (InputException e) {
                problems.addAll(e.problems());
            }
        }
        Map<String, String> fileOf = new HashMap<>();
        for (Session session : sessions) {
            String before = fileOf.putIfAbsent(session.id(), session.file());
            if (before != null) {
                problems.add(
                        Place.ofFile(session.file()),
                        "'session: " + session.id() + "' is also the name of the session in " + before);
            }
        }
        problems.throwIfAny();
        return List.copyOf(sessions);
    }

    private static List<String> files(Path folder) throws InputException {
        Path measurements = folder.resolve(MEASUREMENTS);
        if (!Files.isDirectory(measurements)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(measurements)) {
            return files.filter(Files::isRegularFile)
                    .map(file -> String.valueOf(file.getFileName()))
                    .filter(name -> name.endsWith(".yaml") || name.endsWith(".yml"))
                    .sorted()
                    .map(name -> MEASUREMENTS + "/" + name)
                    .toList();
        } catch (IOException e) {
            throw new InputException(Place.ofFile(MEASUREMENTS), "cannot be listed: " + e.getMessage());
        }
    }
}
