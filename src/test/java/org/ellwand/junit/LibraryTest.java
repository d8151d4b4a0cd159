package org.ellwand.junit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ellwand.audit.Audit;
import org.ellwand.audit.ClaimAudit;
import org.ellwand.audit.FolderContents;
import org.ellwand.audit.Scope;
import org.ellwand.input.InputException;
import org.ellwand.report.ReportOptions;
import org.ellwand.report.ReportWriter;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.function.Executable;
import org.opentest4j.AssertionFailedError;
import org.opentest4j.TestAbortedException;

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
        assertThat(words(Files.readString(Path.of("README.md")))).contains(linesBetween("begin", "end"));
    }

    /** The suite of the README. It is not run by itself: some claims of the demo fail, as they should. */
    static final class Suite {
        // begin suite
        @TestFactory
        Stream<DynamicTest> claims() throws Exception {
            return ClaimTests.of(Path.of("."), LocalDate.now());
        }
        // end suite
    }

    @Test
    void theSuiteOfTheReadmeHasATestForEveryClaim() throws Throwable {
        Map<String, Executable> tests =
                new Suite().claims().collect(Collectors.toMap(DynamicTest::getDisplayName, DynamicTest::getExecutable));
        FolderContents folder = FolderContents.read(Path.of("."));
        assertThat(tests.keySet())
                .containsExactlyInAnyOrderElementsOf(folder.products().stream()
                        .flatMap(product -> product.claims().stream().map(claim -> product.name() + ": " + claim.id()))
                        .toList());
        for (ClaimAudit claim : skerry(folder)) {
            Executable test =
                    Objects.requireNonNull(tests.get("Skerry: " + claim.claim().id()));
            switch (claim.verdict()) {
                case PASS -> assertThatCode(test::execute).doesNotThrowAnyException();
                case FAIL -> assertThatThrownBy(test::execute).isInstanceOf(AssertionFailedError.class);
                default -> assertThatThrownBy(test::execute).isInstanceOf(TestAbortedException.class);
            }
        }
        assertThat(words(Files.readString(Path.of("README.md")))).contains(linesBetween("begin suite", "end suite"));
    }

    private static List<ClaimAudit> skerry(FolderContents folder) throws InputException {
        return folder.judged(Scope.all(), 100_000).products().stream()
                .filter(product -> product.product().name().equals("Skerry"))
                .flatMap(product -> product.claims().stream())
                .toList();
    }

    private static String linesBetween(String begin, String end) throws IOException {
        String source = Files.readString(Path.of("src/test/java/org/ellwand/junit/LibraryTest.java"));
        return words(between(source, "// " + begin + "\n", "// " + end + "\n"));
    }

    private static String between(String text, String begin, String end) {
        int from = text.indexOf(begin) + begin.length();
        return text.substring(from, text.indexOf(end, from));
    }

    private static String words(String text) {
        return text.lines().map(String::strip).collect(Collectors.joining(" ")).replaceAll("\\s+", " ");
    }
}
