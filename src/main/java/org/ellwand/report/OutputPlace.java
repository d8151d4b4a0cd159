package org.ellwand.report;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.ellwand.input.InputException;
import org.ellwand.input.Place;

/** Whether a report may be written somewhere: it replaces the folder there, so nothing but an earlier report may be lost. */
final class OutputPlace {
    private static final List<String> INPUT_FOLDERS = List.of("claims", "measurements", "templates");
    private static final Set<String> ENDINGS = Set.of("html", "md", "csv", "json", "svg", "png", "xml");

    private final Path asGiven;
    private final Path target;
    private final Path audited;
    private final OutputKind kind;

    private OutputPlace(Path asGiven, Path target, Path audited, OutputKind kind) {
        this.asGiven = asGiven;
        this.target = target;
        this.audited = audited;
        this.kind = kind;
    }

    /**
     * The place a report would really be at, links followed.
     *
     * @throws InputException if a report may not be written there
     */
    static Path check(Path out, Path auditedFolder, OutputKind kind) throws InputException, IOException {
        OutputPlace place = new OutputPlace(out, real(out), real(auditedFolder), kind);
        place.refuseInputs();
        place.refuseOutputs();
        place.refuseWhatIsThere();
        place.refuseUnwritable();
        return place.target;
    }

    /** The real path of what exists, with the rest of the path behind it. */
    static Path real(Path path) throws IOException {
        Path absolute = path.toAbsolutePath().normalize();
        if (Files.exists(absolute)) {
            return absolute.toRealPath();
        }
        Path parent = absolute.getParent();
        Path name = absolute.getFileName();
        return parent == null || name == null ? absolute : real(parent).resolve(name);
    }

    private void refuseInputs() throws InputException {
        if (audited.startsWith(target)) {
            throw refused(
                    "is or holds the audited folder; " + kind.noun() + " replaces its folder, so give another one");
        }
        for (String name : INPUT_FOLDERS) {
            if (target.startsWith(audited.resolve(name))) {
                throw refused("lies in " + name + "/, which holds what is audited; give a folder outside");
            }
        }
    }

    /** What lies in an earlier output would be lost with it, or keep the next one from being written. */
    private void refuseOutputs() throws InputException, IOException {
        for (Path above = target.getParent(); above != null; above = above.getParent()) {
            for (OutputKind other : OutputKind.values()) {
                if (other.isAt(above)) {
                    throw refused("lies in " + other.noun() + " (" + above
                            + "), which is replaced as a whole; give a folder outside");
                }
            }
        }
    }

    private void refuseWhatIsThere() throws InputException, IOException {
        if (Files.exists(target, LinkOption.NOFOLLOW_LINKS) && !Files.isDirectory(target)) {
            throw refused("is a file; " + kind.noun() + " is a folder");
        }
        if (!Files.isDirectory(target) || isEmpty(target)) {
            return;
        }
        if (!kind.isAt(target)) {
            throw refused("is not empty and holds no " + kind.noun().replaceFirst("a ", "")
                    + " of Ellwand's; give an empty or a new folder");
        }
        Optional<Path> stranger = stranger(target);
        if (stranger.isPresent()) {
            throw refused("holds " + stranger.get().getFileName() + ", " + kind.strange()
                    + " and would be lost; move it or give another folder");
        }
    }

    private void refuseUnwritable() throws InputException {
        Path existing = target;
        while (!Files.exists(existing) && existing.getParent() != null) {
            existing = existing.getParent();
        }
        if (!Files.isDirectory(existing)) {
            throw refused("cannot be made: " + existing + " is a file");
        }
        Path parent = existing.equals(target) ? target.getParent() : existing;
        if (parent == null || !Files.isWritable(parent)) {
            throw refused("cannot be written: no permission for " + (parent == null ? target : parent));
        }
    }

    private InputException refused(String why) {
        return new InputException(Place.ofFile(asGiven.toString()), why);
    }

    private static boolean isEmpty(Path folder) throws IOException {
        try (DirectoryStream<Path> entries = Files.newDirectoryStream(folder)) {
            return !entries.iterator().hasNext();
        }
    }

    /** Something no report has: a hidden entry, a folder besides the figures, a file of another kind. */
    private Optional<Path> stranger(Path folder) throws IOException {
        if (!kind.bringsRecord()) {
            return kind.changed(folder);
        }
        try (var entries = Files.list(folder)) {
            return entries.filter(entry -> !couldBeOfAReport(entry)).sorted().findFirst();
        }
    }

    private static boolean couldBeOfAReport(Path entry) {
        String name = String.valueOf(entry.getFileName());
        if (Files.isDirectory(entry, LinkOption.NOFOLLOW_LINKS)) {
            return name.equals("figures");
        }
        String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
        return !name.startsWith(".") && ENDINGS.contains(ending);
    }
}
