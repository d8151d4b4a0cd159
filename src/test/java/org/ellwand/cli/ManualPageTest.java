package org.ellwand.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.Writer;
import java.util.List;
import org.junit.jupiter.api.Test;

class ManualPageTest {
    /** Macros of man(7). */
    private static final String MACRO = "\\.(TH|SH|SS|PP|TP|nf|fi)( .*)?";

    private final List<String> lines = CommandLineRun.of(Main.commands(new PrintWriter(Writer.nullWriter())), "manual")
            .out()
            .lines()
            .toList();

    @Test
    void namesEveryCommandAndItsOptions() {
        for (String command : List.of(
                "ask",
                "audit",
                "bands",
                "compare",
                "completion",
                "inspect",
                "manual",
                "plan",
                "schema",
                "start",
                "stimulus")) {
            assertThat(lines).contains(".SS \"" + command + "\"");
        }
        assertThat(lines).contains("\\fB\\-\\-fail\\-on\\fR \\fIVERDICT\\fR", "Monte Carlo trials (default: 100000).");
    }

    @Test
    void holdsNoMacroThatManDoesNotKnowAndNoEmptyLine() {
        assertThat(lines).allSatisfy(line -> assertThat(line).isNotEmpty());
        assertThat(lines)
                .filteredOn(line -> line.startsWith(".") || line.startsWith("'"))
                .allSatisfy(line -> assertThat(line).matches(MACRO));
    }
}
