package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.ellwand.claim.ClaimsReader;
import org.ellwand.measurement.SessionReader;
import org.ellwand.quantity.Quantities;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the data say of themselves reaches ratings too. */
class RatingDoubtTest {
    @TempDir
    Path temp;

    /** @param at1kHz attenuation of the first of three subjects at 1 kHz, dB; the others have 25 dB */
    private Judgement judged(String at1kHz, String limit) throws Exception {
        Files.createDirectories(temp.resolve("claims"));
        Files.createDirectories(temp.resolve("measurements"));
        Files.writeString(temp.resolve("claims/skerry.yaml"), """
                product: Skerry
                editions: [{id: box, source: The box, dated: 2025}]
                claims:
                  - id: snr
                    edition: box
                    quote: "SNR 15 dB"
                    stated: {quantity: rating, of: SNR, limit: %s}
                    assumed: {method: "ISO 4869-2:2018", performance: 84 %%}
                """.formatted(limit));
        Files.writeString(temp.resolve("measurements/panel.yaml"), """
                session: panel
                product: Skerry
                resolution: octave
                uncertainty: unknown
                data: [{file: panel.csv, layout: attenuation}]
                """);
        StringBuilder sheet = new StringBuilder("ear,frequency,attenuation\n");
        for (int subject = 1; subject <= 3; subject++) {
            for (int hz : List.of(63, 125, 250, 500, 1000, 2000, 4000, 8000)) {
                String db = subject == 1 && hz == 1000 ? at1kHz : 24 + subject + ".0";
                sheet.append("ear-" + subject + "," + hz + "," + db + "\n");
            }
        }
        Files.writeString(temp.resolve("measurements/panel.csv"), sheet);
        return new Auditor(new AuditOptions(10_000))
                .audit(
                        new ClaimsReader(Quantities.forms(), Set.of()).readAll(temp),
                        SessionReader.readAll(temp),
                        List.of())
                .products()
                .get(0)
                .claims()
                .get(0)
                .plain()
                .orElseThrow();
    }

    @Test
    void aSoundPanelIsJudged() throws Exception {
        assertThat(judged("25.0", "at least 15 dB").verdict()).isEqualTo(Verdict.PASS);
        assertThat(judged("25.0", "at least 35 dB").verdict()).isEqualTo(Verdict.FAIL);
    }

    /** 2.5 for 25.0: it may have made the rating fail, and made it pass as well, since it errs either way. */
    @Test
    void aMisplacedDecimalPointLeavesItOpen() throws Exception {
        for (String limit : List.of("at least 5 dB", "at least 35 dB")) {
            Judgement judged = judged("2.5", limit);
            assertThat(judged.verdict()).isEqualTo(Verdict.MARGINAL);
            assertThat(judged.reason().orElseThrow())
                    .startsWith("the data themselves are in doubt (misplaced decimal point in session panel)");
        }
    }
}
