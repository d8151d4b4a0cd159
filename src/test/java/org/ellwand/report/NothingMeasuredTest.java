package org.ellwand.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ellwand.audit.Audit;
import org.ellwand.audit.AuditOptions;
import org.ellwand.audit.Auditor;
import org.ellwand.claim.ClaimsReader;
import org.ellwand.input.InputException;
import org.ellwand.measurement.SessionReader;
import org.ellwand.quantity.Quantities;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a report says where there is little to say: claims alone, and a product that no ear wore. Invented. */
class NothingMeasuredTest {
    @TempDir
    Path yard;

    @BeforeEach
    void claim() throws IOException {
        Files.createDirectories(yard.resolve("measurements"));
        write("claims/horn.yaml", """
                product: Skerry Horn
                maker: Brackwater Instruments
                editions: [{id: box, source: Box, dated: 2025}]
                claims:
                  - id: loud
                    edition: box
                    quote: "Never above 80 dB."
                    stated: {quantity: output level, statistic: overall, weighting: Z, referred to: eardrum, limit: at most 80 dB SPL}
                    assumed: {bands: 500 Hz to 2 kHz, level: 70 dB SPL, unit: SN-1}
                    otherwise: [{name: generous, limit: at most 82 dB SPL}]
                """);
    }

    private void write(String file, String text) throws IOException {
        Path path = yard.resolve(file);
        Files.createDirectories(path.resolveSibling(""));
        Files.writeString(path, text);
    }

    private void measure(String session, String rows) throws IOException {
        write("measurements/bench.yaml", """
                session: bench
                product: Skerry Horn
                resolution: octave
                levels in: dB SPL
                unit: SN-1
                stimuli: {p70: {kind: pink noise, level: 70 dB SPL}}
                uncertainty: [{cause: placing, size: 0.5 dB, shared by: insertion}]
                data: [{file: bench.csv, layout: rows, stimulus: p70}]
                """ + session);
        write("measurements/bench.csv", "device,insertion,frequency,level\n" + rows);
    }

    private Map<String, byte[]> report() throws IOException, InputException {
        Audit audit = new Auditor(AuditOptions.standard())
                .audit(
                        new ClaimsReader(Quantities.forms(), Set.of()).readAll(yard),
                        SessionReader.readAll(yard),
                        List.of());
        return ReportWriter.with(Optional.empty()).render(audit, ReportOptions.plain());
    }

    private String page(String name) throws IOException, InputException {
        return new String(report().get(name), StandardCharsets.UTF_8);
    }

    @Test
    void ofClaimsAloneNothingIsSaidThatMeasurementsWouldHaveToShow() throws Exception {
        for (String page : List.of("audit.md", "audit.html", "article.md", "article.html")) {
            assertThat(page(page))
                    .as(page)
                    .contains("The one claim about Skerry Horn could not be tested.")
                    .contains("Nothing of it was measured in an ear.")
                    .contains("Nothing was measured in an ear: no number here says what reaches an ear.")
                    .doesNotContain(
                            "these measurements support", "refuted", "a firm verdict is wrong", "depends on which")
                    .doesNotContain("0 ears with");
        }
        assertThat(page("audit.md"))
                .contains("## How it was measured\n\nNothing was measured: there are claims only.\n");
        assertThat(page("audit.html")).contains("<p>Nothing was measured: there are claims only.</p>");
    }

    /** A loudspeaker, a microphone: where nothing speaks of an ear, none is counted. */
    @Test
    void noEarIsMadeUp() throws Exception {
        measure("", ROWS);
        assertThat(page("article.md"))
                .contains("We measured 74.8 dB SPL in 2 placings (95 % interval")
                .contains("| 2 placings, no ear named |")
                .contains("Measured in 2 placings, no ear named; a firm verdict is wrong")
                .contains("- Measured in 2 placings, no ear named: the numbers describe these samples, and not what"
                        + " reaches an ear.")
                .doesNotContain(" 1 ear");
        assertThat(page("audit.md")).contains("- Taken from: 2 placings, no ear named");
    }

    @Test
    void anEarThatIsNamedIsCounted() throws Exception {
        measure("ear: crew-01-left\n", ROWS);
        assertThat(page("article.md"))
                .contains("We measured 74.8 dB SPL in 1 ear with 2 insertions")
                .contains("- Measured on 1 ear with 2 insertions. The numbers describe");
    }

    @Test
    void anOpenEarShowsThatItWasAnEar() throws Exception {
        measure("", ROWS + "open ear,,500,70\nopen ear,,1000,70\nopen ear,,2000,70\n");
        assertThat(page("article.md")).contains("We measured 74.8 dB SPL in 1 ear with 2 insertions");
    }

    private static final String ROWS = """
            Skerry Horn,1,500,70
            Skerry Horn,1,1000,70
            Skerry Horn,1,2000,70
            Skerry Horn,2,500,70
            Skerry Horn,2,1000,70
            Skerry Horn,2,2000,70
            """;
}
