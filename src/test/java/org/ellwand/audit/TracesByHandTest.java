package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.function.IntToDoubleFunction;
import org.ellwand.claim.ClaimsReader;
import org.ellwand.input.InputException;
import org.ellwand.measurement.SessionReader;
import org.ellwand.quantity.Quantities;
import org.ellwand.words.Remark;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One value of every quantity that traces and harmonics give, worked by hand; two insertions each, levels invented. */
class TracesByHandTest {
    @TempDir
    Path temp;

    @BeforeEach
    void session() throws IOException {
        Files.createDirectories(temp.resolve("claims"));
        Files.createDirectories(temp.resolve("measurements"));
        write("yard.yaml", """
                session: yard
                product: Skerry
                ear: crew-01-left
                levels in: dB SPL
                stimuli:
                  tone: {kind: tone, level: 80 dB SPL}
                uncertainty:
                  - {cause: reading, size: 0.3 dB, shared by: reading}
                  - {cause: insertion, size: 0.3 dB, shared by: insertion}
                data:
                  - {file: harmonics.csv, layout: harmonics, fundamental: 500 Hz, stimulus: tone}
                traces:
                  - {file: attack-1.csv, insertion: 1, step: {at: 1 s, from: 55 dB SPL, to: 80 dB SPL}}
                  - {file: attack-2.csv, insertion: 2, step: {at: 1 s, from: 55 dB SPL, to: 80 dB SPL}}
                  - {file: release.csv, insertion: 1, step: {at: 1 s, from: 80 dB SPL, to: 55 dB SPL}}
                  - {file: steady.csv, insertion: 1, stimulus: tone}
                  - {file: open.csv, device: open ear, stimulus: tone}
                """);
        write("harmonics.csv", """
                insertion,order,level
                1,1,90
                1,2,50
                1,3,44
                2,1,90
                2,2,54
                2,3,52
                """);
        // Through 3 dB above the new level, 63 dB, half way down.
        write("attack-1.csv", ramp(66, 0.1));
        write("attack-2.csv", ramp(66, 0.2));
        write("release.csv", ramp(50, 0.4));
        write("steady.csv", trace(i -> 60 + 0.1 * i));
        write("open.csv", trace(i -> 80));
    }

    private void write(String file, String text) throws IOException {
        Files.writeString(temp.resolve("measurements").resolve(file), text);
    }

    /** Straight from a level at 1 s to 60 dB, and there to the end at 3 s. */
    private static String ramp(double fromDb, double seconds) {
        return "time (s),level (dB SPL)\n0,60\n0.999,60\n1," + fromDb + "\n" + (1 + seconds)
                + ",60\n2,60\n2.6,60\n2.8,60\n3,60\n";
    }

    /** 101 samples, 0.1 s apart. */
    private static String trace(IntToDoubleFunction levelDb) {
        StringBuilder text = new StringBuilder("time (s),level (dB SPL)\n");
        for (int i = 0; i <= 100; i++) {
            text.append(i / 10.0).append(',').append(levelDb.applyAsDouble(i)).append('\n');
        }
        return text.toString();
    }

    private Judgement judged(String rule) throws IOException, InputException {
        Files.writeString(temp.resolve("claims/skerry.yaml"), """
                product: Skerry
                about: Invented
                editions: [{id: box, source: The box, dated: 2025}]
                claims:
                  - {id: one, edition: box, quote: "Invented.", stated: {quantity: %s}}
                """.formatted(rule));
        return new Auditor(AuditOptions.standard())
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

    private double value(String rule) throws IOException, InputException {
        return judged(rule).value().orElseThrow();
    }

    /** Half of 0.1 s and half of 0.2 s: 75 ms in the mean. */
    @Test
    void attackTime() throws Exception {
        assertThat(value("attack time, limit: at most 90 ms, within: 3 dB")).isCloseTo(75, within(1e-6));
        assertThat(value("attack time, limit: at most 0.09 s, within: 3 dB")).isCloseTo(0.075, within(1e-9));
    }

    /** From 50 to 60 dB in 0.4 s; 56 dB are reached after 0.24 s. */
    @Test
    void releaseTime() throws Exception {
        assertThat(value("release time, limit: at most 300 ms, within: 4 dB")).isCloseTo(240, within(1e-6));
    }

    /** Takes and insertions are averaged in dB: 52 and 48 dB under 90 dB, so 100 √(10^−3.8 + 10^−4.2) %. */
    @Test
    void harmonicDistortion() throws Exception {
        double expected = 100 * Math.sqrt(Math.pow(10, -3.8) + Math.pow(10, -4.2));
        assertThat(value("harmonic distortion, limit: at most 2 %, harmonics: 2 to 3"))
                .isCloseTo(expected, within(1e-9));
        assertThat(value("harmonic distortion, limit: at most 2 %, harmonics: 3 to 3"))
                .isCloseTo(100 * Math.pow(10, -2.1), within(1e-9));
    }

    /** What was not measured is not known to be small. */
    @Test
    void aHarmonicThatIsMissingLeavesNoFirmPass() throws Exception {
        assertThat(judged("harmonic distortion, limit: at most 20 %, harmonics: 2 to 3")
                        .verdict())
                .isEqualTo(Verdict.PASS);
        Judgement lacking = judged("harmonic distortion, limit: at most 20 %, harmonics: 2 to 5");
        assertThat(lacking.verdict()).isEqualTo(Verdict.MARGINAL);
        assertThat(lacking.reasons()).extracting(Remark::key).contains("missing-harmonics");
        assertThat(judged("harmonic distortion, limit: at most 20 %, harmonics: 4 to 5")
                        .verdict())
                .isEqualTo(Verdict.UNTESTED);
    }

    /** 0.1 dB every 0.1 s: the middles of the first and the last fifth lie 8 s apart. */
    @Test
    void levelDrift() throws Exception {
        assertThat(value("level drift, limit: at most 9 dB")).isCloseTo(8, within(1e-9));
    }

    /**
     * The gain runs evenly from −20 to −10 dB, by energy 10 lg((0.1 − 0.01) / ln 10) = −14.08 dB: two of its ten decibels
     * lie within 1 dB, up to one of the 80 frames.
     */
    @Test
    void gainSteadiness() throws Exception {
        assertThat(value("gain steadiness, limit: at least 10 %, within: 20 dB"))
                .isEqualTo(100);
        assertThat(value("gain steadiness, limit: at least 10 %, within: 1 dB")).isCloseTo(20, within(1.25));
    }

    @Test
    void steadinessNeedsTheOpenEar() throws Exception {
        Path yaml = temp.resolve("measurements/yard.yaml");
        Files.writeString(yaml, Files.readString(yaml).replaceAll("(?m)^.*open\\.csv.*\n", ""));
        Files.delete(temp.resolve("measurements/open.csv"));
        assertThat(judged("gain steadiness, limit: at least 10 %, within: 1 dB").verdict())
                .isEqualTo(Verdict.UNTESTED);
    }
}
