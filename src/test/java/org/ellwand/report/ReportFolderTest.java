package org.ellwand.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.ellwand.input.InputException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ReportFolderTest {
    private static final String RECORD = "{\n  \"format\": \"ellwand-audit\",\n  \"version\": 1\n}\n";
    /** No process has it: Linux counts to 2^22 at most. */
    private static final String DEAD = "999999999";

    @TempDir
    Path temp;

    private Path audited;
    private Path report;

    @BeforeEach
    void makeAnAuditedFolder() throws IOException {
        audited = Files.createDirectories(temp.toRealPath().resolve("yard"));
        Files.createDirectories(audited.resolve("claims"));
        report = audited.resolve("report");
    }

    @Test
    void aNewFolderHoldsTheFilesAndNothingIsLeftBesideIt() throws Exception {
        folder().write(files("audit.json", RECORD, "figures/a.svg", "<svg/>"));

        assertThat(tree(report)).containsExactly("audit.json", "figures/a.svg");
        assertThat(names(audited)).containsExactly("claims", "report");
    }

    @Test
    void noFileOfAnEarlierReportSurvives() throws Exception {
        folder().write(files("audit.json", RECORD, "figures/old.svg", "<svg/>"));
        folder().write(files("audit.json", RECORD, "audit.md", "new"));

        assertThat(tree(report)).containsExactly("audit.json", "audit.md");
        assertThat(names(audited)).containsExactly("claims", "report");
    }

    @Test
    void noOutputLiesInAnother() throws Exception {
        folder().write(files("audit.json", RECORD));
        for (OutputKind kind : OutputKind.values()) {
            Path within = report.resolve("figures/more");
            assertThatThrownBy(() -> ReportFolder.at(within, audited, kind))
                    .hasMessage(within + ": lies in a report (" + report
                            + "), which is replaced as a whole; give a folder outside");
        }
    }

    @Test
    void anEmptyFolderIsTaken() throws Exception {
        Files.createDirectory(report);
        folder().write(files("audit.json", RECORD));

        assertThat(tree(report)).containsExactly("audit.json");
    }

    @Test
    void aFolderBelowFoldersThatAreNotThereIsMade() throws Exception {
        Path deep = temp.resolve("a/b/c");
        ReportFolder.at(deep, audited).write(files("audit.json", RECORD));

        assertThat(tree(deep)).containsExactly("audit.json");
    }

    @Test
    void aLinkKeepsPointingToTheReport() throws Exception {
        Path real = Files.createDirectory(temp.resolve("www"));
        Files.createSymbolicLink(report, real);
        folder().write(files("audit.json", RECORD));

        assertThat(Files.isSymbolicLink(report)).isTrue();
        assertThat(tree(real)).containsExactly("audit.json");
    }

    /** Steps of replacing a report with two files: the folder made three times over, two files, two renames. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7})
    void whereverItFailsTheEarlierReportStaysAsItWas(int failingStep) throws Exception {
        folder().write(files("audit.json", RECORD, "audit.md", "earlier"));
        FailingDisk disk = new FailingDisk(failingStep);
        ReportFolder folder = ReportFolder.at(report, audited, disk);

        assertThatThrownBy(() -> folder.write(files("audit.json", RECORD, "audit.md", "later")))
                .isInstanceOf(IOException.class)
                .hasMessage("No space left on device");
        assertThat(report.resolve("audit.md")).hasContent("earlier");
        assertThat(names(audited)).containsExactly("claims", "report");
    }

    @Test
    void afterTheLastStepTheLaterReportIsThere() throws Exception {
        folder().write(files("audit.json", RECORD, "audit.md", "earlier"));
        FailingDisk disk = new FailingDisk(8);
        ReportFolder.at(report, audited, disk).write(files("audit.json", RECORD, "audit.md", "later"));

        assertThat(report.resolve("audit.md")).hasContent("later");
    }

    @Test
    void anEarlierReportThatCannotBeDeletedIsNoFailureAndIsClearedLater() throws Exception {
        folder().write(files("audit.json", RECORD, "audit.md", "earlier"));
        Disk disk = new Disk() {
            @Override
            void delete(Path folder) throws IOException {
                throw new IOException("busy");
            }
        };
        ReportFolder.at(report, audited, disk).write(files("audit.json", RECORD, "audit.md", "later"));
        assertThat(report.resolve("audit.md")).hasContent("later");
        assertThat(names(audited)).hasSize(3);

        folder();
        assertThat(names(audited)).containsExactly("claims", "report");
    }

    /** Another run puts its report there between the two renames of this one. */
    @Test
    void anotherRunAtTheSameMomentIsNoFailure() throws Exception {
        folder().write(files("audit.json", RECORD, "audit.md", "earlier"));
        Disk disk = new Disk() {
            private int intrusions = 3;

            @Override
            void move(Path from, Path to) throws IOException {
                if (!Files.exists(report)) {
                    intrude();
                }
                super.move(from, to);
            }

            private void intrude() throws IOException {
                if (intrusions-- > 0) {
                    Files.createDirectory(report);
                    Files.writeString(report.resolve("audit.md"), "another's");
                }
            }
        };
        ReportFolder.at(report, audited, disk).write(files("audit.json", RECORD, "audit.md", "later"));

        assertThat(report.resolve("audit.md")).hasContent("later");
        assertThat(names(audited)).containsExactly("claims", "report");
    }

    @Test
    void aReportThatAnotherRunMovedAsideIsNoFailure() throws Exception {
        folder().write(files("audit.json", RECORD, "audit.md", "earlier"));
        Disk disk = new Disk() {
            @Override
            void move(Path from, Path to) throws IOException {
                if (from.endsWith("report")) {
                    super.delete(from);
                }
                super.move(from, to);
            }
        };
        ReportFolder.at(report, audited, disk).write(files("audit.json", RECORD, "audit.md", "later"));

        assertThat(report.resolve("audit.md")).hasContent("later");
        assertThat(names(audited)).containsExactly("claims", "report");
    }

    @Test
    void aReportThatAStoppedRunMovedAsideIsPutBack() throws Exception {
        folder().write(files("audit.json", RECORD, "audit.md", "earlier"));
        Files.move(report, audited.resolve(".report.ellwand-old-" + DEAD));
        Files.createDirectory(audited.resolve(".report.ellwand-new-" + DEAD));

        folder();

        assertThat(report.resolve("audit.md")).hasContent("earlier");
        assertThat(names(audited)).containsExactly("claims", "report");
    }

    @Test
    void theFilesOfARunThatIsStillAtWorkAreLeftAlone() throws Exception {
        long alive = ProcessHandle.current().parent().orElseThrow().pid();
        Path others = Files.createDirectory(audited.resolve(".report.ellwand-new-" + alive));

        folder();

        assertThat(others).exists();
    }

    @Test
    void aFolderWithoutAReportIsRefused() throws Exception {
        Files.createDirectory(report);
        Files.writeString(report.resolve("thesis.md"), "years of work");

        refused(report, "is not empty and holds no report of Ellwand's; give an empty or a new folder");
        assertThat(report.resolve("thesis.md")).hasContent("years of work");
    }

    @Test
    void aRecordOfAnotherFormatIsNoReport() throws Exception {
        Files.createDirectory(report);
        Files.writeString(report.resolve("audit.json"), "{\"format\": \"another\", \"x\": \"ellwand-audit\"}");

        refused(report, "is not empty and holds no report of Ellwand's; give an empty or a new folder");
    }

    @Test
    void whatNoReportHasIsNotDeletedWithIt() throws Exception {
        folder().write(files("audit.json", RECORD));
        Files.createDirectory(report.resolve(".git"));

        refused(report, "holds .git, which is not of a report and would be lost; move it or give another folder");
    }

    @Test
    void aFileIsRefused() throws Exception {
        Files.writeString(report, "x");

        refused(report, "is a file; a report is a folder");
        refused(report.resolve("below"), "cannot be made: " + report + " is a file");
    }

    @Test
    void theAuditedFolderAndWhatHoldsItAreRefused() {
        String why = "is or holds the audited folder; a report replaces its folder, so give another one";
        refused(audited, why);
        refused(audited.resolve("claims/.."), why);
        refused(audited.getParent(), why);
    }

    @Test
    void theInputFoldersAreRefused() {
        for (String name : List.of("claims", "measurements", "templates")) {
            String why = "lies in " + name + "/, which holds what is audited; give a folder outside";
            refused(audited.resolve(name), why);
            refused(audited.resolve(name).resolve("report"), why);
        }
    }

    @Test
    void aLinkIntoTheInputsIsRefused() throws Exception {
        Files.createSymbolicLink(temp.resolve("elsewhere"), audited.resolve("claims"));

        refused(
                temp.resolve("elsewhere/report"),
                "lies in claims/, which holds what is audited; give a folder outside");
    }

    @Test
    void aPathThatLeavesTheFolderIsNotWritten() throws Exception {
        ReportFolder folder = folder();

        assertThatThrownBy(() -> folder.write(files("../stray.svg", "x")))
                .hasMessage("../stray.svg leaves the report's folder");
        assertThat(names(audited)).containsExactly("claims");
    }

    private ReportFolder folder() throws Exception {
        return ReportFolder.at(report, audited);
    }

    private void refused(Path out, String why) {
        assertThatThrownBy(() -> ReportFolder.at(out, audited))
                .isInstanceOf(InputException.class)
                .hasMessage(out + ": " + why);
    }

    private static SortedMap<String, byte[]> files(String... pathsAndTexts) {
        SortedMap<String, byte[]> files = new TreeMap<>();
        for (int i = 0; i < pathsAndTexts.length; i += 2) {
            files.put(pathsAndTexts[i], pathsAndTexts[i + 1].getBytes(StandardCharsets.UTF_8));
        }
        return files;
    }

    private static List<String> tree(Path folder) throws IOException {
        try (Stream<Path> paths = Files.walk(folder)) {
            return paths.filter(Files::isRegularFile)
                    .map(path -> folder.relativize(path).toString())
                    .sorted()
                    .toList();
        }
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> paths = Files.list(folder)) {
            return paths.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }

    /** A disk that is full at one step, and from then on again has room. */
    private static final class FailingDisk extends Disk {
        private int stepsLeft;

        FailingDisk(int failingStep) {
            stepsLeft = failingStep;
        }

        private void step() throws IOException {
            stepsLeft--;
            if (stepsLeft == 0) {
                throw new IOException("No space left on device");
            }
        }

        @Override
        void createFolder(Path folder) throws IOException {
            step();
            super.createFolder(folder);
        }

        @Override
        void write(Path file, byte[] bytes) throws IOException {
            super.write(file, new byte[] {bytes[0]});
            step();
            super.write(file, bytes);
        }

        @Override
        void move(Path from, Path to) throws IOException {
            step();
            super.move(from, to);
        }
    }
}
