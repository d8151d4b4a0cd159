package org.ellwand.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import org.ellwand.audit.Audit;
import org.junit.jupiter.api.Test;

class MarginFigureTest {
    @Test
    void everyClaimInDecibelsHasARowAndTheZoneBeginsAtZero() throws Exception {
        Audit audit = SampleAudit.audit();
        Map<String, Object> model = MarginFigure.of(audit.products().get(0)).orElseThrow();
        long inDecibels = audit.products().get(0).claims().stream()
                .flatMap(claim -> claim.plain().stream())
                .filter(plain -> plain.rule().limit().unit().symbol().startsWith("dB"))
                .filter(plain -> !plain.rule().limit().unit().symbol().contains("octave"))
                .filter(plain -> plain.standardUncertainty().isPresent())
                .count();
        assertThat((java.util.List<?>) model.get("rows")).hasSize((int) inDecibels);
        assertThat(FigureSamples.files(audit).get("figures/skerry-tide_claims.svg"))
                .contains("in dB: 1. flood: pass ")
                .contains(" ± ");
    }

    @Test
    void standsInEveryPage() throws Exception {
        Map<String, byte[]> files =
                ReportWriter.with(Optional.empty()).render(SampleAudit.audit(), ReportOptions.plain());
        String path = files.keySet().stream()
                .filter(name -> name.endsWith("_claims.svg"))
                .findFirst()
                .orElseThrow();
        for (String page : new String[] {"audit.md", "article.md", "article.html"}) {
            assertThat(new String(files.get(page), StandardCharsets.UTF_8)).contains(path);
        }
        assertThat(new String(files.get("audit.html"), StandardCharsets.UTF_8))
                .contains("how far inside or outside what was claimed");
    }
}
