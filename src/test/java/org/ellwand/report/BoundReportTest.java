package org.ellwand.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ellwand.audit.Audit;
import org.ellwand.audit.AuditOptions;
import org.ellwand.audit.Auditor;
import org.ellwand.claim.ClaimsReader;
import org.ellwand.input.InputException;
import org.ellwand.measurement.SessionReader;
import org.ellwand.quantity.Quantities;
import org.junit.jupiter.api.Test;

/** Where only an end of a value was measured, its sentences say so and give no difference that was not. */
class BoundReportTest {
    private static final Path FOLDER = Path.of("src/test/resources/org/ellwand/examples/series-and-traces");

    private static String article() throws IOException, InputException {
        Audit audit = new Auditor(AuditOptions.standard())
                .audit(
                        new ClaimsReader(Quantities.forms(), Set.of()).readAll(FOLDER),
                        SessionReader.readAll(FOLDER),
                        List.of());
        return new String(
                ReportWriter.with(Optional.empty())
                        .render(audit, ReportOptions.plain())
                        .get("article.md"),
                StandardCharsets.UTF_8);
    }

    @Test
    void anOnsetBeyondTheLevelsTestedIsAnEnd() throws IOException, InputException {
        assertThat(article())
                .contains("drop 20 dB: at least 85 dB SPL. Up to 100 dB SPL, the highest level tested in 1 ear with 3"
                        + " insertions, it did not begin to act: the onset lies above 100 dB SPL. That is more than 15.0 dB"
                        + " above the claimed minimum of 85 dB SPL. These measurements support the claim")
                .contains("the onset lies above 100 dB SPL. These measurements do not decide it (marginal): what was"
                        + " measured ends at 100 dB SPL");
    }

    @Test
    void differencesOfLevelsHaveNoReference() throws IOException, InputException {
        assertThat(article())
                .contains(
                        "That is 1.0 dB below the claimed maximum of 83 dB SPL, more than the uncertainty of 0.80 dB.");
    }
}
