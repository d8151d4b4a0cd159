package org.ellwand.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command from files to files: what it plans, the audit reads. All products and numbers are invented. */
class PlanCommandTest {
    private static final int LINES_OF_A_PAGE = 60;

    @TempDir
    Path temp;

    private Path yard = Path.of("");

    @BeforeEach
    void folders() throws IOException {
        yard = temp.resolve("yard");
        Files.createDirectories(yard.resolve("claims"));
        Files.createDirectories(yard.resolve("measurements"));
    }

    private static CommandLineRun run(String... arguments) {
        return CommandLineRun.of(Main.commands(new PrintWriter(Writer.nullWriter())), arguments);
    }

    private void claims(String claims) throws IOException {
        Files.writeString(
                yard.resolve("claims/skerry.yaml"),
                "product: Skerry\neditions: [{id: box, source: The box, dated: 2025}]\nclaims:\n" + claims);
    }

    private static final String FLOOD = """
              - id: flood
                edition: box
                quote: "Takes 15 dB off."
                stated: {quantity: attenuation, setting: flood, limit: 15 dB}
                assumed: {sense: at least, level: 94 dB SPL, bands: 125 Hz to 8 kHz, statistic: mean}
            """;

    /** @param ears each with its attenuation in dB */
    private void measured(Map<String, Double> ears) throws IOException {
        Files.writeString(yard.resolve("measurements/yard.yaml"), """
                session: yard
                product: Skerry
                resolution: octave
                levels in: dB SPL
                stimuli: {pink-75: {kind: pink noise, level: 75 dB SPL}, pink-94: {kind: pink noise, level: 94 dB SPL}}
                open ear: scaled
                settings switched: in place
                uncertainty:
                  - {cause: insertion, size: 1.5 dB, shared by: insertion}
                  - {cause: reading, size: 0.3 dB, shared by: reading, across bands: independent}
                data: [{file: yard.csv, layout: rows}]
                """);
        StringBuilder sheet = new StringBuilder("device,head,ear,setting,stimulus,insertion,take,frequency,level\n");
        ears.forEach((head, attenuation) -> {
            for (int hz : List.of(125, 250, 500, 1000, 2000, 4000, 8000)) {
                String who = head + "," + head + "-left";
                sheet.append("open ear," + who + ",,pink-75,,1," + hz + ",70\n");
                sheet.append("open ear," + who + ",,pink-75,,2," + hz + ",70\n");
                sheet.append("," + who + ",flood,pink-94,1,," + hz + "," + (89 - attenuation) + "\n");
            }
        });
        Files.writeString(yard.resolve("measurements/yard.csv"), sheet);
    }

    private String plan() throws IOException {
        assertThat(run("plan", yard.toString()).exitCode()).isZero();
        return Files.readString(yard.resolve("plan/plan.md"));
    }

    /** Of a lot there would be hundreds of names in a line. */
    @Test
    void ofManySittingsTheFirstAndTheLastAreNamed() throws IOException {
        claims(FLOOD.replace("statistic: mean", "statistic: mean, ears: each"));
        Map<String, Double> ears = new TreeMap<>();
        for (int number = 11; number <= 23; number++) {
            ears.put("crew-" + number, 16.4);
        }
        measured(ears);
        assertThat(plan())
                .contains(
                        "**In this order** (plan-yard-crew-11-left-crew-11 to plan-yard-crew-23-left-crew-23, 13 sittings):");
    }

    @Test
    void thePlanOfTheDemoFitsOnePage() throws IOException {
        Path out = temp.resolve("out");
        CommandLineRun run = run("plan", ".", "--out", out.toString());
        assertThat(run.exitCode()).isZero();
        assertThat(run.out()).isEmpty();
        assertThat(run.err())
                .startsWith("plan written to " + out + "/ (plan.md)\n")
                .contains(" decided, ");
        assertThat(Files.readString(out.resolve("plan.md")))
                .contains("## Skerry Tide", "## Cautions")
                .satisfies(text -> assertThat(text.lines().count()).isLessThan(LINES_OF_A_PAGE));
    }

    @Test
    void aMarginalClaimBecomesFirmOnceThePlannedReadingsAreIn() throws IOException {
        claims(FLOOD);
        measured(Map.of("crew-01", 16.4));
        run("audit", yard.toString());
        assertThat(Files.readString(yard.resolve("report/verdicts.csv"))).contains("marginal");
        assertThat(plan()).contains("8 insertions in each ear").contains("“open ear: scaled”");
        fill("plan-yard.csv");
        Files.copy(yard.resolve("plan/plan-yard.yaml"), yard.resolve("measurements/plan-yard.yaml"));
        CommandLineRun audit = run("audit", yard.toString(), "--session", "plan-yard", "--fail-on", "marginal");
        assertThat(audit.err()).doesNotContain("error");
        assertThat(audit.exitCode()).isZero();
    }

    private void fill(String sheet) throws IOException {
        StringBuilder filled = new StringBuilder();
        for (String row : Files.readAllLines(yard.resolve("plan/" + sheet))) {
            String level = row.contains("quiet") ? "20" : row.startsWith("open ear") ? "70" : "72.6";
            filled.append(row).append(row.endsWith(",") ? level : "").append('\n');
        }
        Files.writeString(yard.resolve("measurements/" + sheet), filled);
    }

