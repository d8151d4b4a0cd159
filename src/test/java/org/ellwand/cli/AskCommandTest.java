package org.ellwand.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The letter to the maker of the example that comes with the program. */
class AskCommandTest {
    @TempDir
    Path temp;

    private Path yard;

    @BeforeEach
    void start() {
        yard = temp.resolve("yard");
        assertThat(run("start", yard.toString()).exitCode()).isZero();
    }

    @Test
    void aLetterIsWrittenBesideTheReportAndLeavesItAlone() throws IOException {
        run("audit", yard.toString(), "--trials", "1000");
        byte[] before = Files.readAllBytes(yard.resolve("report/audit.json"));

        assertThat(run("ask", yard.toString()))
                .isEqualTo(new CommandLineRun(
                        0,
                        "",
                        "letters written to " + yard + "/letters/\nMy product: letter-my-product.md and .html\n"));
        assertThat(names(yard.resolve("letters")))
                .containsExactly("letter-my-product.html", "letter-my-product.md", "letters.json");
        assertThat(yard.resolve("report/audit.json")).hasBinaryContent(before);
    }

    @Test
    void noMeasurementsAreNeeded() throws IOException {
        Files.delete(yard.resolve("measurements/my-session.yaml"));
        Files.delete(yard.resolve("measurements/my-session.csv"));
        Files.delete(yard.resolve("measurements"));

        assertThat(run("ask", yard.toString()).exitCode()).isZero();
    }

    /** In the letters of a file name that every system takes, both come to the same. */
    @Test
    void noLetterReplacesAnother() throws IOException {
        Path claims = yard.resolve("claims");
        String text = Files.readString(claims.resolve("my-product.yaml"));
        Files.writeString(claims.resolve("größe.yaml"), text.replaceFirst("product: .*", "product: Tall"));
        Files.writeString(claims.resolve("grüße.yaml"), text.replaceFirst("product: .*", "product: Kind"));

        run("ask", yard.toString());

        assertThat(yard.resolve("letters/letter-gr-e.md")).content().contains("Questions about Tall");
        assertThat(yard.resolve("letters/letter-gr-e-2.md")).content().contains("Questions about Kind");
        run(
                "ask",
                yard.toString(),
                "--product",
                "Kind",
                "--out",
                temp.resolve("one").toString());
        assertThat(temp.resolve("one/letter-gr-e-2.md")).content().contains("Questions about Kind");
    }

    @Test
    void theSameInputsGiveTheSameBytes() throws IOException {
        run("ask", yard.toString());
        byte[] first = Files.readAllBytes(yard.resolve("letters/letter-my-product.html"));
        run("ask", yard.toString());

        assertThat(yard.resolve("letters/letter-my-product.html")).hasBinaryContent(first);
    }

    @Test
    void aLetterThatSomebodyMendedIsNotLost() throws IOException {
        run("ask", yard.toString());
        Files.writeString(yard.resolve("letters/letter-my-product.md"), "mended");

        assertThat(run("ask", yard.toString()))
                .isEqualTo(new CommandLineRun(
                        2,
                        "",
                        yard
                                + "/letters: holds letter-my-product.md, which was added or changed since and would be lost;"
                                + " move it or give another folder\n"));
        assertThat(yard.resolve("letters/letter-my-product.md")).hasContent("mended");
    }

    @Test
    void aReportIsNotReplacedByLetters() {
        run("audit", yard.toString(), "--trials", "1000");
        Path report = yard.resolve("report");

        assertThat(run("ask", yard.toString(), "--out", report.toString()))
                .isEqualTo(new CommandLineRun(
                        2,
                        "",
                        report + ": is not empty and holds no set of letters of Ellwand's; give an empty or a new"
                                + " folder\n"));
        assertThat(report.resolve("audit.html")).exists();
    }

    @Test
    void resultsAreToldOnRequest() throws IOException {
        run("ask", yard.toString());
        assertThat(letter()).doesNotContain("What we found");

        assertThat(run("ask", yard.toString(), "--with-results").exitCode()).isZero();
        assertThat(letter())
                .contains("- What we found: ")
                .contains("; **pass**.")
                .contains("- This is not a rating. A rating needs the standard procedure and a qualified laboratory.");
    }

    @Test
    void aDayThatIsNoneIsRefused() {
        assertThat(run("ask", yard.toString(), "--answer-by", "soon"))
                .isEqualTo(new CommandLineRun(
                        2,
                        "",
                        "ellwand ask: --answer-by takes a date as 2026-09-01, not 'soon'\n"
                                + "ellwand ask --help shows what is accepted\n"));
        assertThat(yard.resolve("letters")).doesNotExist();
    }

    @Test
    void aProductThatIsNoneIsRefused() {
        assertThat(run("ask", yard.toString(), "--product", "Skerry"))
                .isEqualTo(
                        new CommandLineRun(2, "", "--product: no product is called 'Skerry'; there is My product\n"));
    }

    private String letter() throws IOException {
        return Files.readString(yard.resolve("letters/letter-my-product.md"));
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> entries = Files.list(folder)) {
            return entries.map(entry -> entry.getFileName().toString()).sorted().toList();
        }
    }

    private static CommandLineRun run(String... args) {
        return CommandLineRun.of(Main.commands(new PrintWriter(Writer.nullWriter())), args);
    }
}
