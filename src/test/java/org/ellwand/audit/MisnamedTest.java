package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;

import org.ellwand.acoustics.Resolution;
import org.ellwand.measurement.Session;
import org.junit.jupiter.api.Test;

class MisnamedTest {
    private static final String RULE =
            "quantity: attenuation, level: 94 dB SPL, bands: 1 kHz to 4 kHz, statistic: mean, limit: at least 15 dB, ";

    private static Session session(String device) {
        return new Bench("crew-01", Resolution.OCTAVE)
                .reading("device=" + device + ", setting=flood, stimulus=n94, insertion=1", 1000, 60, 60, 60)
                .session();
    }

    @Test
    void aSettingThatWasNeverMeasuredIsNamedWithTheNearest() {
        assertThat(Bench.judge(RULE + "setting: flod", session("Skerry")).notes())
                .containsExactly("nothing was measured under setting 'flod' (did you mean 'flood'?)");
    }

    @Test
    void aProductThatWasNeverMeasuredIsNamedWithTheNearest() {
        assertThat(Bench.judge(RULE + "setting: flood", session("Skery")).notes())
                .containsExactly("nothing was measured under product 'Skerry' (did you mean 'Skery'?)");
    }

    /** Every setting is no name; what nothing resembles is told without a guess. */
    @Test
    void whatIsNoNameIsNotMisnamed() {
        assertThat(Bench.judge(RULE + "setting: all, fit: foam", session("Skerry"))
                        .notes())
                .containsExactly("nothing was measured under fit 'foam'");
    }
}
