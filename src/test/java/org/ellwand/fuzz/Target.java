package org.ellwand.fuzz;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.ellwand.audit.AuditJson;
import org.ellwand.audit.AuditRecordReader;
import org.ellwand.audit.FolderContents;
import org.ellwand.audit.Scope;
import org.ellwand.claim.ClaimsReader;
import org.ellwand.input.InputException;
import org.ellwand.measurement.SessionReader;
import org.ellwand.quantity.Quantities;
import org.ellwand.words.Sentences;

/** A reader, a folder that it reads, and the file in it that is broken. */
enum Target {
    CLAIMS("series-and-traces", "claims/skerry.yaml", "yaml"),
    SESSION("series-and-traces", "measurements/bench-01.yaml", "yaml"),
    ROWS("series-and-traces", "measurements/bench-01.csv", "csv"),
    COLUMNS("columns-of-attenuation", "measurements/yard-1.csv", "csv"),
    TRACE("series-and-traces", "measurements/attack-1.csv", "csv"),
    HARMONICS("series-and-traces", "measurements/tone-01.csv", "csv"),
    RECORD("first", "audit.json", "json"),
    REMARKS("first", "remarks.txt", "txt"),
    JUDGED_CLAIMS("series-and-traces", "claims/skerry.yaml", "yaml"),
    JUDGED_SESSION("series-and-traces", "measurements/bench-01.yaml", "yaml"),
    WAV("first", "measurements/ear.wav", "wav"),
    RECORDINGS("first", "measurements/yard.yaml", "yaml");

    private static final Path EXAMPLES = Path.of("src/test/resources/org/ellwand/examples");
    private static final int FEW_TRIALS = 1000;

    private final String example;
    private final String broken;
    private final String ending;

    Target(String example, String broken, String ending) {
        this.example = example;
        this.broken = broken;
        this.ending = ending;
    }

    /** The broken file's path below the folder. */
    String file() {
        return broken;
    }

    /** Copies the sound folder. */
    void prepare(Path folder) throws IOException {
        if (this == RECORDINGS) {
            Sounds.write(folder);
            return;
        }
        try (Stream<Path> files = Files.walk(EXAMPLES.resolve(example))) {
            for (Path from : files.filter(Files::isRegularFile).toList()) {
                Path to = folder.resolve(
                        EXAMPLES.resolve(example).relativize(from).toString());
                Files.createDirectories(to.resolveSibling(""));
                Files.copy(from, to);
            }
        }
        if (this == ROWS || this == TRACE || this == HARMONICS) {
            leaveOneSheet(folder);
        }
    }

    /** The other sheets would be read again and again, and are sound. */
    private void leaveOneSheet(Path folder) throws IOException {
        Path session = folder.resolve("measurements/bench-01.yaml");
        String sheet = broken.replace("measurements/", "file: ");
        List<String> lines = Files.readAllLines(session).stream()
                .filter(line -> !line.contains("{file: ") || line.contains(sheet))
                .toList();
        String left = this == TRACE ? "data:" : "traces:";
        Files.write(session, lines.stream().filter(line -> !line.equals(left)).toList());
    }

    /** Sound files to start from. */
    List<byte[]> seeds() throws IOException, InputException {
        if (this == RECORD) {
            FolderContents contents = FolderContents.read(EXAMPLES.resolve(example));
            return List.of(AuditJson.write(contents.judged(Scope.all(), FEW_TRIALS)));
        }
        if (this == REMARKS) {
            return List.of(Files.readAllBytes(Path.of("templates/remarks.txt")));
        }
        if (this == WAV) {
            return Sounds.wavs();
        }
        List<byte[]> seeds = new ArrayList<>();
        if (this == RECORDINGS) {
            seeds.add(Sounds.SESSION.getBytes(StandardCharsets.UTF_8));
            return seeds;
        }
        seeds.add(Files.readAllBytes(EXAMPLES.resolve(example).resolve(broken)));
        try (Stream<Path> files = Files.walk(EXAMPLES)) {
            String kind = "/" + Path.of(broken).getParent() + "/";
            for (Path file : files.filter(
                            f -> f.toString().contains(kind) && f.toString().endsWith(ending))
                    .sorted()
                    .toList()) {
                if (Files.size(file) < 20_000) {
                    seeds.add(Files.readAllBytes(file));
                }
            }
        }
        return seeds;
    }

    /** @throws InputException where it refuses the file, as it should */
    void read(Path folder, byte[] bytes) throws InputException, IOException {
        switch (this) {
            case CLAIMS -> new ClaimsReader(Quantities.forms(), Set.of()).read(folder, broken);
            case RECORD -> AuditRecordReader.read(bytes, broken);
            case REMARKS -> Sentences.english().with(broken, new String(bytes, StandardCharsets.UTF_8));
            case WAV -> Sounds.read(folder.resolve(broken), broken);
            case JUDGED_CLAIMS, JUDGED_SESSION -> FolderContents.read(folder).judged(Scope.all(), FEW_TRIALS);
            default -> SessionReader.readAll(folder);
        }
    }
}
