package org.ellwand.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A question to the maker of an invented earplug, and what the letters and audits after its answer say. */
class AnswerTest {
    private static final String HEAD = """
            product: Skerry
            maker: Brackwater Instruments
            editions:
              - {id: box, source: The box, dated: 2025-02}
            %s
            claims:
              - id: flood
                edition: box
                topic: reduction in flood
                quote: "Flood takes 18 dB off."
                stated: {quantity: attenuation, setting: flood, limit: 18 dB}
                assumed: {tolerance: 1 dB, level: 94 dB SPL, bands: 125 Hz to 8 kHz, statistic: mean}
                asked: 2026-07-01
            """;
    private static final String REPLY = """
                reply: {dated: 2026-08-12, text: "By and large, yes."}
            """;
    private static final String MORE = """
              - id: flood-2026
                edition: web-2026
                topic: reduction in flood
                quote: "Flood takes 15 to 18 dB off, on average from 125 Hz to 8 kHz."
                stated: {quantity: attenuation, setting: flood, limit: 15 to 18 dB, statistic: mean, bands: 125 Hz to 8 kHz}
                assumed: {level: 94 dB SPL}
            """;

    @TempDir
    Path yard;

    @BeforeEach
    void measured() throws IOException {
        Files.createDirectories(yard.resolve("claims"));
        Files.createDirectories(yard.resolve("measurements"));
        Files.writeString(yard.resolve("measurements/yard.yaml"), """
                session: yard
                product: Skerry
                ear: crew-01-left
                resolution: octave
                levels in: dB SPL
                stimuli: {pink-94: {kind: pink noise, level: 94 dB SPL}}
                uncertainty:
                  - {cause: insertion, size: 0.3 dB, shared by: insertion}
                  - {cause: reading, size: 0.3 dB, shared by: reading, across bands: independent}
                data: [{file: yard.csv, layout: rows}]
                """);
        StringBuilder sheet = new StringBuilder("device,setting,stimulus,insertion,frequency,level\n");
        for (int hz : List.of(125, 250, 500, 1000, 2000, 4000, 8000)) {
            sheet.append("open ear,,pink-94,,").append(hz).append(",86\n");
            sheet.append(",flood,pink-94,1,").append(hz).append(",69.9\n");
        }
        Files.writeString(yard.resolve("measurements/yard.csv"), sheet);
    }

    private void claims(String edition, String more) throws IOException {
        Files.writeString(yard.resolve("claims/skerry.yaml"), HEAD.formatted(edition) + more);
    }

    private static final String EDITION = "  - {id: web-2026, source: Product page, dated: 2026-09}";

    private CommandLineRun run(String command, String... more) {
        String[] all = new String[more.length + 2];
        all[0] = command;
        all[1] = yard.toString();
        System.arraycopy(more, 0, all, 2, more.length);
        return CommandLineRun.of(Main.commands(new PrintWriter(Writer.nullWriter())), all);
    }

    private String audit() throws IOException {
        assertThat(run("audit", "--trials", "1000").exitCode()).isZero();
        assertThat(Files.readString(yard.resolve("report/audit.html"))).contains("What the maker replied");
        return Files.readString(yard.resolve("report/audit.md"));
    }

    private String letter() throws IOException {
        assertThat(run("ask").exitCode()).isZero();
        return Files.readString(yard.resolve("letters/letter-skerry.md"));
    }

    @Test
    void withoutAnAnswerBothSaySinceWhen() throws IOException {
        claims("", "");
        assertThat(audit())
                .contains("- Maker: asked on 2026-07-01; no answer is on record\n")
                .contains("- Skerry, [1](#skerry-flood): asked on 2026-07-01; no answer is on record\n");
        assertThat(Files.readString(yard.resolve("report/audit.html")))
                .contains("<dt>Maker</dt><dd>asked on 2026-07-01; no answer is on record</dd>");
        assertThat(letter()).contains("- We asked about this on 2026-07-01 and have had no answer so far.\n");
    }

    @Test
    void aReplyInWordsIsPrintedAndIsNotAskedForAgain() throws IOException {
        claims("", REPLY);
        assertThat(audit())
                .contains("- Maker: asked on 2026-07-01, answered on 2026-08-12; the answer is printed and not judged:"
                        + " what we assumed above is assumed still\n")
                .contains("- Maker's reply (2026-08-12): By and large, yes.\n");
        assertThat(run("ask"))
                .isEqualTo(new CommandLineRun(
                        0,
                        "",
                        "letters written to " + yard + "/letters/\nnothing is left open: there is nobody to ask\n"));
    }

    /** 16.1 dB is no 18 ± 1 dB, and lies well inside 15 to 18 dB. */
    @Test
    void aNewEditionIsJudgedAndTheAuditSaysWhatItChanged() throws IOException {
        claims("", "");
        assertThat(audit()).contains("**0 pass, 0 marginal, 1 fail, 0 untested.**");
        claims(EDITION, MORE);
        assertThat(audit())
                .contains("**1 pass, 0 marginal, 1 fail, 0 untested.**")
                .contains("- Maker: asked on 2026-07-01; answered by No. 2 (Product page, 2026-09): limit 15 to 18 dB,"
                        + " before 17 to 19 dB; now says itself: statistic and bands; verdict pass, before fail\n");
        assertThat(letter())
                .doesNotContain("no answer so far", "Which of them holds today?")
                .contains("**1.** “Flood takes 15 to 18 dB off, on average from 125 Hz to 8 kHz.”")
                .contains("At which level of the sound outside?")
                .contains("""
                        ## Answered already, with thanks

                        - “Flood takes 18 dB off.” (The box, 2025-02): “Flood takes 15 to 18 dB off, on average from 125 Hz to 8 kHz.” (Product page, 2026-09)
                        """)
                .doesNotContain("**2.**");
        assertThat(Files.readString(yard.resolve("letters/letter-skerry.html")))
                .contains("“Flood takes 18 dB off.” <span class=\"soft\">(The box, 2025-02)</span>: “Flood takes 15");
    }

    @Test
    void anEditionFromBeforeTheQuestionIsNoAnswer() throws IOException {
        claims(EDITION.replace("2026-09", "2026-06"), MORE);
        assertThat(audit()).contains("- Maker: asked on 2026-07-01; no answer is on record\n");
        assertThat(letter())
                .contains(
                        "have had no answer so far", "Sentences 1 and 2 speak of the same thing (reduction in flood)");
    }

    @Test
    void whatCameSinceAGeneralQuestionIsThankedFor() throws IOException {
        claims(EDITION + "\nasked: 2026-07-01", MORE);
        assertThat(letter())
                .contains("We first wrote to you on 2026-07-01. Since then we have Product page (2026-09), with thanks."
                        + " What that did not settle is asked here.");
    }
}
