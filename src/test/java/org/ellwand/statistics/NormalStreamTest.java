package org.ellwand.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class NormalStreamTest {
    private static final long SEED = Seeds.of("stream");

    @Test
    void allWaysOfDrawingGiveTheSameDraws() {
        NormalStream one = new NormalStream(SEED);
        double[] filled = new double[3];
        new NormalStream(SEED).fill(filled, 2);
        double[] added = {10, 10, 10};
        new NormalStream(SEED).addTo(added, 2, 0.5);
        for (int i = 0; i < 2; i++) {
            double draw = one.next();
            assertThat(filled[i]).isEqualTo(draw);
            assertThat(added[i]).isEqualTo(10 + 0.5 * draw);
        }
        assertThat(filled[2]).isZero();
        assertThat(added[2]).isEqualTo(10);
    }

    /** Sampling errors of 40 000 draws: 0.005 of the mean, 0.0035 of the deviation; five of each. */
    @Test
    void drawsAreStandardNormal() {
        double[] draws = new double[40_000];
        new NormalStream(SEED).fill(draws, draws.length);
        double sum = 0;
        double squares = 0;
        int below = 0;
        for (double draw : draws) {
            sum += draw;
            squares += draw * draw;
            below += draw <= 1 ? 1 : 0;
        }
        assertThat(sum / draws.length).isCloseTo(0, within(0.025));
        assertThat(Math.sqrt(squares / draws.length)).isCloseTo(1, within(0.018));
        assertThat((double) below / draws.length).isCloseTo(0.8413447, within(0.01));
    }
}
