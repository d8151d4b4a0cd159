package org.ellwand.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ellwand.audit.Audit;
import org.ellwand.audit.AuditJson;
import org.ellwand.audit.Scope;
import org.ellwand.audit.SmallAudit;
import org.ellwand.input.InputException;
import org.ellwand.input.Place;
import org.ellwand.input.Problem;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the command does around reading and judging, which a hand-made audit stands in for. */
class AuditCommandTest {
    @TempDir
    Path temp;

    private Path yard;
    private final HandMade steps = new HandMade();

    @BeforeEach
    void makeAFolder() throws IOException {
        yard = temp.toRealPath().resolve("yard");
        Files.createDirectories(yard.resolve("claims"));
        Files.createDirectories(yard.resolve("measurements"));
    }

    @Test
    void aReportIsWrittenAndStandardOutputStaysEmpty() {
        CommandLineRun run = run(yard.toString());

        assertThat(run)
                .isEqualTo(new CommandLineRun(
                        0,
                        "",
                        "report written to " + yard + "/report/ (audit.html)\n"
                                + "Skerry Tide: 1 pass, 0 marginal, 1 fail, 1 untested\n"));
        assertThat(yard.resolve("report/audit.json")).hasBinaryContent(AuditJson.write(SmallAudit.audit()));
    }

    @ParameterizedTest
    @CsvSource({"fail,1", "marginal,1", "untested,1"})
    void aFailedClaimMeetsEveryCondition(String condition, int exitCode) {
        assertThat(run(yard.toString(), "--fail-on", condition).exitCode()).isEqualTo(exitCode);
        assertThat(yard.resolve("report/audit.json")).exists();
    }

    @Test
    void optionsReachTheSteps() {
        run(yard.toString(), "--product=A", "--product=B", "--edition=e", "--firmware=1.10", "--session=s")
                .exitCode();
        assertThat(steps.scope)
                .isEqualTo(new Scope(
                        java.util.Set.of("A", "B"),
                        java.util.Set.of("e"),
                        java.util.Set.of("1.10"),
                        java.util.Set.of("s")));
        run(yard.toString(), "--trials=2000", "--png", "--dated=2026-09-01");
        assertThat(steps.trials).isEqualTo(2000);
        assertThat(steps.png).isTrue();
        assertThat(steps.dated).contains("2026-09-01");
        run(yard.toString());
        assertThat(steps.trials).isEqualTo(100_000);
        assertThat(steps.dated).isEmpty();
    }

    @Test
    void everyProblemOfTheInputIsALineAndTheEarlierReportStays() throws IOException {
        run(yard.toString());
        steps.failure = new InputException(List.of(
                new Problem(new Place("claims/skerry.yaml", 3, 5), "unknown key 'quot'; did you mean 'quote'?"),
                new Problem(Place.ofFile("measurements/a.yaml"), "no such file\n\u001B[31mred")));

        assertThat(run(yard.toString()))
                .isEqualTo(new CommandLineRun(
                        2,
                        "",
                        "claims/skerry.yaml:3:5: unknown key 'quot'; did you mean 'quote'?\n"
                                + "measurements/a.yaml: no such file ?[31mred\n"));
        assertThat(yard.resolve("report/audit.json")).hasBinaryContent(AuditJson.write(SmallAudit.audit()));
    }

    @Test
    void aFullDiskIsAFailureOfTheMachine() {
        steps.failure = new FileSystemException("report/audit.html", null, "No space left on device");

        assertThat(run(yard.toString()))
                .isEqualTo(new CommandLineRun(3, "", "report/audit.html: No space left on device\n"));
        steps.failure = new UncheckedIOException(new IOException("Input/output error"));
        assertThat(run(yard.toString())).isEqualTo(new CommandLineRun(3, "", "ellwand: Input/output error\n"));
    }

    @Test
    void whatWasNotForeseenIsOneLineWithoutATrace() {
        steps.failure = new IllegalStateException("no such\nband");

        assertThat(run(yard.toString()))
                .isEqualTo(new CommandLineRun(
                        3,
                        "",
                        "ellwand: a fault of the program: java.lang.IllegalStateException: no such band;"
                                + " with ELLWAND_DEBUG=1 in the environment it says where\n"));
    }

    @Test
    void aDeveloperCanAskForTheTrace() {
        StringWriter err = new StringWriter();
        int exitCode = new Failures(new PrintWriter(err, true), true).print(new IllegalStateException("x"));

        assertThat(exitCode).isEqualTo(3);
        assertThat(err.toString())
                .startsWith("ellwand: a fault of the program: java.lang.IllegalStateException: x\n")
                .contains("\tat org.ellwand.cli.AuditCommandTest");
    }

    @Test
    void aWrongOptionIsNamedWithTheNearestOne() {
        assertThat(run(yard.toString(), "--fial-on=fail"))
                .isEqualTo(new CommandLineRun(
                        2,
                        "",
                        "ellwand audit: unknown option --fial-on (did you mean '--fail-on'?)\n"
                                + "ellwand audit --help shows what is accepted\n"));
    }

