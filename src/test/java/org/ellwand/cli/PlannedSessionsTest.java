package org.ellwand.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A claim that compares two sessions, planned before either, one or both of them were measured. All products and numbers are invented. */
class PlannedSessionsTest {
    @TempDir
    Path temp;

    private Path yard = Path.of("");

    @BeforeEach
    void claims() throws IOException {
        yard = temp.resolve("yard");
        Files.createDirectories(yard.resolve("claims"));
        Files.createDirectories(yard.resolve("measurements"));
        claims("limit: at least -3 dB", "");
    }

    private void claims(String limit, String more) throws IOException {
        Files.writeString(yard.resolve("claims/skerry.yaml"), """
                product: Skerry
                editions: [{id: box, source: The box, dated: 2025}]
                claims:
                  - id: washed
                    edition: box
                    quote: "As good after the wash."
                    stated: {quantity: attenuation, between: {session: [washed, "as new"]}, %s}
                    assumed: {setting: flood, level: 84 dB SPL, bands: 125 Hz to 8 kHz, statistic: mean%s}
                """.formatted(limit, more));
    }

    private static CommandLineRun run(String... arguments) {
        return CommandLineRun.of(Main.commands(new PrintWriter(Writer.nullWriter())), arguments);
    }

    /** An earlier session in which the ears of some crew wore the product, whose insertions scatter by half a decibel. */
    private void measured(String session, String file, double attenuationDb, String... crew) throws IOException {
        Files.writeString(yard.resolve("measurements/" + file + ".yaml"), """
                session: %s
                product: Skerry
                resolution: octave
                levels in: dB SPL
                stimuli: {pink-84: {kind: pink noise, level: 84 dB SPL}}
                open ear: scaled
                uncertainty:
                  - {cause: insertion, size: 1.5 dB, shared by: insertion}
                  - {cause: reading, size: 0.3 dB, shared by: reading, across bands: independent}
                data: [{file: %s.csv, layout: rows}]
                """.formatted(session, file));
        StringBuilder sheet = new StringBuilder("device,head,ear,setting,stimulus,insertion,take,frequency,level\n");
        for (String head : crew) {
            for (int hz : List.of(125, 250, 500, 1000, 2000, 4000, 8000)) {
                String who = "," + head + "," + head + "-left,";
                sheet.append("open ear" + who + ",pink-84,,1," + hz + ",70\n");
                sheet.append("open ear" + who + ",pink-84,,2," + hz + ",70\n");
                sheet.append(who + "flood,pink-84,1,," + hz + "," + (70 - attenuationDb + 0.5) + "\n");
                sheet.append(who + "flood,pink-84,2,," + hz + "," + (70 - attenuationDb - 0.5) + "\n");
            }
        }
        Files.writeString(yard.resolve("measurements/" + file + ".csv"), sheet);
    }

    private String plan() throws IOException {
        CommandLineRun plan = run("plan", yard.toString());
        assertThat(plan.exitCode()).as(plan.err()).isZero();
        return Files.readString(yard.resolve("plan/plan.md"));
    }

    /** The sessions that are planned, by the names in their files. */
    private List<String> planned() throws IOException {
        List<String> sessions = new ArrayList<>();
        try (Stream<Path> files = Files.list(yard.resolve("plan"))) {
            for (Path file : new TreeSet<>(files.toList())) {
                if (file.toString().endsWith(".yaml")) {
                    sessions.add(Files.readAllLines(file).stream()
                            .filter(line -> line.startsWith("session: "))
                            .findFirst()
                            .orElseThrow());
                }
            }
        }
        return sessions;
    }

    private String verdict(String... options) throws IOException {
        List<String> arguments = new ArrayList<>(List.of("audit", yard.toString(), "--trials", "1000"));
        arguments.addAll(List.of(options));
        CommandLineRun audit = run(arguments.toArray(String[]::new));
        assertThat(audit.exitCode()).as(audit.err()).isZero();
        return Files.readAllLines(yard.resolve("report/verdicts.csv")).get(1);
    }

    @Test
    void bothArePlannedUnderTheNamesThatTheClaimGivesThem() throws IOException {
        assertThat(plan())
                .contains("insertions in each ear")
                .contains("(plan-washed, plan-as-new)")
                .doesNotContain("names its sessions");
        assertThat(planned()).containsExactly("session: \"as new\"", "session: \"washed\"");
        FilledIn.in(yard, 16);
        assertThat(verdict()).doesNotContain("untested");
    }

