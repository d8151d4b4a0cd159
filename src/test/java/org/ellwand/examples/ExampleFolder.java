package org.ellwand.examples;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ellwand.claim.ClaimsReader;
import org.ellwand.claim.Product;
import org.ellwand.input.InputException;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.SessionReader;
import org.ellwand.quantity.Quantities;

/** The examples, laid out as a folder that can be audited: folders below {@code claims/} are not read by themselves. */
public final class ExampleFolder {
    private final Path folder;

    /** Copies the examples into a folder. */
    public ExampleFolder(Path folder) throws IOException {
        this.folder = folder;
        for (String part : List.of("claims", "measurements")) {
            copy(Path.of(part, "examples"), Files.createDirectories(folder.resolve(part)));
        }
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> files = Files.list(from)) {
            for (Path file : files.toList()) {
                Files.copy(file, to.resolve(from.relativize(file)));
            }
        }
    }

    public List<Session> sessions() throws InputException {
        return SessionReader.readAll(folder);
    }

    /** The claims, which may speak of the conditions that the sessions declare. */
    public List<Product> products() throws InputException {
        Set<String> declared = sessions().stream()
                .flatMap(session -> session.declaredConditions().stream())
                .collect(Collectors.toUnmodifiableSet());
        return new ClaimsReader(Quantities.forms(), declared).readAll(folder);
    }
}
