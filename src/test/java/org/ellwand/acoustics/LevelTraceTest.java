package org.ellwand.acoustics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class LevelTraceTest {
    private static final LevelTrace TRACE = trace(new double[] {0, 1, 3}, 50, 60, 40);

    private static LevelTrace trace(double[] timeS, double... levelDb) {
        return new LevelTrace(timeS, levelDb);
    }

    @Test
    void isStraightBetweenItsSamples() {
        assertThat(TRACE.levelDbAt(0)).isEqualTo(50);
        assertThat(TRACE.levelDbAt(0.25)).isEqualTo(52.5);
        assertThat(TRACE.levelDbAt(1)).isEqualTo(60);
        assertThat(TRACE.levelDbAt(2.5)).isEqualTo(45);
        assertThat(TRACE.levelDbAt(3)).isEqualTo(40);
    }

    /** Areas by hand: 55 · 1 and 50 · 2, of the middle 57.5 · 0.5 and 55 · 1. */
    @Test
    void itsMeanIsByTimeAndCutAtTheEnds() {
        assertThat(TRACE.meanDb(0, 3)).isCloseTo(155 / 3.0, within(1e-12));
        assertThat(TRACE.meanDb(0.5, 2)).isCloseTo((57.5 * 0.5 + 55) / 1.5, within(1e-12));
        assertThat(TRACE.meanDb(1.5, 2)).isCloseTo(52.5, within(1e-12));
        assertThat(TRACE.meanDb(1, 3)).isCloseTo(50, within(1e-12));
    }

    /** The mean of the samples would be 68: the recorder was in a hurry while it was loud. */
    @Test
    void denseSamplesWeighNoMoreThanTheirTime() {
        LevelTrace uneven =
                trace(new double[] {0, 0.01, 0.02, 0.03, 0.04, 1, 2, 3, 4, 5}, 80, 80, 80, 80, 60, 60, 60, 60, 60, 60);
        assertThat(uneven.meanDb(0, 5)).isCloseTo(60 + (20 * 0.03 + 10 * 0.01) / 5, within(1e-12));
    }

    @Test
    void countsSamplesAtTheEndsToo() {
        assertThat(TRACE.samplesBetween(0, 3)).isEqualTo(3);
        assertThat(TRACE.samplesBetween(1, 1)).isEqualTo(1);
        assertThat(TRACE.samplesBetween(1.1, 2.9)).isZero();
    }

    @Test
    void keepsItsOwnNumbers() {
        double[] levels = {50, 60};
        LevelTrace kept = trace(new double[] {0, 1}, levels);
        levels[1] = 0;
        assertThat(kept.levelDbAt(1)).isEqualTo(60);
    }

    @Test
    void refusesWhatIsNoTrace() {
        assertThatThrownBy(() -> trace(new double[] {0, 1}, 50))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("2 times and 1 levels");
        assertThatThrownBy(() -> trace(new double[] {}))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("0 times and 0 levels");
        assertThatThrownBy(() -> trace(new double[] {0, 1, 1}, 50, 50, 50))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("the time does not rise at sample 2");
        assertThatThrownBy(() -> trace(new double[] {0, 1}, 50, Double.NaN))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("sample 1 is not finite");
        assertThatThrownBy(() -> TRACE.levelDbAt(3.5))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("3.5 s lies outside the trace");
        assertThatThrownBy(() -> TRACE.meanDb(2, 2))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("no time between 2.0 s and 2.0 s");
    }
}
