package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;

import org.ellwand.check.TraceChecksTest;
import org.ellwand.measurement.Session;
import org.junit.jupiter.api.Test;

/** What faults of traces and harmonics leave of verdicts. */
class TraceDoubtsTest {
    private static Verdict time(Session session, String limit) {
        return Bench.judge("quantity: attack time, setting: flood, within: 3 dB, limit: " + limit, session)
                .verdict();
    }

    /** It reads low: what fails fails, and what passes may have been longer. The model takes 38 ms. */
    @Test
    void aTraceThatEndsTooSoonUndoesAPassAlone() {
        assertThat(time(TraceChecksTest.tooShort(), "at most 100 ms")).isEqualTo(Verdict.MARGINAL);
        assertThat(time(TraceChecksTest.tooShort(), "at most 20 ms")).isEqualTo(Verdict.FAIL);
    }

    /** Samples lie 10 ms apart: the time is defined on the straight lines between them, and stays what it is. */
    @Test
    void coarseSamplesAreSaidAndUndoNothing() {
        assertThat(time(TraceChecksTest.coarse(), "at most 50 ms")).isEqualTo(Verdict.PASS);
        assertThat(time(TraceChecksTest.coarse(), "at most 12 ms")).isEqualTo(Verdict.PASS);
        assertThat(time(TraceChecksTest.coarse(), "at least 50 ms")).isEqualTo(Verdict.FAIL);
    }

    /** 0.47 % as read, and noise for the most part: it may be less. */
    @Test
    void harmonicsInNoiseUndoAFailAlone() {
        String of = "quantity: harmonic distortion, setting: flood, harmonics: 2 to 5, limit: ";
        assertThat(Bench.judge(of + "at most 0.2 %", TraceChecksTest.inNoise()).verdict())
                .isEqualTo(Verdict.MARGINAL);
        assertThat(Bench.judge(of + "at most 1 %", TraceChecksTest.inNoise()).verdict())
                .isEqualTo(Verdict.PASS);
    }
}
