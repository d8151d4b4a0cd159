package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;

import org.ellwand.claim.Rule;
import org.ellwand.words.Sentences;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rules in one line, as reports print them. */
class RuleTextTest {
    private static Rule rule(String stated) {
        return Bench.product(stated).claims().get(0).rule().orElseThrow();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "quantity: attenuation, setting: flood, level: 90 to 100 dB SPL, bands: 125 Hz to 8 kHz, statistic: mean,"
                        + " limit: 15 to 21 dB|mean attenuation, flood, 125 Hz to 8 kHz, 90 to 100 dB SPL: 15 to 21 dB",
                "quantity: attenuation, setting: [flood, ebb], level: all, bands: all, statistic: every band, ears: each,"
                        + " limit: above 15 dB|attenuation in every band, flood and ebb, all bands measured, all levels,"
                        + " each ear: above 15 dB",
                "quantity: attenuation, fit: all, level: 94 dB SPL, bands: at least 1 kHz, statistic: lowest, ears: mean,"
                        + " limit: at least 15 dB|lowest attenuation, all fits, from 1 kHz, 93 to 95 dB SPL, mean over ears: at"
                        + " least 15 dB",
                "quantity: attenuation, firmware: \"2.1\", level: 94 dB SPL, bands: at most 1 kHz, statistic: spread,"
                        + " ears: share of 90 %, limit: below 15 dB|spread of attenuation, firmware 2.1, up to 1 kHz, 93 to 95 dB"
                        + " SPL, 90 % of ears: below 15 dB",
                "quantity: output level, referred to: field, level: 94 dB SPL, bands: 1 kHz to 2 kHz, statistic: overall,"
                        + " weighting: A, units: mean, limit: at most 85 dB(A)|A-weighted overall output level referred to"
                        + " the field, 1 kHz to 2 kHz, 93 to 95 dB SPL, mean over units: at most 85 dB(A)",
                "quantity: output level, referred to: eardrum, stimulus: quiet, bands: 1 kHz to 2 kHz, statistic: median,"
                        + " units: each, limit: at most 85 dB SPL|median output level at the eardrum, 1 kHz to 2 kHz, quiet,"
                        + " each unit: at most 85 dB SPL",
                "quantity: response, reference: 1 kHz, target: open ear, bands: 1 kHz to 2 kHz, resolution: octave,"
                        + " statistic: highest, units: share of 95 %, limit: at most 3 dB|highest response, 1 kHz to 2 kHz,"
                        + " octave bands, relative to 1 kHz, against the open ear, 95 % of units: at most 3 dB",
                "quantity: response, reference: mean of 500 Hz to 2 kHz, bands: 1 kHz to 2 kHz, statistic: slope,"
                        + " limit: at most 3 dB/octave|slope of response, 1 kHz to 2 kHz, relative to its mean over 500 Hz to"
                        + " 2 kHz: at most 3 dB/octave",
                "quantity: attenuation, between: {setting: [flood, ebb]}, level: 94 dB SPL, bands: 1 kHz, statistic: mean,"
                        + " limit: at least 3 dB|mean attenuation, flood less ebb (setting), 1 kHz to 1 kHz, 93 to 95 dB SPL: at"
                        + " least 3 dB",
                "quantity: figure, of: mass, between: {firmware: [\"2.1\", \"2.0\"]}, compared by: ratio, limit: at most 1.5"
                        + "|figure (mass), 2.1 against 2.0 (firmware): at most 1.5",
                "quantity: harmonic distortion, harmonics: 2 to 5, limit: at most 0.3 %|harmonic distortion, harmonics"
                        + " 2 to 5: at most 0.3 %"
            })
    void inOneLine(String stated, String line) {
        assertThat(RuleText.of(rule(stated))).isEqualTo(line);
    }

    @Test
    void whatTheLimitIsALimitOf() {
        Rule rule =
                rule("quantity: attenuation, level: 94 dB SPL, bands: 1 kHz, statistic: mean, limit: at least 3 dB");
        assertThat(RuleText.subject(rule, Sentences.english()))
                .isEqualTo("mean attenuation, 1 kHz to 1 kHz, 93 to 95 dB SPL");
        assertThat(RuleText.of(rule, Sentences.english())).isEqualTo(RuleText.of(rule));
    }
}
