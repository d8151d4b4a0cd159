package org.ellwand;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
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
}
