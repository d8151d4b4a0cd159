package org.ellwand;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
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
