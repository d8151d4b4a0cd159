package org.ellwand.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import org.ellwand.input.InputException;

/**
 * A folder that holds one report, written whole or not at all.
 *
 * <p>The files are written into a hidden folder beside the target; then the earlier report is renamed aside, the new
 * one renamed in and the earlier one deleted. Whatever fails, the target holds the earlier report or the new one. Should
 * the machine (not the program alone) stop between the two renames, the earlier report lies beside the target and the next run puts it back.
 * The hidden folders carry the process id, so that two runs at once do not mix their files.
 */
public final class ReportFolder {
    /** Of runs that replace one report at the same moment, each can get in another's way once. */
    private static final int MOST_ATTEMPTS = 20;

    private static final String NEW = ".ellwand-new-";
    private static final String OLD = ".ellwand-old-";

    private final Path target;
    private final OutputKind kind;
    private final Disk disk;

    private ReportFolder(Path target, OutputKind kind, Disk disk) {
        this.target = target;
        this.kind = kind;
        this.disk = disk;
    }

    /**
     * {@return a folder that a report may be written to, what a stopped run left there being mended} To be called before
     * anything takes time.
     *
     * @param out the folder, which need not be there yet
     * @param auditedFolder what the report is of
     * @throws InputException if a report may not be written there: the folder is not empty and holds no report, it is
     *     the audited folder or holds it, it lies among the inputs or in an earlier output, it is a file, or there is no
     *     permission
     * @throws IOException where the disk fails
     */
    public static ReportFolder at(Path out, Path auditedFolder) throws InputException, IOException {
        return at(out, auditedFolder, OutputKind.REPORT);
    }

    /**
     * {@return the same for another kind of output, which replaces nothing but an earlier one of its kind}
     *
     * @param out the folder, which need not be there yet
     * @param auditedFolder what the output is of; empty where it is of none
     * @param kind of the output
     * @throws InputException if it may not be written there
     * @throws IOException where the disk fails
     */
    public static ReportFolder at(Path out, Path auditedFolder, OutputKind kind) throws InputException, IOException {
        return at(out, auditedFolder, kind, new Disk());
    }

    static ReportFolder at(Path out, Path auditedFolder, Disk disk) throws InputException, IOException {
        return at(out, auditedFolder, OutputKind.REPORT, disk);
    }

    private static ReportFolder at(Path out, Path auditedFolder, OutputKind kind, Disk disk)
            throws InputException, IOException {
        ReportFolder folder = new ReportFolder(OutputPlace.check(out, auditedFolder, kind), kind, disk);
        folder.mend();
        return folder;
    }

    /** {@return where the report really is, links followed} */
    public Path path() {
        return target;
    }

    /**
     * Replaces the report.
     *
     * @param files their bytes by path relative to the folder, with forward slashes
     * @throws IOException where the disk fails; the earlier report is then as it was
     */
    public void write(SortedMap<String, byte[]> files) throws IOException {
        long process = ProcessHandle.current().pid();
        Path fresh = beside(NEW + process);
        Path old = beside(OLD + process);
        try (Uninterrupted steps = new Uninterrupted(() -> deleteIfThere(fresh))) {
            fill(fresh, kind.withRecord(files), steps);
            steps.step(() -> swap(fresh, old));
        } finally {
            deleteIfThere(fresh);
        }
    }

    private void fill(Path folder, SortedMap<String, byte[]> files, Uninterrupted steps) throws IOException {
        steps.step(() -> disk.createFolder(folder));
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            Path path = folder.resolve(file.getKey()).normalize();
            if (!path.startsWith(folder)) {
                throw new IOException(file.getKey() + " leaves the report's folder");
            }
            steps.step(() -> {
                disk.createFolder(path.resolveSibling(""));
                disk.write(path, file.getValue());
            });
        }
    }

    /**
     * Puts the fresh folder in the place of what is there. Another run may do the same at the same moment: then one of both
     * reports stays, whole, and neither run fails.
     */
    private void swap(Path fresh, Path old) throws IOException {
        for (int attempt = 1; !swapped(fresh, old, attempt == MOST_ATTEMPTS); attempt++) {
            deleteIfThere(old);
        }
        deleteIfThere(old);
    }

    /** Whether it is done; if not, another run has put its report here meanwhile. */
    private boolean swapped(Path fresh, Path old, boolean last) throws IOException {
        try {
            moveAside(old);
        } catch (NoSuchFileException e) {
            // Another run has just moved it aside, and will delete it.
        }
        try {
            disk.move(fresh, target);
            return true;
        } catch (IOException | RuntimeException e) {
            // Systems name this failure differently; what stands there now says it for all of them.
            if (Files.exists(target) && !last) {
                return false;
            }
            if (Files.exists(old)) {
                disk.move(old, target);
            }
            throw e;
        }
    }

    private void moveAside(Path old) throws IOException {
        if (Files.exists(target)) {
            disk.move(target, old);
        }
    }

    /** Leftovers do no harm and are tried again at the next run, so that a report which is there is not called failed. */
    private void deleteIfThere(Path folder) {
        try {
            if (Files.exists(folder)) {
                disk.delete(folder);
            }
        } catch (IOException e) {
            // The next run finds it.
        }
    }

    /** Puts back the report of a run that was stopped between its renames, and clears away what it left. */
    private void mend() throws IOException {
        for (Path left : leftovers(OLD)) {
            if (Files.exists(target)) {
                deleteIfThere(left);
            } else {
                disk.move(left, target);
            }
        }
        leftovers(NEW).forEach(this::deleteIfThere);
    }

    private List<Path> leftovers(String kind) throws IOException {
        Path parent = target.resolveSibling("");
        if (!Files.isDirectory(parent)) {
            return List.of();
        }
        String start = hiddenName(kind);
        try (var entries = Files.list(parent)) {
            return entries.filter(entry -> isLeft(String.valueOf(entry.getFileName()), start))
                    .sorted()
                    .toList();
        }
    }

    /** Whether a hidden folder is of a process that is no more. */
    private static boolean isLeft(String name, String start) {
        if (!name.startsWith(start) || !name.substring(start.length()).matches("\\d{1,18}")) {
            return false;
        }
        long process = Long.parseLong(name.substring(start.length()));
        return process == ProcessHandle.current().pid()
                || ProcessHandle.of(process).isEmpty();
    }

    private Path beside(String ending) {
        return target.resolveSibling(hiddenName(ending));
    }

    private String hiddenName(String ending) {
        return "." + target.getFileName() + ending;
    }
}