    @Test
    void aSecondFolderIsOneWordTooMany() {
        assertThat(run(yard.toString(), "pier").err())
                .isEqualTo("ellwand audit: 'pier' is one word too many\nellwand audit --help shows what is accepted\n");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--trials=999|--trials takes 1000 to 10000000, not 999",
                "--trials=many|--trials takes a whole number, not 'many'",
                "--dated=yesterday|--dated takes a date as 2026-09-01, not 'yesterday'",
                "--dated=2026-02-30|--dated takes a date as 2026-09-01, not '2026-02-30'",
                "--fail-on=pass|--fail-on takes fail, marginal or untested, not 'pass'",
                "--out=|--out takes a file or folder, not ''",
                "--out|Missing required parameter for option '--out' (DIR)",
            })
    void aWrongValueIsNamedWithWhatIsAccepted(String option, String message) {
        assertThat(run(yard.toString(), option))
                .isEqualTo(new CommandLineRun(
                        2, "", "ellwand audit: " + message + "\nellwand audit --help shows what is accepted\n"));
        assertThat(yard.resolve("report")).doesNotExist();
    }

    @Test
    void anEmptyWordIsNotTheFolderOneIsIn() {
        assertThat(run(""))
                .isEqualTo(new CommandLineRun(
                        2,
                        "",
                        "ellwand audit: FOLDER takes a file or folder, not ''\n"
                                + "ellwand audit --help shows what is accepted\n"));
        assertThat(steps.scope).isNull();
    }

    @Test
    void testResultsReplaceNoLink() throws IOException {
        // As /dev/stdout is one.
        Path link = temp.resolve("link.xml");
        Path results = Files.writeString(temp.resolve("results.xml"), "mine");
        Files.createSymbolicLink(link, results);
        assertThat(run(yard.toString(), "--junit", link.toString()))
                .isEqualTo(new CommandLineRun(
                        2,
                        "",
                        "--junit " + link + ": is a link, a device or a pipe, and would be replaced; give a file\n"));
        assertThat(steps.scope).isNull();
        assertThat(results).hasContent("mine");
    }

    @Test
    void aFolderThatCannotBeAuditedIsNamed() throws IOException {
        Path nowhere = temp.resolve("nowhere");
        assertThat(run(nowhere.toString())).isEqualTo(new CommandLineRun(2, "", nowhere + ": no such folder\n"));
        Files.delete(yard.resolve("measurements"));
        assertThat(run(yard.toString()).err())
                .isEqualTo(yard + ": holds no folder measurements/;"
                        + " 'ellwand start FOLDER' makes an example of one that does\n");
    }

    @Test
    void anOutputFolderThatHoldsOtherThingsIsRefusedBeforeAnythingIsJudged() throws IOException {
        Path thesis = Files.createDirectory(temp.resolve("thesis"));
        Files.writeString(thesis.resolve("chapter.md"), "x");

        assertThat(run(yard.toString(), "--out", thesis.toString()))
                .isEqualTo(new CommandLineRun(
                        2,
                        "",
                        thesis + ": is not empty and holds no report of Ellwand's; give an empty or a new folder\n"));
        assertThat(steps.scope).isNull();
    }

    @Test
    void testResultsGoWhereTheyAreAskedFor() {
        Path own = temp.resolve("verdicts.xml");
        Path within = yard.resolve("report/verdicts.xml");
        assertThat(run(yard.toString(), "--junit", own.toString()).exitCode()).isZero();
        assertThat(own).content().contains("<testcase classname=\"Skerry Tide\" name=\"flood\"/>");
        assertThat(run(yard.toString(), "--junit", within.toString()).exitCode())
                .isZero();
        assertThat(within).hasSameBinaryContentAs(own);
        assertThat(run(yard.toString(), "--junit", within.toString()).exitCode())
                .isZero();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "claims/skerry.yaml|lies among the inputs; give a file elsewhere",
                "nowhere/v.xml|lies in a folder that is not there",
                "report/audit.json|in the report needs a name that ends in .xml",
                ".|is a folder; give a file",
            })
    void testResultsDoNotOverwriteWhatIsThere(String file, String why) {
        Path junit = yard.resolve(file);
        assertThat(run(yard.toString(), "--junit", junit.toString()))
                .isEqualTo(new CommandLineRun(2, "", "--junit " + junit + ": " + why + "\n"));
    }

    private CommandLineRun run(String... args) {
        String[] all = new String[args.length + 1];
        all[0] = "audit";
        System.arraycopy(args, 0, all, 1, args.length);
        Progress none = new Progress(new PrintWriter(new StringWriter()), false);
        return CommandLineRun.of(List.of(new AuditCommand(steps, none)), all);
    }

    private static final class HandMade implements AuditSteps {
        private Exception failure;
        private Scope scope;
        private int trials;
        private boolean png;
        private Optional<String> dated = Optional.empty();

        @Override
        public Audit audit(Path folder, Scope asked, int askedTrials) throws InputException {
            scope = asked;
            trials = askedTrials;
            if (failure instanceof InputException bad) {
                throw bad;
            }
            if (failure instanceof RuntimeException unforeseen) {
                throw unforeseen;
            }
            return SmallAudit.audit();
        }

        @Override
        public SortedMap<String, byte[]> render(Audit audit, Path folder, Optional<String> date, boolean withPng)
                throws IOException {
            if (failure instanceof IOException full) {
                throw full;
            }
            dated = date;
            png = withPng;
            return new TreeMap<>(Map.of("audit.json", AuditJson.write(audit)));
        }
    }
}
