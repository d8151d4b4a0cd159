package org.ellwand.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

class MainTest {
    @TempDir
    Path temp;

    @Test
    void theHelpNamesTheExitCodes() {
        assertThat(run("--help").exitCode()).isZero();
        assertThat(run("--help").out()).contains("""
                        Exit codes:
                          0   done
                          1   a condition of --fail-on was met
                          2   bad input or usage; nothing was written
                          3   a failure of the program or the machine
                        """);
    }

    @Test
    void everyCommandHasAnExample() {
        for (String command : List.of(
                "ask",
                "audit",
                "bands",
                "compare",
                "completion",
                "inspect",
                "manual",
                "plan",
                "schema",
                "start",
                "stimulus")) {
            List<Object> all = Main.commands(new java.io.PrintWriter(java.io.Writer.nullWriter()));
            assertThat(CommandLineRun.of(all, command, "--help").out())
                    .contains("Example: ")
                    .contains("ellwand " + command);
        }
    }

    /** A help text is wrapped, and a command that was wrapped is two when it is pasted. */
    @Test
    void aCommandOfAnExampleIsOneToTheShell() {
        for (Object command : Main.commands(new java.io.PrintWriter(java.io.Writer.nullWriter()))) {
            assertThat(new CommandLine(command).getCommandSpec().usageMessage().footer())
                    .filteredOn(line -> line.startsWith("  "))
                    .isNotEmpty()
                    .allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(80));
        }
    }

    @Test
    void theVersionNamesTheProgramAndJava() {
        assertThat(run("--version").out()).matches("ellwand .+\\RJava \\S+\\R");
    }

    @Test
    void withoutACommandNothingIsDone() {
        assertThat(run())
                .isEqualTo(new CommandLineRun(
                        2, "", "ellwand: a command is needed\nellwand --help shows what is accepted\n"));
    }

    @Test
    void aCommandThatIsNoneIsNamedWithTheNearestOne() {
        assertThat(run("strat"))
                .isEqualTo(new CommandLineRun(
                        2,
                        "",
                        "ellwand: unknown command strat (did you mean 'start'?)\n"
                                + "ellwand --help shows what is accepted\n"));
    }

    @Test
    void anArgumentIsTakenAsItIsAndNotAsAFileOfArguments() throws IOException {
        Path arguments = Files.writeString(temp.resolve("arguments"), "claims");
        assertThat(run("schema", "@" + arguments).err()).startsWith("ellwand schema: there is no schema of '@");
    }

    /** What the sessions of a folder declare, its claims may name, and an editor is to know. */
    @Test
    void theSchemaKnowsWhatTheSessionsOfAFolderDeclare(@TempDir Path folder) throws IOException {
        Files.createDirectories(folder.resolve("claims"));
        Files.createDirectories(folder.resolve("measurements"));
        Files.writeString(folder.resolve("measurements/a.yaml"), "session: a\nconditions: [washes]\n");
        List<Object> commands = Main.commands(new PrintWriter(Writer.nullWriter()));
        assertThat(CommandLineRun.of(commands, "schema", "claims", folder.toString())
                        .out())
                .contains("\"washes\"");
        assertThat(CommandLineRun.of(Main.commands(new PrintWriter(Writer.nullWriter())), "schema", "claims")
                        .out())
                .doesNotContain("\"washes\"");
    }

    @Test
    void aSchemaIsPrintedToStandardOutput() {
        assertThat(run("schema", "claims")).isEqualTo(new CommandLineRun(0, "{\"type\": \"object\"}\n", ""));
    }

    @Test
    void aSchemaThatIsNoneIsNamedWithThoseThereAre() {
        assertThat(run("schema", "claim"))
                .isEqualTo(new CommandLineRun(
                        2,
                        "",
                        "ellwand schema: there is no schema of 'claim'; there are claims and session\n"
                                + "ellwand schema --help shows what is accepted\n"));
    }

    @Test
    void anExampleIsWrittenIntoANewFolder() {
        Path yard = temp.resolve("a/yard");
        assertThat(run("start", yard.toString()))
                .isEqualTo(new CommandLineRun(
                        0, "", "example written to " + yard + "/; next: ellwand audit " + yard + "\n"));
        assertThat(yard.resolve("claims/made-up.yaml")).hasContent("product: Made-up");
        assertThat(yard.resolve("README.md")).hasContent("# A made-up example");
    }

    @Test
    void aFolderThatIsNotEmptyIsLeftAlone() throws IOException {
        Files.writeString(temp.resolve("mine.md"), "mine");
        assertThat(run("start", temp.toString()))
                .isEqualTo(new CommandLineRun(2, "", temp + ": is not empty; give an empty or a new folder\n"));
        assertThat(temp.resolve("README.md")).doesNotExist();
    }

    private static CommandLineRun run(String... args) {
        return CommandLineRun.of(
                List.of(
                        new AuditCommand(new NoSteps(), new Progress(new java.io.PrintWriter(System.err), false)),
                        new AskCommand(new Progress(new java.io.PrintWriter(System.err), false)),
                        new PlanCommand(new Progress(new java.io.PrintWriter(System.err), false)),
                        new SchemaCommand(
                                Map.of("claims", declared -> "{\"type\": \"object\"}\n", "session", declared -> "{}")),
                        new StartCommand(new Example("/org/ellwand/cli/example/"))),
                args);
    }
}
