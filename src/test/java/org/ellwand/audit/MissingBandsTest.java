package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;

import org.ellwand.acoustics.Resolution;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.SharedBy;
import org.ellwand.words.Remark;
import org.junit.jupiter.api.Test;

/** 30 dB were taken off at 1 and 2 kHz; 4 kHz was never measured. */
class MissingBandsTest {
    private static final String MISSING = "missing bands: 4000 Hz";

    private static final Session SESSION = new Bench("crew-01", Resolution.OCTAVE)
            .cause("insertion", 1, SharedBy.INSERTION, false)
            .cause("reading", 0.5, SharedBy.READING, true)
            .reading("device=open ear, stimulus=n94", 1000, 80, 80)
            .reading("device=Skerry, stimulus=n94, insertion=1", 1000, 50, 50)
            .session();

    private static Judgement judge(String statisticAndLimit) {
        return Bench.judge(
                "quantity: attenuation, level: 94 dB SPL, bands: 1 kHz to 4 kHz, " + statisticAndLimit, SESSION);
    }

    @Test
    void everyBandIsNotShownByTwo() {
        Judgement judged = judge("statistic: every band, limit: at least 15 dB");
        assertThat(judged.verdict()).isEqualTo(Verdict.MARGINAL);
        assertThat(judged.reasons()).extracting(Remark::text).containsExactly(MISSING);
        assertThat(judged.notes()).doesNotContain(MISSING);
    }

    @Test
    void oneBandRefutesEveryBandAndTheRowStillNamesTheMissingOne() {
        Judgement judged = judge("statistic: every band, limit: at least 45 dB");
        assertThat(judged.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(judged.notes()).contains(MISSING);
    }

    @Test
    void oneBandShowsTheHighestAndNoneRefutesIt() {
        assertThat(judge("statistic: highest, limit: at least 15 dB").verdict()).isEqualTo(Verdict.PASS);
        assertThat(judge("statistic: highest, limit: at least 45 dB").verdict()).isEqualTo(Verdict.MARGINAL);
    }

    @Test
    void aMeanIsAtMostMarginal() {
        assertThat(judge("statistic: mean, limit: at least 15 dB").verdict()).isEqualTo(Verdict.MARGINAL);
        assertThat(judge("statistic: mean, limit: at least 45 dB").verdict()).isEqualTo(Verdict.MARGINAL);
    }
}
