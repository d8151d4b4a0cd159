package org.ellwand.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.ellwand.audit.Audit;
import org.ellwand.audit.AuditOptions;
import org.ellwand.audit.Auditor;
import org.ellwand.claim.ClaimsReader;
import org.ellwand.input.InputException;
import org.ellwand.measurement.SessionReader;
import org.ellwand.quantity.Quantities;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A rating is worked out, not measured, and every page says so. */
class RatingReportTest {
    private static final Path FOLDER = Path.of("src/test/resources/org/ellwand/examples/rating");
    private static final Map<String, String> TEXTS = new TreeMap<>();

    @BeforeAll
    static void render() throws IOException, InputException {
        Audit audit = new Auditor(AuditOptions.standard())
                .audit(
                        new ClaimsReader(Quantities.forms(), Set.of()).readAll(FOLDER),
                        SessionReader.readAll(FOLDER),
                        List.of());
        ReportWriter.with(Optional.empty())
                .render(audit, ReportOptions.plain())
                .forEach((path, bytes) -> TEXTS.put(path, new String(bytes, StandardCharsets.UTF_8)));
    }

    private static String text(String path) {
        return TEXTS.getOrDefault(path, "");
    }

    @Test
    void aPrintedTableWasNotMeasured() {
        assertThat(text("article.md"))
                .contains(
                        "We read this as rating (SNR), method ISO 4869-2:1994, performance 84 %: 21.5 to 22.5 dB. Calculated"
                                + " by this rule it comes to 21.6 dB from the maker's own table; we measured nothing for it. ");
        assertThat(text("audit.md")).contains("- Calculated: 21.6 dB, calculated\n");
    }

    @Test
    void aPanelIsNamedWithItsTrials() {
        assertThat(text("article.md"))
                .contains("Calculated by this rule it comes to 24.7 dB from 12 trials of a panel.");
    }

    @Test
    void noUncertaintyOfZeroIsPrinted() {
        TEXTS.forEach((path, text) -> assertThat(text).as(path).doesNotContain("U = 0"));
        assertThat(text("figures/skerry-table.svg")).contains("Dot: calculated value.");
    }

    @Test
    void theCautionsStay() {
        for (String path : List.of("audit.md", "article.md")) {
            assertThat(text(path))
                    .as(path)
                    .contains(
                            "This is not a rating. A rating needs the standard procedure and a qualified laboratory.");
        }
    }
}
