package org.ellwand.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two firmwares in the same insertions; the second holds back 0.6 dB less. Invented. */
class CompareCommandTest {
    @TempDir
    Path temp;

    private Path yard;
    private Path out;

    @BeforeEach
    void measure() throws IOException {
        yard = temp.resolve("yard");
        out = temp.resolve("comparison");
        Files.createDirectories(yard.resolve("claims"));
        Files.createDirectories(yard.resolve("measurements"));
        Files.writeString(yard.resolve("claims/skerry.yaml"), """
                product: Skerry
                about: Invented
                editions: [{id: box, source: Box, dated: 2025}]
                claims:
                  - id: flood
                    edition: box
                    quote: "Flood takes off 20 dB."
                    stated: {quantity: attenuation, limit: 20 dB}
                    assumed: {tolerance: 0.5 dB, level: 94 dB SPL, bands: 1 kHz to 4 kHz, statistic: mean, firmware: all}
                """);
        Files.writeString(yard.resolve("measurements/crew-01.yaml"), """
                session: crew-01
                product: Skerry
                ear: crew-01-left
                resolution: octave
                levels in: dB SPL
                stimuli: {n94: {kind: pink noise, level: 94 dB SPL}}
                uncertainty:
                  - {cause: calibration, size: 0.7 dB, shared by: session}
                  - {cause: insertion, size: 0.2 dB, shared by: insertion}
                  - {cause: reading, size: 0.2 dB, shared by: reading, across bands: independent}
                data: [{file: crew-01.csv, layout: rows, stimulus: n94}]
                """);
        StringBuilder rows = new StringBuilder("device,firmware,insertion,frequency,level\n");
        for (String band : new String[] {"1000", "2000", "4000"}) {
            rows.append("open ear,,,").append(band).append(",80\n");
            for (int i = 1; i <= 3; i++) {
                rows.append("Skerry,2.0,").append(i).append(',').append(band).append(",60.0\n");
                rows.append("Skerry,2.1,").append(i).append(',').append(band).append(",60.6\n");
            }
        }
        Files.writeString(yard.resolve("measurements/crew-01.csv"), rows);
    }

    private CommandLineRun run(String... args) {
        return CommandLineRun.of(Main.commands(new PrintWriter(Writer.nullWriter())), args);
    }

    private CommandLineRun compare(String... more) {
        String[] args = new String[7 + more.length];
        String[] first = {
            "compare",
            yard.toString(),
            yard.toString(),
            "--first-firmware=2.0",
            "--second-firmware=2.1",
            "--out",
            out.toString()
        };
        System.arraycopy(first, 0, args, 0, first.length);
        System.arraycopy(more, 0, args, first.length, more.length);
        return run(args);
    }

    /** A correction is printed for readers to whom the place of the folder says nothing. */
    @Test
    void theSidesOfOneFolderAreCalledByWhatTellsThemApart() throws IOException {
        compare("--trials=1000");
        assertThat(out.resolve("comparison.md")).content().startsWith("# firmware 2.1 against firmware 2.0\n");
        assertThat(out.resolve("correction.md")).content().contains("between firmware 2.0 and firmware 2.1.");
        run("compare", yard.toString(), yard.toString(), "--second-firmware=2.1", "--out", out.toString());
        assertThat(out.resolve("comparison.md")).content().contains(" (firmware 2.1) against ");
    }

    /** Attenuation is spoken of here as in a report. */
    @Test
    void everyPageSaysWhatItIsNot() throws IOException {
        compare("--trials=1000");
        for (String page : new String[] {"comparison.md", "comparison.html"}) {
            assertThat(out.resolve(page))
                    .content()
                    .contains("This is not a rating. A rating needs the standard procedure and a qualified laboratory.")
                    .contains("how many ears and insertions, and what of impulse noise, each of the two audits says")
                    .contains("For exposure to noise at work, local law and a hearing professional decide.");
        }
        assertThat(out.resolve("correction.md"))
                .content()
                .endsWith(
                        "\n\nThis is not a rating; for exposure to noise at work, local law and a hearing professional"
                                + " decide.\n");
    }

    @Test
    void whatIsNotThereIsNamedBeforeAnythingIsJudged() {
        Path nowhere = temp.resolve("nowhere");
        assertThat(run("compare", yard.toString(), nowhere.toString(), "--out", out.toString()))
                .isEqualTo(new CommandLineRun(2, "", nowhere + ": no such record or folder\n"));
        assertThat(run("compare", nowhere.toString(), yard.toString(), "--out", out.toString()))
                .isEqualTo(new CommandLineRun(2, "", nowhere + ": no such record or folder\n"));
        assertThat(run("compare", yard.toString(), temp.toString(), "--out", out.toString())
                        .err())
                .startsWith(temp + ": holds no folder claims/");
        assertThat(out).doesNotExist();
    }

