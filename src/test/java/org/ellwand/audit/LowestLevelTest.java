package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.ellwand.claim.ClaimsReader;
import org.ellwand.input.InputException;
import org.ellwand.measurement.SessionReader;
import org.ellwand.quantity.Quantities;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Equivalent input noise takes the gain under the sound of the lowest level, and dB SPL and dB(A) are never compared. */
class LowestLevelTest {
    @TempDir
    Path temp;

    /**
     * @param soft level of the softer sound, under which the product gains 10 dB
     * @param loud level of the louder one, under which it gains nothing
     */
    private Judgement judged(String soft, String loud) throws IOException, InputException {
        Files.createDirectories(temp.resolve("claims"));
        Files.createDirectories(temp.resolve("measurements"));
        Files.writeString(temp.resolve("claims/skerry.yaml"), """
                product: Skerry
                editions: [{id: box, source: The box, dated: 2025}]
                claims:
                  - id: hiss
                    edition: box
                    quote: "Hardly a hiss."
                    stated: {quantity: equivalent input noise, limit: at most 40 dB(A)}
                    assumed: {bands: 1 kHz to 2 kHz}
                """);
        Files.writeString(temp.resolve("measurements/yard.yaml"), """
                session: yard
                product: Skerry
                ear: crew-01-left
                resolution: octave
                levels in: dB SPL
                stimuli:
                  hush: {kind: quiet}
                  soft: {kind: pink noise, level: %s}
                  loud: {kind: pink noise, level: %s}
                uncertainty:
                  - {cause: insertion, size: 0.5 dB, shared by: insertion}
                  - {cause: reading, size: 0.3 dB, shared by: reading}
                data: [{file: yard.csv, layout: rows}]
                """.formatted(soft, loud));
        Files.writeString(temp.resolve("measurements/yard.csv"), """
                device,stimulus,insertion,frequency,level
                open ear,soft,,1000,50
                open ear,soft,,2000,50
                open ear,loud,,1000,80
                open ear,loud,,2000,80
                ,soft,1,1000,60
                ,soft,1,2000,60
                ,loud,1,1000,80
                ,loud,1,2000,80
                ,hush,1,1000,35
                ,hush,1,2000,35
                """);
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

    /** 35 dB less 10 dB of gain in each of two octaves, weighted 0 and +1.2 dB: 28.6 dB(A). */
    @Test
    void likeIsComparedWithLike() throws Exception {
        assertThat(judged("60 dB SPL", "90 dB SPL").value().orElseThrow())
                .isCloseTo(28.6, org.assertj.core.api.Assertions.within(0.1));
        assertThat(judged("[60 dB SPL, 58 dB(A)]", "89 dB(A)").value().orElseThrow())
                .isCloseTo(28.6, org.assertj.core.api.Assertions.within(0.1));
    }

    @Test
    void levelsOfDifferentWeightingsAreRefused() throws Exception {
        Judgement judged = judged("60 dB SPL", "50 dB(A)");
        assertThat(judged.verdict()).isEqualTo(Verdict.UNTESTED);
        assertThat(judged.reason())
                .hasValue("the sound of the lowest level cannot be told in session yard: loud (dB(A)), soft (dB SPL)"
                        + " state no level in one unit; give them one in common");
    }
}
