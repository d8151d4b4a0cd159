package org.ellwand.scale;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.ellwand.audit.FolderContents;
import org.ellwand.audit.Judgement;
import org.ellwand.audit.Scope;
import org.ellwand.audit.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The claims about a golden unit that measurements/README.md gives, over weeks in which the line drifts. */
class GoldenUnitTest {
    private static final int WEEKS = 8;
    private static final double DRIFT_DB_PER_WEEK = 0.6;

    private static final String CLAIMS = """
            product: Skerry Lot
            about: One earplug that is measured every week (invented)
            decision: {confidence: 95 %}
            assumed: {bands: 125 Hz to 8 kHz, level: 90 to 100 dB SPL, fit: all, firmware: all, statistic: mean}
            editions:
              - {id: line, source: Control of the line, dated: 2026-05-04}
            claims:
              - id: every-week
                edition: line
                quote: "The golden unit stays where it was."
                stated: {quantity: attenuation, setting: flood, unit: SN-00001, limit: 17.3 dB}
                assumed: {tolerance: 1.5 dB}
              - id: last-against-first
                edition: line
                quote: "The golden unit stays where it was."
                stated: {quantity: attenuation, setting: flood, unit: SN-00001, between: {session: [lot-8, lot-1]}, limit: 0 dB}
                assumed: {tolerance: 1 dB}
            """;

    @TempDir
    private Path folder;

    @Test
    void aLineThatDriftsIsFoundOutAndTheDriftSized() throws Exception {
        List<Judgement> judged = judged(DRIFT_DB_PER_WEEK);
        assertThat(judged).extracting(Judgement::verdict).containsOnly(Verdict.FAIL);
        assertThat(judged.get(0).cells()).hasSize(WEEKS);
        Judgement drift = judged.get(1);
        double u = drift.standardUncertainty().orElseThrow();
        assertThat(drift.value().orElseThrow()).isCloseTo((WEEKS - 1) * DRIFT_DB_PER_WEEK, within(2 * u));
    }

    @Test
    void aLineThatStaysIsNotCalledDrifting() throws Exception {
        assertThat(judged(0)).extracting(Judgement::verdict).doesNotContain(Verdict.FAIL);
    }

    private List<Judgement> judged(double driftDb) throws Exception {
        List<Lot> weeks = IntStream.range(0, WEEKS)
                .mapToObj(week -> new Lot("2.0", 1, 1, week * driftDb, week + 1))
                .toList();
        LotFolder.write(folder, CLAIMS, weeks);
        return FolderContents.read(folder).judged(Scope.all(), 1000).products().get(0).claims().stream()
                .map(claim -> claim.plain().orElseThrow())
                .toList();
    }
}