    /** Nothing but the ear and the sound is shared by two sessions, and both cancel in each: √2 of what one session alone would have. */
    @Test
    void whatTheFirstSittingsTellIsThatOfTheirDifference() throws IOException {
        double both = marginDb(plan());
        Path claims = yard.resolve("claims/skerry.yaml");
        Files.writeString(claims, Files.readString(claims).replace("between: {session: [washed, \"as new\"]}, ", ""));
        assertThat(both).isCloseTo(Math.sqrt(2) * marginDb(plan()), within(0.1));
    }

    private static double marginDb(String plan) {
        Matcher margin = Pattern.compile("tells a value that lies ([0-9.]+) dB or more from its limit")
                .matcher(plan);
        assertThat(margin.find()).isTrue();
        return Double.parseDouble(margin.group(1));
    }

    @Test
    void theOneThatIsLackingIsPlannedForTheEarsOfTheOther() throws IOException {
        claims("limit: at least -3 dB", ", ears: each");
        measured("as new", "as-new", 16, "crew-01", "crew-02");
        assertThat(verdict()).contains("untested");
        assertThat(plan())
                .contains("(plan-washed)", "A claim that compares sessions is judged from both: name both.")
                .doesNotContain("names its sessions");
        assertThat(planned()).containsExactly("session: \"washed\"");
        assertThat(Files.readString(yard.resolve("plan/plan-washed.csv")))
                .startsWith("device,ear,head,setting,stimulus,insertion,take,frequency (Hz),level (dB SPL)\n")
                .contains(
                        "\n,crew-01-left,crew-01,flood,pink-84,1,,125,\n",
                        "\n,crew-02-left,crew-02,flood,pink-84,1,,125,\n");
        FilledIn.in(yard, 16);
        assertThat(verdict()).doesNotContain("untested");
        assertThat(Files.readString(yard.resolve("report/audit.json"))).contains("crew-01-left", "crew-02-left");
    }

    /** Both were measured, and the difference lies too near its limit: both are read again, under names that the claim is to give. */
    @Test
    void bothAreReadAgainWhereBothWereMeasured() throws IOException {
        measured("as new", "as-new", 17.5, "crew-01");
        measured("washed", "washed", 16, "crew-01");
        assertThat(verdict()).contains("marginal");
        assertThat(plan()).contains("The claim names its sessions (washed, as new): name the new ones there.");
        assertThat(planned()).containsExactly("session: \"plan-as-new\"", "session: \"plan-washed\"");
        FilledIn.in(yard, 16);
        claims("limit: at least -3 dB", "");
        Path claims = yard.resolve("claims/skerry.yaml");
        Files.writeString(
                claims, Files.readString(claims).replace("[washed, \"as new\"]", "[plan-washed, plan-as-new]"));
        assertThat(verdict()).contains("pass");
    }

    /** Another claim of the same product goes by an ear of its own, as ever. */
    @Test
    void otherClaimsKeepTheirSitting() throws IOException {
        Path claims = yard.resolve("claims/skerry.yaml");
        Files.writeString(claims, Files.readString(claims) + """
                  - id: flood
                    edition: box
                    quote: "Takes 15 dB off."
                    stated: {quantity: attenuation, setting: flood, limit: at least 15 dB}
                    assumed: {level: 84 dB SPL, bands: 125 Hz to 8 kHz, statistic: mean}
                """);
        plan();
        assertThat(planned()).containsExactly("session: \"as new\"", "session: \"plan-skerry\"", "session: \"washed\"");
    }

    private static final String AT_THE_BENCH = """
              - id: attack
                edition: box
                quote: "Shuts as quickly after the wash."
                stated: {quantity: attack time, between: {session: [washed, "as new"]}, limit: at most 2 ms}
                assumed: {setting: flood, within: 2 dB}
              - id: drift
                edition: box
                quote: "Drifts no more after the wash."
                stated: {quantity: level drift, between: {session: [washed, "as new"]}, limit: at most 0.5 dB}
                assumed: {setting: flood, stimulus: tone, level: 90 dB SPL}
              - id: music
                edition: box
                quote: "Music as steady after the wash."
                stated: {quantity: gain steadiness, between: {session: [washed, "as new"]}, limit: at most 5 %}
                assumed: {setting: flood, within: 1 dB, stimulus: music, level: 85 dB SPL}
              - id: clean
                edition: box
                quote: "As clean after the wash."
                stated: {quantity: harmonic distortion, between: {session: [washed, "as new"]}, limit: at most 1 %}
                assumed: {setting: flood, harmonics: 2 to 5, stimulus: tone, level: 90 dB SPL}
            """;

