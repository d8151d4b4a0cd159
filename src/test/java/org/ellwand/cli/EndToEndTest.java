package org.ellwand.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The whole program on the example it brings, whole and broken. */
class EndToEndTest {
    private static final String CLAIMS = "claims/my-product.yaml";
    private static final String SESSION = "measurements/my-session.yaml";
    private static final String SHEET = "measurements/my-session.csv";

    @TempDir
    Path temp;

    private Path yard;

    @BeforeEach
    void start() {
        yard = temp.resolve("yard");
        assertThat(run("start", yard.toString()).exitCode()).isZero();
    }

    @Test
    void theExampleIsJudged() {
        CommandLineRun run = audit();

        assertThat(run.err())
                .isEqualTo("report written to " + yard + "/report/ (audit.html)\n"
                        + "My product: 1 pass, 1 marginal, 0 fail, 1 untested\n");
        assertThat(run).isEqualTo(new CommandLineRun(0, "", run.err()));
        assertThat(bytes(yard.resolve("report")))
                .containsKeys("audit.html", "audit.md", "article.md", "article.html", "verdicts.csv", "audit.json");
    }

    @Test
    void theRecordNamesTheFilesThatWereRead() throws IOException {
        audit();
        JsonNode inputs = JsonMapper.shared()
                .readTree(Files.readAllBytes(yard.resolve("report/audit.json")))
                .get("inputs");
        assertThat(inputs.findValuesAsString("file")).containsExactly(CLAIMS, SHEET, SESSION);
    }

    @Test
    void theSameInputsGiveTheSameBytesWhereverTheyLie() throws IOException {
        audit();
        Path elsewhere = temp.resolve("else where");
        run("start", elsewhere.toString());
        assertThat(run("audit", elsewhere.toString(), "--trials", "1000").exitCode())
                .isZero();

        assertSame(bytes(elsewhere.resolve("report")), bytes(yard.resolve("report")));
    }

    @ParameterizedTest
    @CsvSource({"fail,0", "marginal,1", "untested,1"})
    void theConditionSetsTheExitCodeAndTheReportIsThere(String condition, int exitCode) {
        assertThat(run("audit", yard.toString(), "--trials=1000", "--fail-on=" + condition)
                        .exitCode())
                .isEqualTo(exitCode);
        assertThat(yard.resolve("report/audit.html")).exists();
    }

    /** Each row: a file, what is replaced in it, by what, and how the first line of the message begins. */
    @ParameterizedTest(name = "{3}")
    @CsvSource(
            delimiter = '|',
            value = {
                "claims/my-product.yaml|'quote: \"Stops'|'quot: \"Stops'|claims/my-product.yaml:33:5: the key 'quote' is missing",
                "claims/my-product.yaml|at least 18 dB}|at least 18 dBX}|claims/my-product.yaml:18:45: ",
                "claims/my-product.yaml|'quantity: attenuation, limit: 21'|'quantity: atenuation, limit: 21'"
                        + "|claims/my-product.yaml:28:25: ",
                "claims/my-product.yaml|edition: box|edition: tin|claims/my-product.yaml:16:14: ",
                "claims/my-product.yaml|', statistic: mean}'|}|claims/my-product.yaml:",
                "claims/my-product.yaml|'maker: Its maker'|'\tmaker: x'|claims/my-product.yaml:3:",
                "claims/my-product.yaml|'maker: Its maker'|'maker: &a x'|claims/my-product.yaml:3:",
                "claims/my-product.yaml|'about: '|'maker: twice #'|claims/my-product.yaml:4:",
                "measurements/my-session.yaml|pink noise|pink nose: x|measurements/my-session.yaml:10:",
                "measurements/my-session.yaml|size: 1.2 dB|size: -1.2 dB|measurements/my-session.yaml:17:",
                "measurements/my-session.yaml|my-session.csv|gone.csv|measurements/my-session.yaml:21:",
                "measurements/my-session.yaml|my-session.csv|../claims/my-product.yaml|measurements/my-session.yaml:21:",
                "measurements/my-session.yaml|in place 3:|in plaice 3:|measurements/my-session.",
                "measurements/my-session.csv|79.6|seventy|measurements/my-session.csv:5:",
                "measurements/my-session.csv|1000,|1050,|measurements/my-session.csv:5:",
                "measurements/my-session.csv|250,|125,|measurements/my-session.csv:3:",
            })
    void whatIsWrongIsNamedWithItsPlaceAndTheEarlierReportStays(
            String file, String text, String replacement, String start) throws IOException {
        audit();
        SortedMap<String, byte[]> before = bytes(yard.resolve("report"));
        String content = Files.readString(yard.resolve(file));
        assertThat(content).contains(text);
        Files.writeString(yard.resolve(file), content.replace(text, replacement));

        refused(audit(), start);
        assertSame(bytes(yard.resolve("report")), before);
    }

