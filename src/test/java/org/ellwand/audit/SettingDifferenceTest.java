package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.ellwand.acoustics.Resolution;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.SharedBy;
import org.junit.jupiter.api.Test;

/**
 * What two settings do to the same insertion is free of the scatter of re-insertion. Common practice, no source; the
 * numbers follow from the law of propagation (JCGM 100:2008, 5.2.2).
 */
class SettingDifferenceTest {
    private static final String DIFFERENCE = "quantity: attenuation, between: {setting: [flood, ebb]},"
            + " level: 94 dB SPL, bands: 125 Hz to 8 kHz, statistic: mean, limit: 7 dB ± 1 dB";

    /** Whether causes are declared; how far insertions lie apart; what the first insertion of ebb is called. */
    private static Session session(boolean declared, double apartDb, int firstOfEbb) {
        Bench bench = new Bench("crew-01", Resolution.OCTAVE);
        if (declared) {
            bench.cause("insertion", apartDb, SharedBy.INSERTION, false).cause("reading", 0.5, SharedBy.READING, true);
        }
        bench.reading("device=open ear, stimulus=n94", 125, flat(80));
        double[] shift = {-1, 0.2, 0.8};
        double[] difference = {6.9, 7.2, 6.9};
        for (int i = 0; i < 3; i++) {
            double level = 63.9 + apartDb * shift[i];
            String device = "device=Skerry, stimulus=n94, setting=";
            bench.reading(device + "flood, insertion=" + (i + 1), 125, flat(level));
            bench.reading(device + "ebb, insertion=" + (firstOfEbb + i), 125, flat(level + difference[i]));
        }
        return bench.session();
    }

    private static double[] flat(double levelDb) {
        double[] levels = new double[7];
        Arrays.fill(levels, levelDb);
        return levels;
    }

    private static double uncertainty(Session session) {
        return Bench.judge(DIFFERENCE, session).standardUncertainty().orElseThrow();
    }

    @Test
    void declaredInsertionCancels() {
        double readingsAlone = Math.sqrt(2 * 0.5 * 0.5 / (3 * 7));
        assertThat(uncertainty(session(true, 0, 1))).isCloseTo(readingsAlone, within(1e-9));
        assertThat(uncertainty(session(true, 4, 1))).isCloseTo(readingsAlone, within(1e-9));
    }

    @Test
    void observedInsertionsCancel() {
        double close = uncertainty(session(false, 0, 1));
        assertThat(close).isCloseTo(1.3213 * Math.sqrt(0.03 / 3), within(1e-4));
        assertThat(uncertainty(session(false, 4, 1))).isCloseTo(close, within(1e-9));
    }

    @Test
    void differentInsertionsDoNotCancel() {
        double expected = Math.sqrt(2 * 4 * 4 / 3.0 + 2 * 0.5 * 0.5 / (3 * 7));
        assertThat(uncertainty(session(true, 4, 4))).isCloseTo(expected, within(1e-9));
    }
}
