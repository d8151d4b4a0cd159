package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.ellwand.acoustics.Bound;
import org.ellwand.acoustics.Resolution;
import org.ellwand.amount.Interval;
import org.ellwand.amount.Unit;
import org.ellwand.measurement.SharedBy;
import org.ellwand.statistics.NormalErrors;
import org.ellwand.words.Measure;
import org.ellwand.words.Remark;
import org.junit.jupiter.api.Test;

/** A value 1.5 u below the least that was claimed, all of its uncertainty from three insertions: Φ(−1.5) = 0.067. */
class SettlingTest {
    private static final Interval LIMIT = Interval.atLeast(20, Unit.DB);

    private static Remark reason(int points) {
        Points.One point = new Points.One(
                0,
                0,
                1,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                18.5,
                new NormalErrors(1),
                false,
                Bound.MEASURED);
        return new Settling(LIMIT, 0.95, points).of(point, 1, 3);
    }

    /** With four insertions u = √(3/4): Φ(−1.732) = 0.042. */
    @Test
    void oneMoreInsertionSettlesOnePoint() {
        assertThat(reason(1).text())
                .isEqualTo("too few insertions: were the value to stay, 4 insertions instead of 3 would settle it");
    }

    /** The worst of twenty is called false at 0.05/20 = 0.0025, z = 2.807: n = 3 · (2.807/1.5)² = 10.5, so eleven. */
    @Test
    void theWorstOfManyPointsTakesMore() {
        assertThat(reason(20).text())
                .isEqualTo("too few insertions: were the value to stay, 11 insertions instead of 3 would settle it");
    }

    private static Remark of(Interval limit, double value, double u, double insertionPart, int insertions) {
        Points.One point = new Points.One(
                0,
                0,
                1,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                value,
                new NormalErrors(u),
                false,
                Bound.MEASURED);
        return new Settling(limit, 0.95).of(point, insertionPart, insertions);
    }

    /** 1 dB to either side needs u of at most 1/1.959964 = 0.5102 dB: even a value in the middle would not pass. */
    @Test
    void twoEndsMayBeTooNearForAnyValue() {
        Interval limit = Interval.of(19, 21, Unit.DB);
        Remark tooWide = of(limit, 20, 0.5103, 0, 1);
        assertThat(tooWide.key()).isEqualTo("too-wide");
        assertThat(((Measure) tooWide.figures().get("needed")).value()).isCloseTo(0.510213, within(1e-6));
        assertThat(of(limit, 20.9, 0.5102, 0, 1).key()).isEqualTo("on-the-limit");
        assertThat(of(LIMIT, 20, 50, 0, 1).key()).isEqualTo("on-the-limit");
    }

    /** 1.644854 · √(3/20) = 0.6370, and √(3/19) would take 0.6536: the twentieth is the last that is thought of. */
    @Test
    void noMoreThanTwentyInsertionsAreThoughtOf() {
        Remark twenty = of(LIMIT, 19.362, 1, 1, 3);
        assertThat(twenty.key()).isEqualTo("too-few-insertions");
        assertThat(twenty.text()).contains("20 insertions instead of 3");
        assertThat(of(LIMIT, 19.364, 1, 1, 3).key()).isEqualTo("on-the-limit-however-many");
        assertThat(of(LIMIT, 20.638, 1, 1, 3).text()).contains("20 insertions instead of 3");
    }

    /** Of u² = 1 a part of 0.36 is divided: what is left at 20 insertions is √(0.64 + 0.36 · 3/20) = 0.8331 dB, 1.3703 dB to be settled. */
    @Test
    void onlyThePartOfTheInsertionsIsDivided() {
        assertThat(of(LIMIT, 18.631, 1, 0.6, 3).key()).isEqualTo("on-the-limit-however-many");
        assertThat(of(LIMIT, 18.629, 1, 0.6, 3).text()).contains("20 insertions instead of 3");
    }

    /** Beyond the upper end, and between two ends. */
    @Test
    void bothEndsAreLookedAt() {
        assertThat(of(Interval.atMost(20, Unit.DB), 21.5, 1, 1, 3).text()).contains("4 insertions instead of 3");
        assertThat(of(Interval.of(10, 20, Unit.DB), 21.5, 1, 1, 3).text()).contains("4 insertions instead of 3");
        assertThat(of(Interval.of(10, 20, Unit.DB), 18.5, 1, 1, 3).text()).contains("4 insertions instead of 3");
        assertThat(of(Interval.of(10, 20, Unit.DB), 8.5, 1, 1, 3).text()).contains("4 insertions instead of 3");
    }

    /** u = 2 dB, all of it from three insertions: 2 · 1.644854 · √(3/20) = 1.2741 dB, and with nineteen 1.3072 dB. */
    @Test
    void aLargerUncertaintyIsDividedTheSame() {
        assertThat(of(LIMIT, 18.725, 2, 2, 3).text()).contains("20 insertions instead of 3");
        assertThat(of(LIMIT, 18.727, 2, 2, 3).key()).isEqualTo("on-the-limit-however-many");
    }

    /**
     * Three insertions 1.036 dB apart of which nothing is declared: 0.43 dB inside the limit, the t of 20 has 1.729 · 1.036/√20 = 0.401 dB and
     * that of 18 1.740 · 1.036/√18 = 0.425 dB; of 17 it is 1.746 · 1.036/√17 = 0.439 dB (table of Student's t).
     */
    @Test
    void whereTheScatterIsSeenTheJudgesTSettlesIt() {
        Bench bench = new Bench("yard", Resolution.OCTAVE)
                .cause("reading", 1e-6, SharedBy.READING, true)
                .openEar("take=1", 80)
                .worn("insertion=1", 80 - 12.43 - 1.036)
                .worn("insertion=2", 80 - 12.43)
                .worn("insertion=3", 80 - 12.43 + 1.036);
        Judgement judgement = Bench.judge(
                "quantity: attenuation, level: 94 dB SPL, bands: 1 kHz, statistic: mean, limit: at least 12 dB",
                bench.session());
        assertThat(judgement.reason().orElseThrow()).contains("18 insertions instead of 3 would settle it");
    }
}