    @Test
    void withoutABackgroundTheFloorIsATypicalOneAndSaysSo() throws IOException {
        claims(FLOOD);
        measured(Map.of("crew-01", 16.4));
        // 15 dB claimed, 25 dB of floor, 15 dB clear of it, 12.8 dB from a band of 19 to all of them.
        assertThat(plan())
                .contains(
                        "To see 15 dB of attenuation 15 dB above a typical background of 25 dB a third octave (common practice, no source:"
                                + " it was not read here), pink noise must be 68 dB SPL or louder");
    }

    @Test
    void aStatementAboutPeopleNeedsMoreHeads() throws IOException {
        claims(FLOOD.replace("statistic: mean}", "statistic: mean, ears: mean}"));
        measured(Map.of("crew-01", 15.2, "crew-02", 17.4));
        String plan = plan();
        assertThat(plan)
                .containsPattern("\\d+ heads in all, 3 insertions in an ear of each; decides in \\d+ % of cases");
        assertThat(plan).contains("once for each further head or sample, under names of their own");
        assertThat(Files.readString(yard.resolve("plan/plan-yard-another.yaml")))
                .contains("head: \"another-head\"");
    }

    /**
     * Mean 17, deviation 1.5: 15 lies 1.333 deviations off. The one-sided factor of 75 % at 95 % is 1.125 of 23 and 1.114 of 24, and means of
     * so many lie that many of their own deviations off with 0.795 and 0.813 (SciPy's noncentral t).
     */
    @Test
    void aShareNeedsAsManyHeadsAsTellItInFourOfFiveCases() throws IOException {
        claims(FLOOD.replace("statistic: mean}", "statistic: mean, ears: share of 75 %}"));
        measured(Map.of("crew-01", 15.5, "crew-02", 17.0, "crew-03", 18.5));
        assertThat(plan()).contains("24 heads in all, 3 insertions in an ear of each; decides in 81 % of cases");
    }

    @Test
    void figuresTracesAndHarmonicsHaveAFileOfTheirOwn() throws IOException {
        claims("""
                  - id: hours
                    edition: box
                    quote: "16 hours."
                    stated: {quantity: figure, of: battery life, limit: at least 16 h}
                  - id: quick
                    edition: box
                    quote: "Shuts in 10 ms."
                    stated: {quantity: attack time, setting: flood, limit: at most 10 ms}
                    assumed: {within: 3 dB}
                  - id: clean
                    edition: box
                    quote: "Below 1 %."
                    stated: {quantity: harmonic distortion, limit: below 1 %}
                    assumed: {harmonics: 2 to 3, setting: flood}
                """);
        assertThat(plan()).contains("**Figures, traces and harmonics of Skerry:**", "plan-skerry-bench.yaml");
        for (Path file : files()) {
            Files.copy(file, yard.resolve("measurements").resolve(file.getFileName()));
        }
        CommandLineRun empty = run("audit", yard.toString());
        assertThat(empty.exitCode()).isEqualTo(2);
        assertThat(empty.err()).contains("measurements/plan-skerry-bench.yaml:", "FILL");
        filled();
        CommandLineRun audit = run("audit", yard.toString(), "--fail-on", "marginal");
        assertThat(audit.err()).contains("Skerry: 3 pass, 0 marginal, 0 fail, 0 untested");
        assertThat(audit.exitCode()).isZero();
    }

    private List<Path> files() throws IOException {
        try (var files = Files.list(yard.resolve("plan"))) {
            return files.filter(file -> file.getFileName().toString().contains("-bench"))
                    .sorted()
                    .toList();
        }
    }

    private void filled() throws IOException {
        Path session = yard.resolve("measurements/plan-skerry-bench.yaml");
        Files.writeString(
                session,
                Files.readString(session)
                        .replace("value: FILL h, uncertainty: FILL h", "value: 17 h, uncertainty: 0.3 h")
                        .replace(
                                "at: FILL s, from: FILL dB SPL, to: FILL dB SPL",
                                "at: 0.1 s, from: 55 dB SPL, to: 90 dB SPL")
                        .replace("size: FILL ms", "size: 0.4 ms")
                        .replace("size: FILL dB", "size: 0.3 dB")
                        .replace("fundamental: FILL Hz", "fundamental: 500 Hz"));
        StringBuilder step = new StringBuilder("time (s),level (dB SPL)\n");
        for (int ms = 0; ms <= 600; ms++) {
            step.append(ms / 1000.0 + "," + (ms < 100 ? 50 : ms < 104 ? 80 : 70) + "\n");
        }
        Files.writeString(yard.resolve("measurements/plan-skerry-bench-step-up-flood.csv"), step);
        Files.writeString(
                yard.resolve("measurements/plan-skerry-bench-harmonics-flood.csv"),
                "order,level (dB SPL)\n1,90\n2,40\n3,35\n4,\n5,\n");
    }
}
