package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;

import org.ellwand.check.MadeSession;
import org.ellwand.demo.Bands;
import org.ellwand.demo.SlitLeak;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.SharedBy;
import org.junit.jupiter.api.Test;

/** A fault voids only what it could have caused. A plug of 25 dB with a slit of 0.24 mm, which hides attenuation. */
class DoubtsTest {
    private static final String OF = "quantity: attenuation, level: 94 dB SPL, bands: %s, statistic: %s, limit: %s";

    private static Session leaking() {
        return new MadeSession("yard")
                .cause("reading", 0.2, SharedBy.READING)
                .cause("insertion", 0.5, SharedBy.INSERTION)
                .pink(94)
                .reading("device=open ear, stimulus=pink-94", f -> 80)
                .reading(
                        "device=Skerry, stimulus=pink-94, insertion=1",
                        f -> 80 + Bands.energySumDb(-25, new SlitLeak(0.24).gainDb(f)))
                .session();
    }

    private static Judgement judge(String bands, String statistic, String limit) {
        return Bench.judge(String.format(java.util.Locale.ROOT, OF, bands, statistic, limit), leaking());
    }

    @Test
    void aLeakCannotHaveMadeAnAtLeastPass() {
        Judgement judgement = judge("125 Hz to 8 kHz", "mean", "at least 12 dB");
        assertThat(judgement.verdict()).isEqualTo(Verdict.PASS);
        assertThat(judgement.notes())
                .contains("the verdict does not depend on what was found about the data: slit leak in session yard");
    }

    @Test
    void aLeakMayHaveMadeAnAtLeastFail() {
        Judgement judgement = judge("125 Hz to 1 kHz", "mean", "at least 22 dB");
        assertThat(judgement.verdict()).isEqualTo(Verdict.MARGINAL);
        assertThat(judgement.reason())
                .contains("the data themselves are in doubt (slit leak in session yard), which could have brought this"
                        + " about; without that finding the verdict would be fail");
    }

    @Test
    void aLeakMayHaveMadeAnAtMostPassAndNotFail() {
        assertThat(judge("125 Hz to 1 kHz", "mean", "at most 22 dB").verdict()).isEqualTo(Verdict.MARGINAL);
        assertThat(judge("125 Hz to 8 kHz", "mean", "at most 8 dB").verdict()).isEqualTo(Verdict.FAIL);
    }

    @Test
    void aLeakTouchesLowNotesOnly() {
        assertThat(judge("2 to 8 kHz", "mean", "at most 26 dB").verdict()).isEqualTo(Verdict.PASS);
        assertThat(judge("125 Hz to 8 kHz", "lowest", "at least 20 dB").verdict())
                .isEqualTo(Verdict.MARGINAL);
        assertThat(judge("2 to 8 kHz", "lowest", "at least 30 dB").verdict()).isEqualTo(Verdict.FAIL);
    }

    private static final String NOISE =
            "quantity: output level, stimulus: quiet, bands: 125 Hz to 8 kHz, statistic: overall, weighting: A,"
                    + " referred to: eardrum, limit: %s";

    /** A room of 20 dB in every band, and with the product in place so much more. */
    private static Judgement noise(double aboveDb, String limit) {
        MadeSession made = new MadeSession("yard")
                .cause("reading", 0.2, SharedBy.READING)
                .cause("insertion", 0.3, SharedBy.INSERTION)
                .quiet()
                .reading("device=open ear, stimulus=hush", f -> 20)
                .reading("device=Skerry, stimulus=hush, insertion=1", f -> 20 + aboveDb);
        return Bench.judge(String.format(java.util.Locale.ROOT, NOISE, limit), made.session());
    }

    /** 19 bands of 20 dB come to 32.2 dB(A). A product that makes no noise meets what is above, and fails nothing. */
    @Test
    void aSilentProductPassesOrStaysOpen() {
        assertThat(noise(0, "at most 36 dB(A)").verdict()).isEqualTo(Verdict.PASS);
        assertThat(noise(0, "at most 20 dB(A)").verdict()).isEqualTo(Verdict.MARGINAL);
        assertThat(noise(-3, "at most 20 dB(A)").verdict()).isEqualTo(Verdict.MARGINAL);
    }

    /** 34.7 dB(A), 2.5 dB above the room: of 2 dB (0.5 for errors) 4.3 dB may be the room's, so 30.4 dB(A) are its own. */
    @Test
    void aNoiseJustAboveTheRoomFailsByWhatIsItsOwn() {
        assertThat(noise(2.5, "at most 29 dB(A)").verdict()).isEqualTo(Verdict.FAIL);
        assertThat(noise(2.5, "at most 31 dB(A)").verdict()).isEqualTo(Verdict.MARGINAL);
        assertThat(noise(2.5, "at most 37 dB(A)").verdict()).isEqualTo(Verdict.PASS);
    }
}
