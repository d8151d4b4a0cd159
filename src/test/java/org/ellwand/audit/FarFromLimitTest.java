package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.ellwand.acoustics.Resolution;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.SharedBy;
import org.junit.jupiter.api.Test;

/** What is told of numbers so far from a limit, or of so few bands, that a careless hand would tell nonsense; levels are invented. */
class FarFromLimitTest {
    private static final String RULE = "quantity: attenuation, level: 94 dB SPL, bands: all, ";

    /** 10, 16 and 22 dB in three bands, all with u = √(0.3² + 0.3²) = 0.42 dB. */
    private static Bench steps() {
        return new Bench("yard", Resolution.OCTAVE)
                .cause("insertion", 0, SharedBy.INSERTION, false)
                .cause("reading", 0.3, SharedBy.READING, true)
                .reading("device=open ear, stimulus=n94", 500, 80, 80, 80)
                .reading("device=Skerry, stimulus=n94, insertion=1", 500, 70, 64, 58);
    }

    @Test
    void theWorstOfManyThatFailByFarIsTold() {
        Judgement fails = Bench.judge(RULE + "statistic: every band, limit: at least 40 dB", steps().session());
        assertThat(fails.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(fails.value()).hasValue(10);
        assertThat(fails.probability().orElseThrow()).isBetween(0.0, 1e-300);
        Judgement too = Bench.judge(RULE + "statistic: every band, limit: at most 3 dB", steps().session());
        assertThat(too.value()).hasValue(22);
    }

    /** The highest band holds it with the largest probability, even where others hold it as good as surely. */
    @Test
    void theBestOfManyThatHoldByFarIsTold() {
        Judgement holds = Bench.judge(RULE + "statistic: highest, limit: at least 3 dB", steps().session());
        assertThat(holds.verdict()).isEqualTo(Verdict.PASS);
        assertThat(holds.value()).hasValue(22);
        assertThat(holds.lower().orElseThrow()).isCloseTo(22 - 1.96 * 0.3 * Math.sqrt(2), within(0.01));
    }

    @Test
    void oneBandHasNoSlopeAndNoSpread() {
        for (String statistic : new String[] {"slope, limit: at most 1 dB/octave", "spread, limit: at most 1 dB"}) {
            Judgement one = Bench.judge(
                    RULE.replace("bands: all", "bands: 1 kHz") + "statistic: " + statistic, steps().session());
            assertThat(one.verdict()).isEqualTo(Verdict.UNTESTED);
            assertThat(one.reason().orElseThrow()).startsWith("one band alone has no slope and no spread");
        }
    }

    /** A sound of 7300 dB is a slip of the pen, and no reason to end. */
    @Test
    void levelsBeyondAllPowersAreSummedBesideTheHighest() {
        Session session = new Bench("yard", Resolution.OCTAVE)
                .cause("insertion", 0, SharedBy.INSERTION, false)
                .cause("reading", 0.3, SharedBy.READING, true)
                .reading("device=open ear, stimulus=n94", 500, 80, 7300)
                .reading("device=Skerry, stimulus=n94, insertion=1", 500, 70, 7290)
                .session();
        Judgement sum = Bench.judge(RULE + "statistic: overall, weighting: Z, limit: at least 3 dB", session);
        assertThat(sum.value().orElseThrow()).isCloseTo(10, within(1e-9));
    }

    @Test
    void ofSeveralNamesOneThatWasNotMeasuredHoldsAPassBack() {
        String settings = RULE + "statistic: mean, limit: at least 3 dB, setting: ";
        Session session = new Bench("yard", Resolution.OCTAVE)
                .cause("insertion", 0, SharedBy.INSERTION, false)
                .cause("reading", 0.3, SharedBy.READING, true)
                .reading("device=open ear, stimulus=n94", 1000, 80)
                .reading("device=Skerry, setting=flood, stimulus=n94, insertion=1", 1000, 64)
                .session();
        assertThat(Bench.judge(settings + "flood", session).verdict()).isEqualTo(Verdict.PASS);
        Judgement both = Bench.judge(settings + "[flood, ebb]", session);
        assertThat(both.verdict()).isEqualTo(Verdict.MARGINAL);
        assertThat(both.reason())
                .contains("nothing that serves was measured under setting 'ebb', which the rule names");
    }
}