    private void claimsAtTheBench() throws IOException {
        Files.writeString(yard.resolve("claims/skerry.yaml"), """
                product: Skerry
                editions: [{id: box, source: The box, dated: 2025}]
                claims:
                """ + AT_THE_BENCH);
    }

    private List<String> verdicts() throws IOException {
        verdict();
        List<String> rows = Files.readAllLines(yard.resolve("report/verdicts.csv"));
        return rows.subList(1, rows.size());
    }

    private String planned(String file) throws IOException {
        return Files.readString(yard.resolve("plan").resolve(file));
    }

    @Test
    void tracesAndHarmonicsArePlannedUnderTheNamesThatTheClaimGivesThemToo() throws IOException {
        claimsAtTheBench();
        assertThat(plan()).contains("plan-washed.yaml", "plan-as-new.yaml").doesNotContain("names its sessions");
        assertThat(planned()).containsExactly("session: \"as new\"", "session: \"washed\"");
        FilledIn.in(yard, 16);
        assertThat(verdicts()).hasSize(4).noneMatch(row -> row.contains("untested"));
    }

    /** A session has one file: what is read besides its curves stands there, and their uncertainties with it. */
    @Test
    void tracesAndHarmonicsStandBesideTheCurvesOfTheSameSession() throws IOException {
        Path claims = yard.resolve("claims/skerry.yaml");
        Files.writeString(claims, Files.readString(claims) + AT_THE_BENCH);
        plan();
        assertThat(planned()).containsExactly("session: \"as new\"", "session: \"washed\"");
        assertThat(planned("plan-washed.yaml"))
                .contains(
                        "levels in plan-washed.csv; whatever says FILL",
                        "{cause: \"tube shift\"",
                        "{cause: timing, size: FILL ms");
        FilledIn.in(yard, 16);
        assertThat(verdicts()).hasSize(5).noneMatch(row -> row.contains("untested"));
    }

    /** Of the first session there are curves alone; what is lacking cannot be added to it, so both are read anew. */
    @Test
    void whereBothAreThereTracesAndHarmonicsArePlannedUnderNamesToBeGiven() throws IOException {
        claimsAtTheBench();
        measured("as new", "as-new", 16, "crew-01");
        measured("washed", "washed", 16, "crew-01");
        assertThat(plan()).contains("The claim names its sessions (washed, as new): name the new ones there.");
        assertThat(planned()).containsExactly("session: \"plan-as-new-bench\"", "session: \"plan-washed-bench\"");
        assertThat(planned("plan-washed-bench.yaml")).contains("ear: \"crew-01-left\"");
        FilledIn.in(yard, 16);
        Path claims = yard.resolve("claims/skerry.yaml");
        Files.writeString(
                claims,
                Files.readString(claims).replace("[washed, \"as new\"]", "[plan-washed-bench, plan-as-new-bench]"));
        assertThat(verdicts()).hasSize(4).noneMatch(row -> row.contains("untested"));
    }

    @Test
    void aFigureIsPlannedInEachSessionToo() throws IOException {
        Files.writeString(yard.resolve("claims/skerry.yaml"), """
                product: Skerry
                editions: [{id: box, source: The box, dated: 2025}]
                claims:
                  - id: weight
                    edition: box
                    quote: "Not a gram heavier after the wash."
                    stated: {quantity: figure, of: weight, between: {session: [washed, "as new"]}, limit: at most 1 g}
                """);
        plan();
        assertThat(planned()).containsExactly("session: \"as new\"", "session: \"washed\"");
        assertThat(List.of(planned("plan-as-new.yaml"), planned("plan-washed.yaml")))
                .allMatch(file -> file.contains("- {of: \"weight\", value: FILL g, uncertainty: FILL g}\n"));
    }

    /** One file would replace the other. */
    @Test
    void twoProductsInOneSessionToBeArePlannedOneAtATime() throws IOException {
        String skerry = Files.readString(yard.resolve("claims/skerry.yaml"));
        Files.writeString(yard.resolve("claims/tide.yaml"), skerry.replace("product: Skerry", "product: Tide"));
        CommandLineRun both = run("plan", yard.toString());
        assertThat(both.exitCode()).isEqualTo(2);
        assertThat(both.err())
                .isEqualTo("claims/tide.yaml: claims of 'Tide' and of another product name the same session that is"
                        + " still to be (plan-as-new.csv): plan one product at a time, with --product, each with its own"
                        + " --out" + System.lineSeparator());
        assertThat(yard.resolve("plan")).doesNotExist();
        assertThat(run("plan", yard.toString(), "--product", "Tide").exitCode()).isZero();
    }
}
