package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.ellwand.acoustics.Resolution;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.SharedBy;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Decimal fractions have no exact binary ones: 80.3 − 79.07 is 1.2300000000000040, 80.1 − 76.16 is 3.9399999999999977. */
class OnTheLimitTest {
    @ParameterizedTest
    @CsvSource({"80.3, 79.07, 1.23", "80.1, 76.16, 3.94", "80.2, 76.78, 3.42", "79.9, 78.27, 1.63"})
    void anExactValueOnItsLimitIsInside(double first, double second, double difference) {
        Session session = new Bench("crew-01", Resolution.OCTAVE)
                .cause("insertion", 0.5, SharedBy.INSERTION, false)
                .cause("reading", 0, SharedBy.READING, true)
                .reading("device=open ear, stimulus=n94", 1000, 90)
                .reading("device=Skerry, setting=flood, stimulus=n94, insertion=1", 1000, second)
                .reading("device=Skerry, setting=ebb, stimulus=n94, insertion=1", 1000, first)
                .session();
        String rule = "quantity: attenuation, between: {setting: [flood, ebb]}, bands: 1 kHz, statistic: every band,"
                + " level: 94 dB SPL, limit: ";
        assertThat(Bench.judge(rule + "at least " + difference + " dB", session).verdict())
                .isEqualTo(Verdict.PASS);
        assertThat(Bench.judge(rule + "at most " + difference + " dB", session).verdict())
                .isEqualTo(Verdict.PASS);
        assertThat(Bench.judge(rule + "above " + difference + " dB", session).verdict())
                .isEqualTo(Verdict.FAIL);
    }

    /** Two stimuli of one insertion each of three: observed scatter stands instead of the insertion cause, in each. */
    @Test
    void observedScatterIsNotCountedBesideTheCauseItReplaces() {
        Bench bench = new Bench("crew-01", Resolution.OCTAVE)
                .cause("insertion", 0.5, SharedBy.INSERTION, false)
                .cause("reading", 0, SharedBy.READING, true);
        for (String stimulus : new String[] {"n62", "n94"}) {
            bench.reading("device=open ear, stimulus=" + stimulus, 1000, 90);
            double[] levels = {60, 66, 72};
            for (int i = 0; i < levels.length; i++) {
                bench.reading("device=Skerry, stimulus=" + stimulus + ", insertion=" + (i + 1), 1000, levels[i]);
            }
        }
        Judgement judged = Bench.judge(
                "quantity: attenuation, bands: 1 kHz, statistic: mean, level: all, limit: at least 15 dB",
                bench.session());
        // s/√3 = 6/√3 = 3.4641; half the central 68.27 % interval of t with 2 degrees of freedom: 1.3213 times that.
        assertThat(judged.standardUncertainty().orElseThrow()).isCloseTo(3.4641 * 1.3213, within(0.002));
    }
}
