package org.ellwand.scale;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.ellwand.audit.Audit;
import org.ellwand.audit.FolderContents;
import org.ellwand.audit.Judgement;
import org.ellwand.audit.Scope;
import org.ellwand.audit.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A lot whose second firmware takes 0.6 dB less off is found out, and the shift is sized. */
class LotDriftTest {
    private static final double DRIFT_DB = -0.6;
    private static final int UNITS = 60;

    private static final String CLAIMS = """
            product: Skerry Lot
            about: Earplugs of one production lot on an ear simulator (invented)
            decision: {confidence: 95 %}
            assumed: {bands: 125 Hz to 8 kHz, level: 90 to 100 dB SPL, fit: all, statistic: mean, units: mean}
            editions:
              - {id: notes, source: Release notes, dated: 2026-05-04}
            claims:
              - id: same
                edition: notes
                quote: "2.1 takes as much off as 2.0."
                stated: {quantity: attenuation, setting: flood, between: {firmware: ["2.1", "2.0"]}, limit: 0 dB}
                assumed: {tolerance: 0.3 dB}
            """;

    @TempDir
    private Path folder;

    @Test
    void oneFirmwareHeldAgainstTheOtherOnTheSameUnits() throws Exception {
        LotFolder.write(folder, CLAIMS, List.of(new Lot("2.0", 1, UNITS, 0, 1), new Lot("2.1", 1, UNITS, DRIFT_DB, 2)));
        Audit audit = FolderContents.read(folder).judged(Scope.all(), 1000);
        Judgement same = audit.products().get(0).claims().get(0).plain().orElseThrow();
        assertThat(same.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(same.value().orElseThrow()).isCloseTo(DRIFT_DB, within(2 * u(same)));
        assertThat(u(same)).isLessThan(0.5);
    }

    private static double u(Judgement judgement) {
        return judgement.standardUncertainty().orElseThrow();
    }
}
