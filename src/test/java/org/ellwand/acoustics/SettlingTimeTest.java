package org.ellwand.acoustics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SettlingTimeTest {
    private static final double STEP_S = 0.2;

    /** Samples at the given times; before the step the level is 55 dB. */
    private static LevelTrace trace(double[] timeS, DoubleUnaryOperator afterStep) {
        double[] levelDb = new double[timeS.length];
        for (int i = 0; i < timeS.length; i++) {
            levelDb[i] = timeS[i] < STEP_S ? 55 : afterStep.applyAsDouble(timeS[i] - STEP_S);
        }
        return new LevelTrace(timeS, levelDb);
    }

    private static double[] every(double spacingS, double endS) {
        int samples = (int) Math.round(endS / spacingS) + 1;
        return IntStream.range(0, samples).mapToDouble(i -> i * spacingS).toArray();
    }

    private static double seconds(LevelTrace trace, double withinDb) {
        return SettlingTime.seconds(trace, STEP_S, withinDb).value().orElseThrow();
    }

    private static NoNumber reason(LevelTrace trace, double withinDb) {
        return SettlingTime.seconds(trace, STEP_S, withinDb).reason().orElseThrow();
    }

    /**
     * τ ln(Δ / within), computed: Δ from above and from below in dB, τ and within as for S3.22 attack and release and
     * IEC 60118-2, time in ms. The tolerance, 1 µs, is that of straight lines 0.1 ms long.
     */
    @ParameterizedTest
    @CsvSource({
        "20, 10, 3, 18.971", "20, 100, 4, 160.944", "20, 100, 2, 230.259",
        "-20, 10, 3, 18.971", "-20, 100, 4, 160.944", "-20, 100, 2, 230.259"
    })
    void exponentialApproach(double deltaDb, double tauMs, double withinDb, double expectedMs) {
        LevelTrace trace = trace(every(1e-4, 3), t -> 80 + deltaDb * Math.exp(-t * 1000 / tauMs));
        double exactMs = tauMs * Math.log(20 / withinDb);
        assertThat(exactMs).isCloseTo(expectedMs, within(5e-4));
        assertThat(seconds(trace, withinDb) * 1000).isCloseTo(exactMs, within(1e-3));
    }

    /** Samples 0.1 ms apart at first, each distance 15 % longer than the last from 0.4 s on. */
    @Test
    void unevenSamples() {
        double[] fine = every(1e-4, 0.4);
        double[] timeS = new double[fine.length + 60];
        System.arraycopy(fine, 0, timeS, 0, fine.length);
        double spacingS = 1e-4;
        for (int i = fine.length; i < timeS.length; i++) {
            timeS[i] = timeS[i - 1] + spacingS;
            spacingS *= 1.15;
        }
        LevelTrace trace = trace(timeS, t -> 80 + 20 * Math.exp(-t / 0.01));
        assertThat(seconds(trace, 3)).isCloseTo(0.018971, within(1e-6));
    }

    /** From 100 to 80 dB within 2 s of straight line, steady after: ± 3 dB is reached at 1.7 s. */
    @Test
    void straightLineBetweenFarSamples() {
        LevelTrace trace = new LevelTrace(
                new double[] {0, 0.1, 0.2, 2.2, 9, 10, 11, 12}, new double[] {55, 55, 100, 80, 80, 80, 80, 80});
        assertThat(seconds(trace, 3)).isCloseTo(1.7, within(1e-12));
        // Behind a step between two samples the line begins halfway: 77.5 dB, and leaves until 100 dB are left behind.
        assertThat(SettlingTime.seconds(trace, 0.15, 3).value().orElseThrow()).isCloseTo(1.75, within(1e-12));
    }

    /** 80 + 20 e^(−t/τ) cos(2πt / 40 ms): of its returns the last counts, found here by the finest search. */
    @Test
    void overshootRestartsTheClock() {
        DoubleUnaryOperator ringing = t -> 80 + 20 * Math.exp(-t / 0.05) * Math.cos(2 * Math.PI * t / 0.04);
        LevelTrace trace = trace(every(1e-4, 2), ringing);
        double last = 0;
        double first = Double.NaN;
        for (double t = 0; t < 1; t += 1e-6) {
            boolean outside = Math.abs(ringing.applyAsDouble(t) - 80) > 3;
            first = !outside && Double.isNaN(first) ? t : first;
            last = outside ? t : last;
        }
        assertThat(first).isLessThan(0.01);
        assertThat(last).isGreaterThan(0.07);
        assertThat(seconds(trace, 3)).isCloseTo(last, within(1e-5));
    }

    /** Straight lines: within from 0.95 s on, out at 2 s, below 77 dB until it rises through it at 3.4 s. */
    @Test
    void aCrossingBackRestartsTheClock() {
        LevelTrace trace = new LevelTrace(
                new double[] {0.2, 1.2, 2, 3, 4, 20, 21, 22, 24, 25},
                new double[] {92, 80, 80, 75, 80, 80, 80, 80, 80, 80});
        assertThat(seconds(trace, 3)).isCloseTo(3.4 - STEP_S, within(1e-12));
        assertThat(seconds(trace, 6)).isCloseTo(0.5, within(1e-12));
    }

    @Test
    void withinFromTheStepOnIsNoTime() {
        LevelTrace steady = trace(every(1e-3, 2), t -> 55);
        assertThat(seconds(steady, 1)).isZero();
        double[] timeS = {0.2, 1, 2, 3, 9, 10};
        LevelTrace onTheEdge = new LevelTrace(timeS, new double[] {83, 83, 80, 80, 80, 80});
        assertThat(seconds(onTheEdge, 3)).isZero();
        assertThat(seconds(onTheEdge, 2.999)).isCloseTo(0.8 + 0.001 / 3, within(1e-9));
    }

    @Test
    void endlessDriftHasNotSettled() {
        LevelTrace drifting = trace(every(1e-3, 10.2), t -> 100 - 4 * t);
        // The last fifth runs over 8 dB around its mean.
        assertThat(reason(drifting, 3)).isEqualTo(NoNumber.NOT_SETTLED);
        assertThat(seconds(drifting, 5)).isCloseTo(7.75, within(1e-9));
    }

    @Test
    void aSpikeInTheLastFifthIsNoTime() {
        double[] timeS = every(1e-3, 2.2);
        LevelTrace spike = trace(timeS, t -> Math.abs(t - 1.9) < 2e-4 ? 70 : 80 + 20 * Math.exp(-t / 0.01));
        assertThat(reason(spike, 3)).isEqualTo(NoNumber.NOT_SETTLED);
        LevelTrace atTheEnd = trace(timeS, t -> t > 1.9995 ? 70 : 80);
        assertThat(reason(atTheEnd, 3)).isEqualTo(NoNumber.NOT_SETTLED);
    }

    /** The last fifth begins at 8.2 s; coming within there is too late, before it in time. */
    @Test
    void settlesBeforeTheLastFifthOrNotAtAll() {
        double[] timeS = every(1e-2, 10.2);
        assertThat(seconds(trace(timeS, t -> t < 7.995 ? 90 : 80), 3)).isCloseTo(7.997, within(1e-9));
        assertThat(reason(trace(timeS, t -> t < 8.005 ? 90 : 80), 3)).isEqualTo(NoNumber.NOT_SETTLED);
    }

    @Test
    void aMeanNeedsSamplesOfItsOwn() {
        LevelTrace bare = new LevelTrace(new double[] {0, 1.2, 2}, new double[] {55, 90, 88});
        assertThat(reason(bare, 3)).isEqualTo(NoNumber.TOO_FEW_SAMPLES);
        assertThat(NoNumber.TOO_FEW_SAMPLES.text()).isEqualTo("fewer than two samples lie in a fifth of the trace");
        assertThat(NoNumber.NOT_SETTLED.text())
                .isEqualTo("the level does not settle before the last fifth of the trace begins");
    }

    @Test
    void refusesWhatIsNoQuestion() {
        LevelTrace trace = trace(every(1e-2, 1), t -> 80);
        assertThatThrownBy(() -> SettlingTime.seconds(trace, 0.2, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("a distance is above 0 dB, not 0.0");
        assertThatThrownBy(() -> SettlingTime.seconds(trace, 1, 3))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("the step at 1.0 s lies outside the trace");
        assertThatThrownBy(() -> SettlingTime.seconds(trace, -0.1, 3))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("the step at -0.1 s lies outside the trace");
    }
}
