package org.ellwand.junit;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.ellwand.audit.Audit;
import org.ellwand.audit.FolderContents;
import org.ellwand.audit.Scope;
import org.ellwand.report.ReportOptions;
import org.ellwand.report.ReportWriter;
import org.junit.jupiter.api.Test;

/** What the README shows of the program as a library, done. */
class LibraryTest {
    @Test
    void theLinesOfTheReadmeDoWhatTheySay() throws Exception {
        // The lines between these marks stand in the README.
        // begin
        FolderContents folder = FolderContents.read(Path.of("."));
        Audit audit = folder.judged(Scope.all(), 100_000);
        for (var product : audit.products()) {
            for (var claim : product.claims()) {
                System.out.println(claim.claim().id() + ": " + claim.verdict().word());
            }
        }
        Map<String, byte[]> report = ReportWriter.with(Optional.empty()).render(audit, ReportOptions.plain());
        // end
        assertThat(report).containsKeys("audit.html", "verdicts.csv");
        assertThat(words(Files.readString(Path.of("README.md"))))
                .contains(words(between(
                        Files.readString(Path.of("src/test/java/org/ellwand/junit/LibraryTest.java")),
                        "// begin\n",
                        "// end\n")));
    }

    private static String between(String text, String begin, String end) {
        int from = text.indexOf(begin) + begin.length();
        return text.substring(from, text.indexOf(end, from));
    }

    private static String words(String text) {
        return text.lines().map(String::strip).collect(Collectors.joining(" ")).replaceAll("\\s+", " ");
    }
}
