package org.ellwand;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every figure of DEVELOPERS.md has a command that gives it again, and the script that runs it has no other. */
class FiguresTest {
    private static final Pattern FIGURE = Pattern.compile("(?m)^figure = (.*)\ncommand = (.*)$");

    @Test
    void everyRowIsMeasuredByItsCommand() throws IOException {
        String page = Files.readString(Path.of("DEVELOPERS.md"));
        String part = page.substring(page.indexOf("\n## Figures\n"), page.indexOf("\n## What the jar is made of"));
        List<String> rows = part.lines()
                .filter(line -> line.startsWith("| ") && !line.startsWith("| figure |") && !line.startsWith("| ---"))
                .map(line -> line.split(" \\| ", 3))
                .map(cells -> cells[0].substring(2) + ": " + cells[2])
                .toList();
        List<String> measured = FIGURE.matcher(Files.readString(Path.of(".bench/figures.ini")))
                .results()
                .map(found -> found.group(1) + ": `" + found.group(2) + "` |")
                .toList();
        assertThat(rows).containsExactlyElementsOf(measured).hasSizeGreaterThan(15);
    }

    /** A new class of the judge is named in a slice of mutants, or a slice takes it in by the beginning of its name. */
    @Test
    void everyClassOfTheJudgeIsInASliceOfMutants() throws IOException {
        String slices = Files.readString(Path.of("pom.xml"));
        List<String> beginnings = Pattern.compile("<mutated>(org\\.ellwand\\.audit\\.[^<]*)</mutated>")
                .matcher(slices)
                .results()
                .flatMap(found -> Arrays.stream(found.group(1).split(",")))
                .map(name -> name.replace("org.ellwand.audit.", "").replace("*", ""))
                .toList();
        try (Stream<Path> files = Files.list(Path.of("src/main/java/org/ellwand/audit"))) {
            List<String> classes = files.map(
                            file -> file.getFileName().toString().replace(".java", ""))
                    .filter(name -> !name.equals("package-info"))
                    .toList();
            assertThat(classes)
                    .hasSizeGreaterThan(70)
                    .allSatisfy(name -> assertThat(beginnings).as(name).anyMatch(name::startsWith));
        }
    }
}
