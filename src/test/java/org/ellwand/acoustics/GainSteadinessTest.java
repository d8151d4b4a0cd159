package org.ellwand.acoustics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class GainSteadinessTest {
    /** A programme of changing level, invented. */
    private static final DoubleUnaryOperator PROGRAMME = t -> 75 + 10 * Math.sin(2 * Math.PI * t / 0.7);

    private static LevelTrace trace(double startS, double spacingS, int samples, DoubleUnaryOperator levelDb) {
        double[] timeS = IntStream.range(0, samples)
                .mapToDouble(i -> startS + i * spacingS)
                .toArray();
        return new LevelTrace(
                timeS,
                IntStream.range(0, samples)
                        .mapToDouble(i -> levelDb.applyAsDouble(timeS[i]))
                        .toArray());
    }

    private static double percent(LevelTrace inPlace, LevelTrace openEar, double withinDb) {
        return GainSteadiness.percent(inPlace, openEar, withinDb).value().orElseThrow();
    }

    private static NoNumber reason(LevelTrace inPlace, LevelTrace openEar) {
        return GainSteadiness.percent(inPlace, openEar, 1).reason().orElseThrow();
    }

    @Test
    void aSteadyGainIsSteadyWhateverTheProgrammeDoes() {
        LevelTrace open = trace(0, 0.01, 1000, PROGRAMME);
        assertThat(percent(trace(0, 0.01, 1000, t -> PROGRAMME.applyAsDouble(t) - 20), open, 0.001))
                .isEqualTo(100);
    }

    /**
     * Open ear 80 dB throughout; in place 60 dB, but 70 dB in a quarter of the frames. By energy the level in place is
     * 60 + 10 lg(0.75 + 2.5) = 65.119 dB, so the gains −20 and −10 dB lie 5.119 and 4.881 dB from the long-term −14.881 dB.
     * The mean of the gains in dB would be −17.5, 2.5 and 7.5 dB from them.
     */
    @Test
    void theLongTermGainIsByEnergy() {
        LevelTrace open = trace(0, 0.125, 16, t -> 80);
        LevelTrace inPlace = trace(0, 0.125, 16, t -> t < 0.49 ? 70 : 60);
        assertThat(10 * Math.log10(0.75 + 2.5)).isCloseTo(5.1188, within(5e-5));
        assertThat(percent(inPlace, open, 4.88)).isZero();
        assertThat(percent(inPlace, open, 4.89)).isEqualTo(25);
        assertThat(percent(inPlace, open, 5.11)).isEqualTo(25);
        assertThat(percent(inPlace, open, 5.12)).isEqualTo(100);
    }

    /** One frame of 60 and 70 dB halves against 80 dB: 10 lg 5.5 = 7.404 dB above 60 dB by energy, 5 dB by level. */
    @Test
    void aFrameIsByEnergyToo() {
        LevelTrace open = trace(0, 0.0625, 32, t -> 80);
        LevelTrace inPlace = trace(0, 0.0625, 32, t -> t > 0.05 && t < 0.07 ? 70 : 60);
        double firstDb = 10 * Math.log10(5.5);
        double longTermDb = 10 * Math.log10((31 + 10) / 32.0);
        assertThat(percent(inPlace, open, firstDb - longTermDb - 1e-6)).isEqualTo(100 * 15 / 16.0);
        assertThat(percent(inPlace, open, firstDb - longTermDb)).isEqualTo(100);
    }

    /** Gains half 1 dB above, half 1 dB below: the long-term gain by energy is 10 lg cosh(ln 10 / 10) = 0.115 dB above. */
    @Test
    void theStatedDistanceIsStillWithin() {
        LevelTrace open = trace(0, 0.125, 16, t -> 80);
        LevelTrace inPlace = trace(0, 0.125, 16, t -> Math.round(t / 0.125) % 2 == 0 ? 61 : 59);
        double aboveDb = 10 * Math.log10(Math.cosh(Math.log(10) / 10));
        assertThat(percent(inPlace, open, 1 - aboveDb)).isEqualTo(50);
        assertThat(percent(inPlace, open, 1 - aboveDb - 1e-6)).isZero();
        assertThat(percent(inPlace, open, 1 + aboveDb)).isEqualTo(100);
    }

    /** 8 frames of 10 ms samples: 100 of them, of which 99 distances of 10 ms are seen. */
    @Test
    void eightFramesAreTheFewest() {
        LevelTrace open = trace(0, 0.01, 100, PROGRAMME);
        assertThat(percent(open, open, 1)).isEqualTo(100);
        LevelTrace shorter = trace(0, 0.01, 99, PROGRAMME);
        assertThat(reason(shorter, open)).isEqualTo(NoNumber.TOO_FEW_FRAMES);
        assertThat(reason(trace(0, 1, 1, t -> 60), open)).isEqualTo(NoNumber.TOO_FEW_FRAMES);
        assertThat(NoNumber.TOO_FEW_FRAMES.text())
                .isEqualTo("the traces have fewer than eight frames of 125 ms in common");
    }

    /** What is left over at the end is no frame: 20 dB off there, and still steady. */
    @Test
    void theRestBehindTheLastFrameIsLeftOut() {
        LevelTrace open = trace(0, 0.01, 106, t -> 80);
        LevelTrace inPlace = trace(0, 0.01, 106, t -> t > 0.995 ? 80 : 60);
        assertThat(percent(inPlace, open, 0.1)).isEqualTo(100);
    }

    @Test
    void tracesAreCutToWhatTheyShare() {
        LevelTrace open = trace(0, 0.01, 700, PROGRAMME);
        LevelTrace inPlace = trace(1.23, 0.01, 1000, t -> PROGRAMME.applyAsDouble(t) - 20);
        assertThat(percent(inPlace, open, 0.001)).isEqualTo(100);
        assertThat(percent(open, inPlace, 0.001)).isEqualTo(100);
    }

    @Test
    void timesMayPartByATenthOfAMillisecond() {
        LevelTrace open = trace(0, 0.01, 300, PROGRAMME);
        assertThat(percent(trace(0.0001, 0.01, 300, PROGRAMME), open, 1)).isEqualTo(100);
        assertThat(reason(trace(0.00011, 0.01, 300, PROGRAMME), open)).isEqualTo(NoNumber.CLOCKS_DIFFER);
        assertThat(reason(trace(0, 0.010001, 300, PROGRAMME), open)).isEqualTo(NoNumber.CLOCKS_DIFFER);
        assertThat(reason(trace(9, 0.01, 300, PROGRAMME), open)).isEqualTo(NoNumber.CLOCKS_DIFFER);
        assertThat(NoNumber.CLOCKS_DIFFER.text()).isEqualTo("the two traces are not sampled at the same times");
    }

    @Test
    void aSampleMissingInOneTraceIsAnotherClock() {
        LevelTrace open = trace(0, 0.125, 16, t -> 80);
        LevelTrace holed = trace(0, 0.125, 16, t -> 60);
        double[] timeS = IntStream.range(0, 15)
                .mapToDouble(i -> (i < 7 ? i : i + 1) * 0.125)
                .toArray();
        LevelTrace missing = new LevelTrace(timeS, new double[15]);
        assertThat(reason(missing, open)).isEqualTo(NoNumber.CLOCKS_DIFFER);
        assertThat(percent(holed, open, 1)).isEqualTo(100);
    }

    @Test
    void aFrameWithoutASampleIsAGap() {
        LevelTrace slow = trace(0, 0.25, 16, t -> 80);
        assertThat(reason(slow, slow)).isEqualTo(NoNumber.GAP);
        assertThat(NoNumber.GAP.text()).isEqualTo("a frame of 125 ms holds no sample");
    }

    @Test
    void refusesWhatIsNoDistance() {
        LevelTrace open = trace(0, 0.125, 16, t -> 80);
        assertThatThrownBy(() -> GainSteadiness.percent(open, open, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("a distance is above 0 dB, not 0.0");
    }
}
