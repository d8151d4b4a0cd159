package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.ellwand.acoustics.Resolution;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.SharedBy;
import org.ellwand.quantity.Outcome;
import org.junit.jupiter.api.Test;

/**
 * Joint draws of causes that are shared in different ways against their covariance written out (JCGM 100:2008, 5.2.2):
 * 1e-2 relative, three sampling errors at most.
 */
class PropagationTest {
    private static final int TRIALS = 400_000;
    private static final double WITHIN = 1e-2;
    private static final double SESSION = 0.7;
    private static final double INSERTION = 1.2;
    private static final double TOGETHER = 0.6;
    private static final double READING = 0.5;
    private static final String WHERE = "level: 94 dB SPL, bands: 1 kHz to 1.6 kHz, statistic: every band, ";

    /** One open-ear take, three insertions, both settings in each. */
    private static final Session SESSION_OF_THREE = session();

    private static Session session() {
        Bench bench = new Bench("crew-01", Resolution.THIRD_OCTAVE)
                .cause("calibration", SESSION, SharedBy.SESSION, false)
                .cause("insertion", INSERTION, SharedBy.INSERTION, false)
                .cause("drift", TOGETHER, SharedBy.READING, false)
                .cause("noise", READING, SharedBy.READING, true)
                .reading("device=open ear, stimulus=n94", 1000, 80, 80, 80);
        for (int i = 1; i <= 3; i++) {
            bench.reading("device=Skerry, setting=flood, stimulus=n94, insertion=" + i, 1000, 60, 61, 62);
            bench.reading("device=Skerry, setting=ebb, stimulus=n94, insertion=" + i, 1000, 67, 68, 69);
        }
        return bench.session();
    }

    /** Attenuation: the session cancels; reading causes enter with the open ear whole and with each insertion's third. */
    @Test
    void attenuationOfOneSetting() {
        double readings = 1 + 1 / 3.0;
        double shared = INSERTION * INSERTION / 3 + TOGETHER * TOGETHER * readings;
        check("quantity: attenuation, setting: flood, limit: at least 15 dB, ", shared, READING * READING * readings);
    }

    /** Difference of settings: session, open ear and insertions cancel. */
    @Test
    void differenceOfTwoSettings() {
        double readings = 2 / 3.0;
        check(
                "quantity: attenuation, between: {setting: [flood, ebb]}, limit: 7 dB ± 1 dB, ",
                TOGETHER * TOGETHER * readings,
                READING * READING * readings);
    }

    /** Level in place: the session does not cancel, and no open ear enters. */
    @Test
    void levelInPlace() {
        double shared = SESSION * SESSION + INSERTION * INSERTION / 3 + TOGETHER * TOGETHER / 3;
        check(
                "quantity: output level, referred to: eardrum, setting: flood, limit: at most 85 dB SPL, ",
                shared,
                READING * READING / 3);
    }

    /**
     * The covariance of bands by linear draws, by the plain simulation and by effects.
     *
     * @param shared covariance of two bands
     * @param own what the variance of a band has besides
     */
    private static void check(String rule, double shared, double own) {
        Workings workings = Workings.of(rule + WHERE.strip().replaceAll(",$", ""), Outcome.CURVE, SESSION_OF_THREE);
        double[][] drawn = workings.draws(TRIALS);
        double[][] plain =
                new Simulation(workings.estimates(), workings.preparation().levelsDb(), TRIALS).errors();
        double[][] effect = workings.estimates().effect.dense();
        for (int p = 0; p < 3; p++) {
            for (int q = 0; q < 3; q++) {
                double expected = shared + (p == q ? own : 0);
                assertThat(meanProduct(drawn[p], drawn[q])).isCloseTo(expected, within(WITHIN * (shared + own)));
                assertThat(meanProduct(plain[p], plain[q])).isCloseTo(expected, within(WITHIN * (shared + own)));
                assertThat(meanProduct(effect[p], effect[q])
                                * workings.estimates().factors().size())
                        .isCloseTo(expected, within(1e-9));
            }
        }
    }

    private static double meanProduct(double[] a, double[] b) {
        double sum = 0;
        for (int t = 0; t < a.length; t++) {
            sum += a[t] * b[t];
        }
        return sum / a.length;
    }
}
