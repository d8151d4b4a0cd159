package org.ellwand.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.RandomAccessFile;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A folder from somebody else: nothing outside it is read, and nothing that stands in it steers a terminal. */
class HostileFolderTest {
    private static final String LEAVES =
            ": is reached through a link that leaves the folder; put the file itself here, nothing outside is read\n";

    @TempDir
    Path temp;

    private Path yard;

    @BeforeEach
    void start() {
        yard = temp.resolve("yard");
        assertThat(run("start", yard.toString()).exitCode()).isZero();
    }

    private static CommandLineRun run(String... args) {
        return CommandLineRun.of(Main.commands(new PrintWriter(Writer.nullWriter())), args);
    }

    private CommandLineRun audit() {
        return run("audit", yard.toString(), "--trials", "1000");
    }

    /** Moves a file or a folder out of the audited one, and leaves a link in its place. */
    private void moveOut(String relative) throws IOException {
        Path outside = temp.resolve("outside");
        Files.move(yard.resolve(relative), outside);
        Files.createSymbolicLink(yard.resolve(relative), outside);
    }

    private String only(String folder, String ending) throws IOException {
        try (Stream<Path> files = Files.list(yard.resolve(folder))) {
            return files.map(file -> folder + "/" + file.getFileName())
                    .filter(name -> name.endsWith(ending))
                    .sorted()
                    .findFirst()
                    .orElseThrow();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"claims", "measurements"})
    void aFileOrFolderBehindALinkIsNotRead(String folder) throws IOException {
        String file = only(folder, ".yaml");
        moveOut(file);
        assertThat(audit()).isEqualTo(new CommandLineRun(2, "", file + LEAVES));
        Files.delete(yard.resolve(file));
        Files.move(temp.resolve("outside"), yard.resolve(file));
        moveOut(folder);
        assertThat(audit()).isEqualTo(new CommandLineRun(2, "", file + LEAVES));
        assertThat(yard.resolve("report")).doesNotExist();
    }

    @Test
    void aSheetBehindALinkIsNotRead() throws IOException {
        moveOut(only("measurements", ".csv"));
        CommandLineRun run = audit();
        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.err()).contains("is reached through a link that leaves the folder of the session\n");
    }

    @ParameterizedTest
    @ValueSource(strings = {"audit.md.ftl", "remarks.txt", "my-words.ftl"})
    void aTemplateBehindALinkIsNotRead(String name) throws IOException {
        Path templates = Files.createDirectory(yard.resolve("templates"));
        Files.writeString(temp.resolve("outside"), "root:x:0:0");
        Files.createSymbolicLink(templates.resolve(name), temp.resolve("outside"));
        for (String command : List.of("audit", "ask", "plan")) {
            assertThat(run(command, yard.toString()))
                    .isEqualTo(new CommandLineRun(2, "", "templates/" + name + LEAVES));
        }
    }

    @Test
    void aFolderOfTemplatesBehindALinkIsNotRead() throws IOException {
        Files.createDirectory(yard.resolve("templates"));
        moveOut("templates");
        for (String command : List.of("audit", "ask", "plan")) {
            assertThat(run(command, yard.toString())).isEqualTo(new CommandLineRun(2, "", "templates" + LEAVES));
        }
    }

    /** The user named the folder: how he reaches it is his matter, and so are links that stay in it. */
    @Test
    void linksToTheFolderAndWithinItAreFollowed() throws IOException {
        String claims = only("claims", ".yaml");
        Files.move(yard.resolve(claims), yard.resolve("kept.yaml"));
        Files.createSymbolicLink(yard.resolve(claims), yard.resolve("kept.yaml"));
        Path link = Files.createSymbolicLink(temp.resolve("link"), yard);
        assertThat(run("audit", link.toString(), "--trials", "1000").exitCode()).isZero();
    }

    /** Escape and its C1 twin, bell, carriage return, line end, marks of direction; then what a message would look like. */
    private static final String STEERS = "\\e[2J\\x9b31m\\a\\rx\\n\\u202Edab\\u2066\\u200Fellwand: all is well";

    @ParameterizedTest
    @ValueSource(strings = {"product", "id", "unknown: key", "wrong: value"})
    void nothingThatStandsInAFileSteersTheTerminal(String where) throws IOException {
        Path file = yard.resolve(only("claims", ".yaml"));
        String claims = Files.readString(file);
        String hostile = "\"" + STEERS + "\"";
        String changed = switch (where) {
            case "product" -> claims.replaceFirst("(?m)^product: .*$", "product: " + quoted(hostile));
            case "id" -> claims.replaceFirst("(?m)- id: .*$", "- id: " + quoted(hostile));
            case "unknown: key" -> quoted(hostile).replace("\\\\", "\\") + ": 1\n" + claims;
            default -> claims.replaceFirst("(?m)limit: .*$", "limit: " + quoted(hostile));
        };
        assertThat(changed).isNotEqualTo(claims);
        Files.writeString(file, changed);
        for (String command : List.of("audit", "ask", "plan", "inspect")) {
            CommandLineRun run = run(command, yard.toString());
            assertPlain(run.out() + run.err());
        }
        CommandLineRun compared = run("compare", yard.toString(), yard.toString(), "--out", temp + "/comparison");
        assertPlain(compared.out() + compared.err());
    }

    private static String quoted(String replacement) {
        return replacement.replace("\\", "\\\\");
    }

    private static void assertPlain(String printed) {
        assertThat(printed)
                .doesNotContainPattern(
                        "[\\x00-\\x08\\x0b-\\x1f\\x7f-\\x9f\\u200e\\u200f\\u061c\\u202a-\\u202e\\u2066-\\u2069]");
        assertThat(printed.lines()).noneMatch(line -> line.startsWith("ellwand: all is well"));
    }

    @Test
    void aFileNameDoesNotEither() throws IOException {
        Path named = Files.createDirectory(temp.resolve("a\u001b[31m\u202eb"));
        CommandLineRun run = run("audit", named.toString());
        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.err()).contains("a?[31m?b").doesNotContain("\u001b");
    }

    @Test
    void whatIsPrintedKeepsItsLinesTabsAndOtherLetters() {
        StringWriter text = new StringWriter();
        PrintWriter plain = Plain.over(text);
        plain.print("a\tb\r\nc\rd\u009b");
        plain.write('\u001b');
        plain.write("± 3 dB – \ud83d\ude00".toCharArray());
        plain.flush();
        assertThat(text).hasToString("a\tb\r\nc?d??± 3 dB – \ud83d\ude00");
    }

    @Test
    void aRecordOrSentencesWithoutEndAreRefusedBeforeTheyAreRead() throws IOException {
        Path record = temp.resolve("audit.json");
        try (RandomAccessFile file = new RandomAccessFile(record.toFile(), "rw")) {
            file.setLength(200_000_001);
        }
        assertThat(run("compare", record.toString(), record.toString(), "--out", temp + "/comparison"))
                .isEqualTo(new CommandLineRun(2, "", record + ": longer than 200000000 bytes\n"));
        Path templates = Files.createDirectory(yard.resolve("templates"));
        for (int length : new int[] {200_001, 800_001}) {
            Files.writeString(templates.resolve("remarks.txt"), "#".repeat(length));
            assertThat(audit())
                    .isEqualTo(new CommandLineRun(2, "", "templates/remarks.txt: longer than 200000 characters\n"));
        }
    }
}