    @ParameterizedTest
    @ValueSource(strings = {CLAIMS, SESSION, SHEET})
    void anEmptyFileIsRefusedByName(String file) throws IOException {
        Files.write(yard.resolve(file), new byte[0]);

        refused(audit(), file + ":");
    }

    @ParameterizedTest
    @ValueSource(strings = {CLAIMS, SESSION, SHEET})
    void aFileThatIsNoTextIsRefusedByName(String file) throws IOException {
        byte[] noise = new byte[5000];
        for (int i = 0; i < noise.length; i++) {
            noise[i] = (byte) (i * 197 + 13);
        }
        Files.write(yard.resolve(file), noise);

        refused(audit(), file + ":");
    }

    @ParameterizedTest
    @ValueSource(strings = {CLAIMS, SESSION, SHEET})
    void aFileCutShortAnywhereIsJudgedOrRefusedButNeverAFault(String file) throws IOException {
        byte[] whole = Files.readAllBytes(yard.resolve(file));
        for (int length = 1; length < whole.length; length += 61) {
            Files.write(yard.resolve(file), Arrays.copyOf(whole, length));
            CommandLineRun run = audit();
            assertThat(run.exitCode())
                    .as("%s cut to %d bytes: %s", file, length, run.err())
                    .isBetween(0, 2);
        }
    }

    @Test
    void otherLineEndsAndAMarkAtTheStartChangeNoVerdict() throws IOException {
        audit();
        JsonNode before = products();
        for (String file : List.of(CLAIMS, SESSION, SHEET)) {
            String text = Files.readString(yard.resolve(file)).replace("\n", "\r\n");
            Files.write(yard.resolve(file), ("\uFEFF" + text).getBytes(StandardCharsets.UTF_8));
        }
        assertThat(audit().exitCode()).isZero();
        assertThat(products()).isEqualTo(before);
    }

    @Test
    void aFolderWithoutClaimsIsRefused() throws IOException {
        Files.delete(yard.resolve(CLAIMS));

        refused(audit(), "claims: there is no claims file here");
    }

    private JsonNode products() throws IOException {
        return JsonMapper.shared()
                .readTree(Files.readAllBytes(yard.resolve("report/audit.json")))
                .get("products");
    }

    private CommandLineRun audit() {
        return run("audit", yard.toString(), "--trials", "1000");
    }

    private static CommandLineRun run(String... args) {
        return CommandLineRun.of(Main.commands(new PrintWriter(new StringWriter())), args);
    }

    private static void refused(CommandLineRun run, String start) {
        assertThat(run.err()).startsWith(start).doesNotContain("\tat ").doesNotContain("Exception");
        assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(run.out()).isEmpty();
    }

    private static void assertSame(SortedMap<String, byte[]> actual, SortedMap<String, byte[]> expected) {
        assertThat(actual.keySet()).isEqualTo(expected.keySet());
        actual.forEach((name, bytes) -> assertThat(bytes).as(name).isEqualTo(expected.get(name)));
    }

    private static SortedMap<String, byte[]> bytes(Path folder) {
        SortedMap<String, byte[]> files = new TreeMap<>();
        try (Stream<Path> paths = Files.walk(folder)) {
            for (Path path : paths.filter(Files::isRegularFile).toList()) {
                files.put(folder.relativize(path).toString(), Files.readAllBytes(path));
            }
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
        return files;
    }
}
