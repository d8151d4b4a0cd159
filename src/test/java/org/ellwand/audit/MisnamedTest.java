package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;

import org.ellwand.acoustics.Resolution;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.SharedBy;
import org.ellwand.words.Remark;
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

    /** What is said of two settings is not true where it was seen in one. */
    @Test
    void aNameOfAListThatNothingBearsHoldsAPassBack() {
        Session session = new Bench("yard", Resolution.OCTAVE)
                .cause("insertion", 0, SharedBy.INSERTION, false)
                .cause("reading", 0.1, SharedBy.READING, true)
                .openEar("ear=crew-01-left", 80, 80, 80)
                .worn("setting=flood, insertion=1", 60, 60, 60)
                .worn("setting=shut, insertion=1", 60, 60, 60)
                .session();
        Judgement floo = Bench.judge(RULE + "setting: [flood, floo]", session);
        assertThat(floo.verdict()).isEqualTo(Verdict.MARGINAL);
        assertThat(floo.reasons()).containsExactly(named("floo"));
        assertThat(Bench.judge(RULE + "setting: [ebb, flood, floo]", session).reasons())
                .containsExactly(named("ebb"), named("floo"));
        assertThat(Bench.judge(RULE + "setting: [flood, shut]", session).verdict())
                .isEqualTo(Verdict.PASS);
        assertThat(Bench.judge(RULE + "setting: [flood]", session).verdict()).isEqualTo(Verdict.PASS);
        // What fails in the one that was measured fails.
        String more = RULE.replace("15 dB", "25 dB");
        assertThat(Bench.judge(more + "setting: [flood, floo]", session).verdict())
                .isEqualTo(Verdict.FAIL);
    }

    private static Remark named(String name) {
        return Remark.of("named-not-judged").with("condition", "setting").with("name", name);
    }

    @Test
    void aKindOfSoundThatWasNeverPlayedIsNamedWithTheNearest() {
        assertThat(Bench.judge(RULE + "setting: flood, stimulus: pink nose", session("Skerry"))
                        .notes())
                .containsExactly("nothing was measured under stimulus 'pink nose' (did you mean 'pink noise'?)");
    }
}
