package org.ellwand.junit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import java.util.stream.Collectors;
import org.ellwand.input.InputException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.api.io.TempDir;
import org.opentest4j.AssertionFailedError;
import org.opentest4j.TestAbortedException;

/** A battery that lasts 20 h ± 0.5 h, said to last less, longer, about as long, and longer with a waiver; invented. */
class ClaimTestsTest {
    @TempDir
    Path folder;

    @BeforeEach
    void write() throws IOException {
        Files.createDirectories(folder.resolve("claims"));
        Files.createDirectories(folder.resolve("measurements"));
        StringBuilder claims = new StringBuilder();
        claim(claims, "less", "15 h", "");
        claim(claims, "longer", "30 h", "");
        claim(claims, "about", "20 h", "");
        claim(claims, "waived", "30 h", "    waiver: {owner: A. N., reason: new cells, until: 2026-12-31}\n");
        Files.writeString(
                folder.resolve("claims/skerry.yaml"),
                "product: Skerry\neditions: [{id: box, source: Box, dated: 2025}]\nclaims:\n" + claims);
        Files.writeString(folder.resolve("measurements/bench.yaml"), """
                session: bench
                product: Skerry
                figures: [{of: battery life, value: 20 h, uncertainty: 0.5 h}]
                """);
    }

    private static void claim(StringBuilder claims, String id, String limit, String more) {
        claims.append("  - id: " + id + "\n    edition: box\n    quote: \"Long.\"\n"
                + "    stated: {quantity: figure, of: battery life, limit: at least " + limit + "}\n" + more);
    }

    private Map<String, Executable> tests(LocalDate today) throws InputException, IOException {
        return ClaimTests.of(folder, today)
                .collect(Collectors.toMap(DynamicTest::getDisplayName, DynamicTest::getExecutable));
    }

    @Test
    void everyClaimIsATest() throws Throwable {
        Map<String, Executable> tests = tests(LocalDate.of(2026, 12, 31));
        assertThat(tests).containsOnlyKeys("Skerry: less", "Skerry: longer", "Skerry: about", "Skerry: waived");
        tests.get("Skerry: less").execute();
        assertThatThrownBy(tests.get("Skerry: longer")::execute)
                .isInstanceOf(AssertionFailedError.class)
                .hasMessage("fail: figure (battery life): at least 30 h");
        assertThatThrownBy(tests.get("Skerry: about")::execute).isInstanceOf(TestAbortedException.class);
        assertThatThrownBy(tests.get("Skerry: waived")::execute)
                .isInstanceOf(TestAbortedException.class)
                .hasMessageContaining("waived until 2026-12-31 by A. N.: new cells");
    }

    @Test
    void anExpiredWaiverFails() throws Exception {
        assertThatThrownBy(tests(LocalDate.of(2027, 1, 1)).get("Skerry: waived")::execute)
                .isInstanceOf(AssertionFailedError.class);
    }
}
