package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.ellwand.acoustics.Resolution;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.SharedBy;
import org.junit.jupiter.api.Test;

/**
 * Seven octave bands, one open-ear take, three insertions; calibration 0.7 dB shared by session, insertion 1.2 dB shared by
 * insertion, reading 0.5 dB shared by reading, independent across bands. Worked by the law of propagation (JCGM 100:2008,
 * 5.1.2 and 5.2.2): calibration cancels; u² = 1.2²/3 + 0.5²/(3·7) + 0.5²/7 = 0.5276 for the mean attenuation of one
 * setting, and 2·0.5²/(3·7) = 0.0238 for the difference of two settings in the same three insertions.
 */
class WorkedExampleTest {
    private static final Session SESSION = session();

    private static Session session() {
        Bench bench = new Bench("crew-01", Resolution.OCTAVE)
                .cause("calibration", 0.7, SharedBy.SESSION, false)
                .cause("insertion", 1.2, SharedBy.INSERTION, false)
                .cause("reading", 0.5, SharedBy.READING, true)
                .reading("device=open ear, stimulus=n94", 125, 80, 80, 80, 80, 80, 80, 80);
        double[] shift = {-0.6, 0.1, 0.5};
        for (int i = 0; i < 3; i++) {
            bench.reading(
                    "device=Skerry, setting=flood, stimulus=n94, insertion=" + (i + 1), 125, flat(63.9 + shift[i]));
            bench.reading("device=Skerry, setting=ebb, stimulus=n94, insertion=" + (i + 1), 125, flat(70.9 + shift[i]));
        }
        return bench.session();
    }

    private static double[] flat(double levelDb) {
        double[] levels = new double[7];
        Arrays.fill(levels, levelDb);
        return levels;
    }

    @Test
    void meanAttenuationOfOneSetting() {
        Judgement judgement = Bench.judge(
                "quantity: attenuation, setting: flood, level: 94 dB SPL, bands: 125 Hz to 8 kHz, statistic: mean,"
                        + " limit: at least 15 dB",
                SESSION);
        assertThat(judgement.value().orElseThrow()).isCloseTo(16.1, within(1e-9));
        assertThat(judgement.standardUncertainty().orElseThrow()).isCloseTo(Math.sqrt(0.52762), within(1e-4));
        assertThat(judgement.probability().orElseThrow()).isCloseTo(0.935, within(5e-4));
        assertThat(judgement.verdict()).isEqualTo(Verdict.MARGINAL);
    }

    @Test
    void differenceOfTwoSettingsInTheSameInsertions() {
        Judgement judgement = Bench.judge(
                "quantity: attenuation, between: {setting: [flood, ebb]}, level: 94 dB SPL, bands: 125 Hz to 8 kHz,"
                        + " statistic: mean, limit: 7 dB ± 1 dB",
                SESSION);
        assertThat(judgement.value().orElseThrow()).isCloseTo(7, within(1e-9));
        assertThat(judgement.standardUncertainty().orElseThrow()).isCloseTo(0.1543, within(1e-4));
        assertThat(judgement.verdict()).isEqualTo(Verdict.PASS);
    }
}
