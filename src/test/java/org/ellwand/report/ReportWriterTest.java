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
import org.ellwand.audit.Audit;
import org.ellwand.input.InputException;
import org.junit.jupiter.api.Test;

class ReportWriterTest {
    static SortedMap<String, String> texts() throws InputException {
        return texts(SampleAudit.audit());
    }

    static SortedMap<String, String> texts(Audit audit) throws InputException {
        SortedMap<String, String> texts = new TreeMap<>();
        ReportWriter.with(Optional.empty())
                .render(audit, ReportOptions.plain())
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
                        "figures/skerry-tide-flood_value.svg",
                        "figures/skerry-tide-letter-flood.svg",
                        "figures/skerry-tide-step.svg",
                        "figures/skerry-tide-sum.svg",
                        "figures/skerry-tide_claims.svg",
                        "verdicts.csv");
    }

    @Test
    void givesTheSameBytesTwice() throws InputException {
        Map<String, byte[]> first =
                ReportWriter.with(Optional.empty()).render(SampleAudit.audit(), ReportOptions.plain());
        Map<String, byte[]> second =
                ReportWriter.with(Optional.empty()).render(SampleAudit.audit(), ReportOptions.plain());
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
        ReportOptions dated = new ReportOptions(Optional.of("2026-11-25"), false);
        byte[] page = ReportWriter.with(Optional.empty())
                .render(SampleAudit.audit(), dated)
                .get("audit.md");
        assertThat(new String(page, StandardCharsets.UTF_8)).contains("Dated 2026-11-25");
        assertThat(texts().get("audit.md")).doesNotContain("Dated 2026");
    }

    @Test
    void drawsPngOfTwiceTheSizeWhereAsked() throws Exception {
        ReportOptions png = new ReportOptions(Optional.empty(), true);
        byte[] image = ReportWriter.with(Optional.empty())
                .render(SampleAudit.audit(), png)
                .get("figures/skerry-tide-sum.png");
        BufferedImage read = ImageIO.read(new ByteArrayInputStream(image));
        assertThat(read.getWidth()).isEqualTo(2 * 500);
        assertThat(read.getRGB(2, 2) & 0xFFFFFF).isEqualTo(0xFFFFFF);
    }

    @Test
    void tellsAClaimInSentencesThatSpeakOfTheseMeasurements() throws InputException {
        assertThat(texts().get("article.md"))
                .contains(
                        "1. Brackwater Instruments says of Skerry Tide: “Flood takes 18 dB off.” (Product page, 2026-05-04)."
                                + " We read this as mean attenuation, flood, 125 Hz to 8 kHz, 90 to 100 dB SPL: 15 to 21 dB."
                                + " We measured 17.9 dB in 2 ears with 6 insertions (95 % interval 16.9 to 18.9 dB; left, the least"
                                + " favourable of 2). That is 0.1 dB below the claimed 18 dB, not more than the uncertainty of 1.0 dB."
                                + " Over the bands (left) it ran from 15.7 dB at 125 Hz to 19.8 dB at 2 kHz."
                                + " These measurements support the claim as we read it (pass). Read otherwise the verdict changes"
                                + " (strict: marginal). Note: ")
                .contains("It was not tested: needs an impulse source and a test fixture.")
                .contains(
                        "told us of Skerry Tide, in our words (Letter from the maker, 2026-08): The maker gives 12 dB for flood.");
    }

    @Test
    void answersShortlyFirst() throws InputException {
        String page = texts().get("audit.md");
        assertThat(page.substring(page.indexOf("## The short answer"), page.indexOf("**Before you rely")))
                .contains(
                        "**1 pass, 1 marginal, 3 fail, 2 untested.** Of 7 claims about Skerry Tide, these measurements support 1")
                .contains("Not supported: No. 3 (flood), at most 12 dB claimed (Letter from the maker, 2026-08),"
                        + " 17.9 ± 1.0 dB measured; ")
                .contains(
                        "- **For whom:** Take the plain one. Nobody should choose hearing protection for work by this report.")
                .contains("1 sentence can fairly be read in other ways; the verdict depends on which.")
                .contains("- **Not tested:** No. 5 (flood) and No. 7 (“Stops a bang.”).");
    }

    @Test
    void showsWhatWasStatedAssumedAndWhyAndEveryOtherRule() throws InputException {
        assertThat(texts().get("audit.md"))
                .contains("- We assumed: bands: 125 Hz to 8 kHz; tolerance: 3 dB")
                .contains(
                        "- Measured: 17.9 dB; U = 1.0 dB (k = 2); 95 % interval 16.9 to 18.9 dB; left, the least favourable of 2")
                .contains("noise alone makes this value read 0.4 dB too high on average")
                .contains(
                        "| strict | attenuation in every band, flood, 125 Hz to 8 kHz, 90 to 100 dB SPL: 16 to 20 dB; on the"
                                + " limit: the value lies too near it for the uncertainty (u = 1.1 dB); ")
                .contains("- Impression, not measured: It felt like less.")
                .contains("Typical probe tube: sizes of common practice, without a source.")
                .contains("The size of the uncertainty is not known.")
                .contains("a promise about how often it is wrong, if the declared sizes of the uncertainty are right")
                .contains("| insertion | 2 times | 0.50 dB |");
    }

    @Test
    void showsEveryEditionOfATopicAndWhichWordsChanged() throws InputException {
        assertThat(texts().get("audit.md"))
                .contains("### Skerry Tide: flood\n")
                .contains("| Letter from the maker, 2026-08 (No. 3) | The maker gives 12 dB for flood. (in our words) |"
                        + " at most 12 dB | 17.9 ± 1.0 dB | **fail** | ");
        assertThat(texts().get("audit.html"))
                .contains("“<del>Flood takes 18 dB off.</del> <ins>Quiet sounds pass.</ins>”");
    }

    @Test
    void holdsProductsThatShareATopicSideBySide() throws InputException {
        byte[] page = ReportWriter.with(Optional.empty())
                .render(SampleAudit.two(), ReportOptions.plain())
                .get("article.md");
        assertThat(new String(page, StandardCharsets.UTF_8))
                .contains(
                        "| Topic | Skerry Tide | Skerry Ebb |\n| --- | --- | --- |\n| flood | No. 1 (2026-05-04), read as 15 to 21 dB;"
                                + " measured 17.9 ± 1.0 dB: **pass**;<br>")
                .contains(
                        "What decides between them, and for whom:\n\n- On “flood”, by the newest claims: Skerry Tide 17.9 ± 1.0 dB"
                                + " (fail) and Skerry Ebb 7.90 ± 0.10 dB (marginal)")
                .contains("- A verdict is about a maker's sentence");
        assertThat(texts().get("article.md")).doesNotContain("Side by side");
    }
}
