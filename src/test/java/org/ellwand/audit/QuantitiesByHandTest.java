package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.ellwand.acoustics.Resolution;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.SharedBy;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One value of every quantity that levels in octave bands give, worked by hand; levels are invented. */
class QuantitiesByHandTest {
    /** 250 Hz to 4 kHz. Gains at 1 kHz: 5 dB at 62 and 78 dB SPL, −1 dB at 94 dB SPL. */
    private static final Session SESSION = new Bench("crew-01", Resolution.OCTAVE)
            .cause("insertion", 0.5, SharedBy.INSERTION, false)
            .cause("reading", 0.2, SharedBy.READING, true)
            .reading("device=field microphone, stimulus=n94", 250, 88, 88, 88, 85, 80)
            .reading("device=open ear, stimulus=n62", 250, 60, 60, 60, 60, 60)
            .reading("device=open ear, stimulus=n78", 250, 76, 76, 76, 76, 76)
            .reading("device=open ear, stimulus=n94", 250, 92, 92, 92, 95, 92)
            .reading("device=Skerry, stimulus=n62, insertion=1", 250, 40, 60, 65, 65, 55)
            .reading("device=Skerry, stimulus=n78, insertion=1", 250, 56, 76, 81, 81, 71)
            .reading("device=Skerry, stimulus=n94, insertion=1", 250, 72, 88, 91, 91, 81)
            .session();

    private static double value(String rule) {
        return Bench.judge(rule, SESSION).value().orElseThrow();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                // (20 + 4 + 1 + 4 + 11) / 5
                "attenuation, statistic: mean, level: 94 dB SPL, bands: all, limit: at least 1 dB|8",
                "insertion gain, statistic: mean, level: 94 dB SPL, bands: all, limit: at most 1 dB|-8",
                // (1 + 4 + 11) / 3 and (20 + 4) / 2
                "attenuation, statistic: mean, level: 94 dB SPL, bands: at least 1 kHz, limit: at least 1 dB|5.3333333",
                "attenuation, statistic: mean, level: 94 dB SPL, bands: at most 500 Hz, limit: at least 1 dB|12",
                "attenuation, statistic: highest, level: 94 dB SPL, bands: all, limit: at most 30 dB|20",
                "attenuation, statistic: lowest, level: 94 dB SPL, bands: all, limit: at least 0 dB|1",
                "attenuation, statistic: median, level: 94 dB SPL, bands: all, limit: at least 1 dB|4",
                "attenuation, statistic: spread, level: 94 dB SPL, bands: all, limit: at most 30 dB|19",
                // 20 and 4 dB an octave apart, of the ratio 10^0.3, which is 0.9965784 octaves
                "attenuation, statistic: slope, level: 94 dB SPL, bands: 250 to 500 Hz, limit: at most 0 dB/octave"
                        + "|-16.054933",
                // Equal levels: 10 lg 2 more
                "output level, statistic: overall, weighting: Z, level: 94 dB SPL, bands: 1 kHz to 2 kHz,"
                        + " referred to: eardrum, limit: at most 100 dB SPL|94.010300",
                // Less the open-ear gain: 91 − (92 − 88) and 91 − (95 − 85), so 87 and 81 dB
                "output level, statistic: mean, level: 94 dB SPL, bands: 1 kHz to 2 kHz, referred to: field,"
                        + " limit: at most 100 dB SPL|84",
                // 55 less the 65 dB of 1 kHz, and less the mean of 60 and 65 dB
                "response, statistic: mean, level: 62 dB SPL, bands: 4 kHz, reference: 1 kHz, limit: 0 dB ± 30 dB|-10",
                "response, statistic: mean, level: 62 dB SPL, bands: 4 kHz, reference: mean of 500 Hz to 1 kHz,"
                        + " limit: 0 dB ± 30 dB|-7.5",
                // 5 dB fall to −1 dB between 78 and 94: 3 dB are half of that
                "onset level, statistic: mean, drop: 3 dB, bands: 1 kHz, limit: at least 70 dB SPL|86",
                // 65 dB at 62 and 81 dB at 78 dB SPL
                "criterion level, criterion: 73 dB(A), bands: 1 kHz, referred to: eardrum, limit: at most 90 dB SPL|70",
                // From 0 to −10 dB between 1995.26 and 3981.07 Hz: 1995.26 · 10^(0.3 · 0.6)
                "upper limiting frequency, drop: 6 dB, reference: 1 kHz, bands: all, level: 62 dB SPL,"
                        + " limit: at least 1 kHz|3.0199517",
                // From −5 to −25 dB between 501.19 and 251.19 Hz: 501.19 · 10^(−0.3 · 0.5), in Hz
                "lower limiting frequency, drop: 15 dB, reference: 1 kHz, bands: all, level: 62 dB SPL,"
                        + " limit: at most 1000 Hz|354.813389",
                // 29 CFR 1910.95, appendix A: 91 dB(A) may last 8 / 2^0.2 = 6.9644 h, half of that is half a dose
                "permissible duration, exposure: 29 CFR 1910.95, bands: 1 kHz, level: 94 dB SPL, referred to: eardrum,"
                        + " limit: at least 1 h|6.9644045",
                "noise dose, exposure: 29 CFR 1910.95, duration: 3.48220225 h, bands: 1 kHz, level: 94 dB SPL,"
                        + " referred to: eardrum, limit: at most 90 %|50"
            })
    void values(String rule, double expected) {
        assertThat(value("quantity: " + rule)).isCloseTo(expected, within(1e-6));
    }

    /** Told in minutes it is sixty times as much. */
    @Test
    void theUnitIsThatOfTheLimit() {
        String rule = "quantity: permissible duration, exposure: 29 CFR 1910.95, bands: 1 kHz, level: 94 dB SPL,"
                + " referred to: eardrum, limit: at least ";
        assertThat(value(rule + "60 min")).isCloseTo(60 * value(rule + "1 h"), within(1e-9));
    }

    /** What no band and no level shows lies beyond the last one, and passes or fails as far as that tells. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "onset level, statistic: mean, drop: 20 dB, bands: 1 kHz, limit: at least 80 dB SPL|PASS",
                "onset level, statistic: mean, drop: 20 dB, bands: 1 kHz, limit: at most 80 dB SPL|FAIL",
                "onset level, statistic: mean, drop: 20 dB, bands: 1 kHz, limit: at least 99 dB SPL|MARGINAL",
                "criterion level, criterion: 110 dB(A), bands: 1 kHz, referred to: eardrum, limit: at least 80 dB SPL"
                        + "|PASS",
                "criterion level, criterion: 40 dB(A), bands: 1 kHz, referred to: eardrum, limit: at most 80 dB SPL"
                        + "|PASS",
                "criterion level, criterion: 40 dB(A), bands: 1 kHz, referred to: eardrum, limit: at least 80 dB SPL"
                        + "|FAIL",
                "upper limiting frequency, drop: 30 dB, reference: 1 kHz, bands: all, level: 62 dB SPL,"
                        + " limit: at least 2 kHz|PASS",
                "lower limiting frequency, drop: 30 dB, reference: 1 kHz, bands: all, level: 62 dB SPL,"
                        + " limit: at most 2 kHz|PASS",
                "lower limiting frequency, drop: 30 dB, reference: 1 kHz, bands: all, level: 62 dB SPL,"
                        + " limit: at least 2 kHz|FAIL"
            })
    void beyondTheLastPoint(String rule, Verdict verdict) {
        assertThat(Bench.judge("quantity: " + rule, SESSION).verdict()).isEqualTo(verdict);
    }
}
