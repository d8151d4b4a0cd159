package org.ellwand.claim;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import org.ellwand.input.InputException;
import org.ellwand.input.Place;
import org.ellwand.input.Problems;

/** Finds what a response is compared with. A sheet lies inside {@code claims/}, also where links lead elsewhere. */
final class TargetReader {
    private static final int LARGEST_SHEET = 1_000_000;
    private static final String CLAIMS = "claims";

    private final Path folder;
    private final Problems problems;

    TargetReader(Path folder, Problems problems) {
        this.folder = folder;
        this.problems = problems;
    }

    Optional<Target> read(String text, Place place) {
        if (text.equals("open ear")) {
            return Optional.of(new Target.OpenEar());
        }
        try {
            return sheet(text, place);
        } catch (IOException | InvalidPathException e) {
            problems.add(
                    place,
                    "'target': there is no file '" + text
                            + "' in claims/: accepted are 'open ear' and a curve sheet there");
            return Optional.empty();
        }
    }

    private Optional<Target> sheet(String text, Place place) throws IOException {
        Path claims = folder.resolve(CLAIMS).toRealPath();
        Path file = claims.resolve(text).toRealPath();
        if (!file.startsWith(claims)) {
            problems.add(place, "'target': '" + text + "' lies outside claims/");
            return Optional.empty();
        }
        String name = CLAIMS + "/" + text;
        if (Files.size(file) > LARGEST_SHEET) {
            problems.add(Place.ofFile(name), "longer than " + LARGEST_SHEET + " bytes: a target has one line a band");
            return Optional.empty();
        }
        try {
            return Optional.of(new Target.Sheet(name, TargetSheet.read(name, Files.readAllBytes(file))));
        } catch (InputException e) {
            problems.addAll(e.problems());
            return Optional.empty();
        }
    }
}