    @Test
    void aPlantedShiftIsFoundAndSized() throws IOException {
        assertThat(compare("--margin", "1 dB"))
                .isEqualTo(new CommandLineRun(
                        0,
                        "",
                        "comparison written to " + out + "/ (comparison.html)\n"
                                + "Skerry, flood: pass -> marginal, shifted by more than noise\n"));
        // u = 0.2 · √(2/9) = 0.0943 dB; the open ear, the insertions and the calibration are shared.
        assertThat(Files.readString(out.resolve("comparison.md")))
                .contains("| 1 | flood | 20.0 dB | 19.4 dB | pass → marginal (worse) | −0.60 dB | 0.19 dB |"
                        + " less than 0.001 | more than noise; the same within the margin |");
        assertThat(Files.readString(out.resolve("comparison.json"))).contains("\"standardUncertainty\" : 0.0942809");
        assertThat(Files.readString(out.resolve("correction.md")))
                .contains("One verdict changed")
                .startsWith("**Note.** ")
                .contains("*pass* (20.0 dB) in firmware 2.0, *marginal* (19.4 dB) in firmware 2.1.");
    }

    /** The same firmware, judged from sheets that had been mixed up. */
    @Test
    void ofOneFirmwareTheLaterAuditCorrectsTheEarlier() throws IOException {
        Path earlier = temp.resolve("earlier");
        try (Stream<Path> files = Files.walk(yard)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path copy = earlier.resolve(yard.relativize(file).toString());
                Files.createDirectories(copy.resolveSibling(""));
                String text = Files.readString(file);
                boolean sheet = file.toString().endsWith(".csv");
                Files.writeString(
                        copy,
                        sheet ? text.replace("2.0", "x").replace("2.1", "2.0").replace("x", "2.1") : text);
            }
        }
        run(
                "compare",
                earlier.toString(),
                yard.toString(),
                "--first-firmware=2.1",
                "--second-firmware=2.1",
                "--out",
                out.toString());
        assertThat(Files.readString(out.resolve("correction.md")))
                .startsWith("**Correction.** ")
                .contains("an earlier version of this article said *pass* (20.0 dB); it is *marginal* (19.4 dB).");
    }

    @Test
    void worseFailsABuildOnRequest() {
        assertThat(compare("--fail-on", "worse").exitCode()).isEqualTo(1);
        assertThat(run("compare", yard.toString(), yard.toString(), "--out", out.toString(), "--fail-on", "worse")
                        .exitCode())
                .isZero();
    }

    @Test
    void aRecordIsComparedAsItIsAndCannotBeNarrowed() {
        run("audit", yard.toString());
        String record = yard.resolve("report/audit.json").toString();
        assertThat(run("compare", record, record, "--out", out.toString()).exitCode())
                .isZero();
        assertThat(run("compare", record, record, "--out", out.toString(), "--first-firmware", "2.0"))
                .isEqualTo(new CommandLineRun(
                        2, "", record + ": is a record and cannot be narrowed: give the folder it is of\n"));
    }

    @Test
    void aNameThatNothingBearsIsToldByTheOptionThatItStandsAt() {
        assertThat(run("compare", yard.toString(), yard.toString(), "--out", out.toString(), "--second-firmware", "1.0")
                        .err())
                .isEqualTo("--second-firmware: no firmware is called '1.0'; there is 2.0, 2.1\n");
    }

    @Test
    void aMarginIsAnAmount() {
        assertThat(compare("--margin", "wide").exitCode()).isEqualTo(2);
        assertThat(compare("--margin", "-1 dB").err())
                .isEqualTo("ellwand compare: --margin takes an amount above 0, as 1 dB\n"
                        + "ellwand compare --help shows what is accepted\n");
        assertThat(compare("--margin", "1 Hz").err())
                .isEqualTo("ellwand compare: --margin 1 Hz fits no claim that both have: they are in dB\n"
                        + "ellwand compare --help shows what is accepted\n");
        assertThat(out).doesNotExist();
        assertThat(compare("--fail-on", "better").err())
                .startsWith("ellwand compare: --fail-on takes worse, not 'better'\n");
    }

    @Test
    void anAuditIsNotReplacedByAComparison() {
        run("audit", yard.toString());
        assertThat(run(
                                "compare",
                                yard.toString(),
                                yard.toString(),
                                "--out",
                                yard.resolve("report").toString())
                        .exitCode())
                .isEqualTo(2);
    }
}
