package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Figures that were read under two sounds, or at two levels of one; all invented. */
class FiguresBetweenSoundsTest {
    @TempDir
    Path yard;

    @BeforeEach
    void figures() throws Exception {
        Files.createDirectories(yard.resolve("claims"));
        Files.createDirectories(yard.resolve("measurements"));
        Files.writeString(yard.resolve("measurements/bench.yaml"), """
                session: bench
                product: Skerry
                stimuli:
                  p90: {kind: pink noise, level: 90 dB SPL}
                  p60: {kind: pink noise, level: 60 dB SPL}
                  m90: {kind: music, level: 90 dB SPL}
                figures:
                  - {of: battery life, value: 14 h, uncertainty: 0.5 h, stimulus: p90}
                  - {of: battery life, value: 19 h, uncertainty: 0.5 h, stimulus: p60}
                  - {of: hum, value: 4 mV, uncertainty: 0.1 mV, unit: SN-1}
                  - {of: hum, value: 0 mV, uncertainty: 0.1 mV, unit: SN-2}
                """);
    }

    private Judgement judged(String stated) throws Exception {
        Files.writeString(yard.resolve("claims/skerry.yaml"), """
                product: Skerry
                editions: [{id: box, source: The box, dated: 2025}]
                claims: [{id: one, edition: box, quote: "As good.", stated: {quantity: figure, %s}}]
                """.formatted(stated));
        return FolderContents.read(yard)
                .judged(Scope.all(), 1000)
                .products()
                .get(0)
                .claims()
                .get(0)
                .plain()
                .orElseThrow();
    }

    @Test
    void theFirstLevelLessTheSecond() throws Exception {
        Judgement shift = judged("of: battery life, between: {level: [90 dB SPL, 60 dB SPL]}, limit: at most 1 h");
        assertThat(shift.value()).hasValue(-5);
        assertThat(shift.cells()).hasSize(1);
    }

    @Test
    void aSoundUnderWhichNothingWasReadIsUntested() throws Exception {
        assertThat(judged("of: battery life, between: {stimulus: [pink noise, music]}, limit: at most 1 h")
                        .verdict())
                .isEqualTo(Verdict.UNTESTED);
        assertThat(judged("of: hum, between: {level: [90 dB SPL, 60 dB SPL]}, limit: at most 1 mV")
                        .verdict())
                .isEqualTo(Verdict.UNTESTED);
    }

    @Test
    void toNothingThereIsNoRatio() throws Exception {
        Judgement none = judged("of: hum, between: {unit: [SN-1, SN-2]}, compared by: ratio, limit: at most 2");
        assertThat(none.verdict()).isEqualTo(Verdict.UNTESTED);
        assertThat(none.reason().orElseThrow()).contains("held against nothing (0)");
    }

    @Test
    void aFigureThatWasNeverReadIsNamedWithTheNearest() throws Exception {
        assertThat(judged("of: batery life, limit: at least 12 h").notes())
                .containsExactly("nothing was measured under figure 'batery life' (did you mean 'battery life'?)");
    }
}
