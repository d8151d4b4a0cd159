package org.ellwand.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import javax.imageio.ImageIO;
import org.ellwand.input.InputException;
import org.junit.jupiter.api.Test;

class ReportWriterTest {
    static SortedMap<String, String> texts() throws InputException {
        SortedMap<String, String> texts = new TreeMap<>();
        ReportWriter.render(SampleAudit.audit(), ReportOptions.plain())
                .forEach((path, bytes) -> texts.put(path, new String(bytes, StandardCharsets.UTF_8)));
        return texts;
    }

    @Test
    void writesPagesTheArticleTheTableAndAFigurePerMeasuredClaim() throws InputException {
        assertThat(texts().keySet())
                .containsExactly(
                        "article.html",
                        "article.md",
                        "audit.html",
                        "audit.md",
                        "figures/skerry-tide-battery.svg",
                        "figures/skerry-tide-flood.svg",
                        "figures/skerry-tide-letter-flood.svg",
                        "figures/skerry-tide-step.svg",
                        "figures/skerry-tide-sum.svg",
                        "verdicts.csv");
    }

    @Test
    void givesTheSameBytesTwice() throws InputException {
        Map<String, byte[]> first = ReportWriter.render(SampleAudit.audit(), ReportOptions.plain());
        Map<String, byte[]> second = ReportWriter.render(SampleAudit.audit(), ReportOptions.plain());
        assertThat(first.keySet()).isEqualTo(second.keySet());
        first.forEach((path, bytes) ->
                assertThat(Arrays.equals(bytes, second.get(path))).as(path).isTrue());
    }

    @Test
    void neverPrintsAQuoteThatMayNotBeQuoted() throws InputException {
        texts().forEach((path, text) ->
                assertThat(text).as(path).doesNotContain("Between us").doesNotContain("nearer twelve"));
        assertThat(texts().get("audit.md")).contains("The maker gives 12 dB for flood. (in our words)");
    }

    @Test
    void printsTheCautionsInEveryPage() throws InputException {
        for (String page : new String[] {"audit.html", "audit.md", "article.html", "article.md"}) {
            assertThat(texts().get(page))
                    .as(page)
                    .contains("Measured on 2 ears with 6 insertions.")
                    .contains("This is not a rating. A rating needs the standard procedure and a qualified laboratory.")
                    .contains("Impulse noise was not measured.")
                    .contains("local law and a hearing professional decide");
        }
    }

    @Test
    void printsADateOnlyWhereOneIsGiven() throws InputException {
        ReportOptions dated = new ReportOptions(Optional.empty(), Optional.of("2026-11-25"), false);
        byte[] page = ReportWriter.render(SampleAudit.audit(), dated).get("audit.md");
        assertThat(new String(page, StandardCharsets.UTF_8)).contains("Dated 2026-11-25");
        assertThat(texts().get("audit.md")).doesNotContain("Dated 2026");
    }

    @Test
    void drawsPngOfTwiceTheSizeWhereAsked() throws Exception {
        ReportOptions png = new ReportOptions(Optional.empty(), Optional.empty(), true);
        byte[] image = ReportWriter.render(SampleAudit.audit(), png).get("figures/skerry-tide-sum.png");
        BufferedImage read = ImageIO.read(new ByteArrayInputStream(image));
        assertThat(read.getWidth()).isEqualTo(2 * 670);
        assertThat(read.getRGB(2, 2) & 0xFFFFFF).isEqualTo(0xFFFFFF);
    }
}
