package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import java.util.stream.IntStream;
import org.ellwand.acoustics.Resolution;
import org.ellwand.measurement.Session;
import org.junit.jupiter.api.Test;

/** The promise about wrong verdicts, where levels are written in tenths of a decibel and nothing but two insertions tells their errors. */
class RoundedPromiseTest {
    private static final int SESSIONS = 200;
    private static final double TRUE_DB = 50.03;

    /** Nineteen bands, two insertions 0.5 dB apart (standard deviation). */
    private static Session session(Random random) {
        Bench bench = new Bench("yard", Resolution.THIRD_OCTAVE);
        for (int i = 1; i <= 2; i++) {
            double[] levelsDb = IntStream.range(0, 19)
                    .mapToDouble(band -> Math.round(10 * (TRUE_DB + 0.5 * random.nextGaussian())) / 10.0)
                    .toArray();
            bench.reading("device=Skerry, stimulus=n94, insertion=" + i, 125, levelsDb);
        }
        return bench.session();
    }

    private static long count(String statistic, Verdict verdict) {
        Random random = new Random(20);
        return IntStream.range(0, SESSIONS)
                .filter(i -> Bench.judge(
                                        "quantity: output level, referred to: eardrum, level: 94 dB SPL, bands: 125 Hz to 8 kHz,"
                                                + " statistic: " + statistic + ", limit: at least " + TRUE_DB
                                                + " dB SPL",
                                        session(random))
                                .verdict()
                        == verdict)
                .count();
    }

    /** The truth lies on the limit in every band: at most one session in twenty may fail. */
    @Test
    void aTrueClaimFailsOnceInTwentyAtMost() {
        assertThat(count("every band", Verdict.FAIL)).isLessThanOrEqualTo(SESSIONS / 20);
    }

    /** The mirror image: no band lies above the limit by anything. */
    @Test
    void theBestOfManyPassesOnceInTwentyAtMost() {
        assertThat(count("highest", Verdict.PASS)).isLessThanOrEqualTo(SESSIONS / 20);
    }
}
