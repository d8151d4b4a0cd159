package org.ellwand;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.module.ModuleDescriptor.Version;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The table of what the jar is made of, held to the build file. */
class PartsTest {
    private static final Pattern DEPENDENCY = Pattern.compile("<dependency>(.*?)</dependency>", Pattern.DOTALL);

    @Test
    void everyLibraryInTheJarStandsInTheTableWithItsVersion() throws IOException {
        String pom = Files.readString(Path.of("pom.xml"));
        String guide = Files.readString(Path.of("DEVELOPERS.md"));
        String own = pom.substring(pom.indexOf("</dependencyManagement>"), pom.indexOf("<build>"));
        List<String> declared = DEPENDENCY
                .matcher(own)
                .results()
                .map(found -> found.group(1))
                .filter(text -> !text.contains("<scope>"))
                .toList();
        assertThat(declared).hasSizeGreaterThan(5).allSatisfy(text -> {
            String name = value(text, "artifactId").orElseThrow();
            String row = guide.lines()
                    .filter(line -> line.matches("\\| `[^`]*\\b" + Pattern.quote(name) + "` \\|.*"))
                    .findFirst()
                    .orElse("");
            assertThat(row).as(name).isNotEmpty();
            value(text, "version")
                    .map(version -> resolved(pom, version))
                    .ifPresent(version -> assertThat(row).as(name).contains("| " + version + " |"));
        });
    }

    @Test
    void noLibraryIsOlderThanTheVersionThatMendedItsNewestAdvisory() throws IOException {
        String page = Files.readString(Path.of("DEVELOPERS.md"));
        Map<String, Version> shipped = versions(
                page.substring(page.indexOf("| library | version |"), page.indexOf("| library | newest advisory |")),
                1);
        Map<String, Version> mended = versions(page.substring(page.indexOf("| library | newest advisory |")), 2);
        assertThat(mended)
                .isNotEmpty()
                .allSatisfy((library, version) ->
                        assertThat(shipped.get(library)).as(library).isGreaterThanOrEqualTo(version));
    }

    private static Map<String, Version> versions(String table, int column) {
        return table.lines()
                .filter(line -> line.startsWith("| `"))
                .map(line -> line.substring(2).split(" \\| | \\|$"))
                .collect(Collectors.toMap(cells -> cells[0], cells -> Version.parse(cells[column])));
    }

    private static Optional<String> value(String xml, String name) {
        return Pattern.compile("<" + name + ">([^<]*)</" + name + ">")
                .matcher(xml)
                .results()
                .map((MatchResult found) -> found.group(1))
                .findFirst();
    }

    private static String resolved(String pom, String version) {
        return version.startsWith("${")
                ? value(pom, version.substring(2, version.length() - 1)).orElse(version)
                : version;
    }
}
