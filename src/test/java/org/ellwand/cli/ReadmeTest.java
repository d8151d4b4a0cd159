package org.ellwand.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine.Command;

/** Holds the two guides at the top to what is there: commands, files, links, classes, rows of the demo. */
class ReadmeTest {
    private static final Path README = Path.of("README.md");

    /** As few as are accepted: only the names of files are looked at. */
    private static final String TRIALS = "--trials=1000";

    @TempDir
    Path temp;

    private static List<String> found(String pattern, String text) {
        return Pattern.compile(pattern, Pattern.MULTILINE)
                .matcher(text)
                .results()
                .map(match -> match.group(1))
                .toList();
    }

    private static String readme() throws IOException {
        return Files.readString(README);
    }

    /** The lines of the shell blocks, without comments. */
    private static List<String> commands(String text) {
        return found("^```sh\\n([^`]*)```", text).stream()
                .flatMap(String::lines)
                .map(line -> line.replaceAll(" *#.*", ""))
                .toList();
    }

    private static CommandLineRun run(String... args) {
        return CommandLineRun.of(Main.commands(new PrintWriter(Writer.nullWriter())), args);
    }

    @Test
    void itsTestCommandIsWhatTheBuildServerRuns() throws IOException {
        List<String> server = Files.readAllLines(Path.of(".ci/run"));
        assertThat(server.get(server.size() - 1)).isEqualTo("mvn -B -P all-tests verify");
        assertThat(commands(readme())).contains("mvn -B -P all-tests verify");
        assertThat(commands(Files.readString(Path.of("DEVELOPERS.md")))).contains("mvn -B -P all-tests verify");
    }

    @Test
    void itsMainCommandBuildsTheJarThatItRuns() throws IOException {
        assertThat(commands(readme()))
                .first()
                .isEqualTo("mvn -q -B package -Dmaven.test.skip=true && target/ellwand audit");
        assertThat(Files.readString(Path.of("pom.xml"))).contains("<finalName>ellwand</finalName>");
        assertThat(Path.of("src/main/launcher/ellwand")).isExecutable();
        assertThat(Files.readString(Path.of(".gitignore")).lines()).contains("/report/", "target/");
    }

    @Test
    void itsCommandsExist() throws IOException {
        List<String> there = Main.commands(new PrintWriter(Writer.nullWriter())).stream()
                .map(command -> command.getClass().getAnnotation(Command.class).name())
                .toList();
        List<String> named = found("target/ellwand(?:\\.jar)? (\\w+)", readme());
        assertThat(named).hasSizeGreaterThan(5).isSubsetOf(there);
    }

    /** The demo has claims that fail: the build is to end so, with its results written. */
    @Test
    void itsBuildStepFailsABuildAndLeavesItsResults(@TempDir Path folder) throws IOException {
        String step = "target/ellwand audit . --fail-on fail --junit verdicts.xml";
        assertThat(commands(readme())).contains(step);
        assertThat(readme()).contains("    " + step + "\n");
        Path results = folder.resolve("verdicts.xml");
        CommandLineRun ran = run(
                "audit",
                ".",
                "--fail-on",
                "fail",
                "--junit",
                results.toString(),
                "--out",
                folder.resolve("report").toString(),
                "--trials",
                "1000");
        assertThat(ran.exitCode()).isEqualTo(1);
        assertThat(results).content().contains("<testsuite name=\"Skerry\"");
    }

    @Test
    void itsCompletionKnowsEveryCommand() {
        CommandLineRun ran = run("completion");
        assertThat(ran.exitCode()).isZero();
        assertThat(ran.out()).contains("audit", "compare", "--fail-on");
    }

    @Test
    void itsFilesAreWhatAnAuditWrites() throws IOException {
        String yard = temp.resolve("yard").toString();
        assertThat(run("start", yard).exitCode()).isZero();
        assertThat(run("audit", yard, TRIALS).exitCode()).isZero();

        Path report = temp.resolve("yard/report");
        try (Stream<Path> written = Files.walk(report)) {
            TreeSet<String> files = written.filter(Files::isRegularFile)
                    .map(file -> report.relativize(file).toString().replace('\\', '/'))
                    .map(file -> file.replaceAll("^figures/.*\\.svg$", "figures/*.svg"))
                    .collect(Collectors.toCollection(TreeSet::new));
            // Of a lot alone.
            files.add("cells.csv");
            assertThat(found("^\\| `([^`]+)` \\|", readme())).containsExactlyInAnyOrderElementsOf(files);
        }
    }

    @Test
    void itsRowsAndItsPictureAreTheDemos() throws IOException {
        assertThat(run("audit", ".", "--out", temp.resolve("demo").toString()).exitCode())
                .isZero();

        List<String> rows = Files.readString(temp.resolve("demo/audit.md"))
                .lines()
                .map(row -> row.replaceAll("^\\| \\[(\\d+)]\\([^)]*\\)", "| $1"))
                .toList();
        List<String> shown =
                readme().lines().filter(row -> row.matches("\\| \\d+ \\|.*")).toList();
        assertThat(shown).hasSize(4);
        assertThat(rows).containsAll(shown);
        assertThat(Path.of(".docs/flood.svg"))
                .hasSameTextualContentAs(temp.resolve("demo/figures/skerry-tide-flood-box.svg"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"README.md", "DEVELOPERS.md", "claims/README.md", "measurements/README.md"})
    void linksLeadSomewhere(String guide) throws IOException {
        List<String> links = found("]\\(([^)#:]+)(?:#[^)]*)?\\)", Files.readString(Path.of(guide)));
        assertThat(links)
                .allSatisfy(
                        link -> assertThat(Path.of(guide).resolveSibling(link)).exists());
    }

    @Test
    void classesThatDevelopersAreSentToExist() throws IOException {
        try (Stream<Path> sources = Files.walk(Path.of("src"))) {
            List<String> classes = sources.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".java"))
                    .map(name -> name.replace(".java", ""))
                    .toList();
            List<String> named = found("`([A-Z][A-Za-z]*[a-z])`", Files.readString(Path.of("DEVELOPERS.md")));
            assertThat(named).hasSizeGreaterThan(20).isSubsetOf(classes);
        }
    }
}
