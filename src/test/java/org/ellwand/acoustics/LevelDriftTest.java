package org.ellwand.acoustics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class LevelDriftTest {
    private static double db(double[] timeS, double[] levelDb) {
        return LevelDrift.db(new LevelTrace(timeS, levelDb)).value().orElseThrow();
    }

    /** A line of 0.1 dB a second over 600 s: the middles of the fifths lie 480 s apart. */
    @Test
    void ofALineIsFourFifthsOfItsRise() {
        double[] timeS = IntStream.rangeClosed(0, 600).mapToDouble(i -> 30 + i).toArray();
        double[] rising =
                IntStream.rangeClosed(0, 600).mapToDouble(i -> 80 + 0.1 * i).toArray();
        double[] falling =
                IntStream.rangeClosed(0, 600).mapToDouble(i -> 80 - 0.1 * i).toArray();
        assertThat(db(timeS, rising)).isCloseTo(48, within(1e-9));
        assertThat(db(timeS, falling)).isCloseTo(-48, within(1e-9));
    }

    @Test
    void lineUnderUnevenSamples() {
        double[] timeS = {0, 0.1, 0.2, 0.4, 1.7, 5, 8.1, 9.9, 9.95, 10};
        double[] levelDb = IntStream.range(0, timeS.length)
                .mapToDouble(i -> 70 + 2 * timeS[i])
                .toArray();
        assertThat(db(timeS, levelDb)).isCloseTo(16, within(1e-9));
    }

    @Test
    void steadyIsZeroAndTheMiddleDoesNotCount() {
        double[] timeS = IntStream.rangeClosed(0, 10).mapToDouble(i -> i).toArray();
        assertThat(db(timeS, new double[] {80, 80, 80, 95, 95, 95, 95, 80, 80, 80, 80}))
                .isZero();
    }

    @Test
    void aMeanNeedsSamplesOfItsOwn() {
        LevelTrace few = new LevelTrace(new double[] {0, 3, 4, 5, 9, 10}, new double[] {80, 80, 80, 80, 80, 80});
        assertThat(LevelDrift.db(few).reason()).contains(NoNumber.TOO_FEW_SAMPLES);
        LevelTrace one = new LevelTrace(new double[] {0}, new double[] {80});
        assertThat(LevelDrift.db(one).reason()).contains(NoNumber.TOO_FEW_SAMPLES);
    }
}
