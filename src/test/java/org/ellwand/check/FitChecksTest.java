package org.ellwand.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.ellwand.check.Fault.where;

import java.util.List;
import org.ellwand.check.Finding.Consequence;
import org.ellwand.check.Finding.Errs;
import org.ellwand.demo.Bands;
import org.ellwand.demo.SlitLeak;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Session;
import org.junit.jupiter.api.Test;

/** Faults of fit, tube and copying, made by models and put into a sound sitting. */
class FitChecksTest {
    private static final Session SOUND = SoundSittings.of("7");

    private static List<Finding> by(DataCheck check, Session session) {
        return Inspecting.by(check, List.of(session));
    }

    private static double openDb(Session session, String stimulus, double hz) {
        CurveReading open = session.readings().stream()
                .filter(where("device=open ear", "stimulus=" + stimulus, "take=1"))
                .findFirst()
                .orElseThrow();
        return open.spectrum().levels().entrySet().stream()
                .filter(e -> e.getKey().exactHz() == hz)
                .mapToDouble(e -> e.getValue().levelDb())
                .findFirst()
                .orElseThrow();
    }

    private static Session leaking(double slitMm) {
        Session session = SOUND;
        for (double level : SoundSittings.LEVELS) {
            String sound = "pink-" + Math.round(level);
            session = Fault.in(
                    session,
                    where("insertion=2", "stimulus=" + sound),
                    (f, db) -> Bands.energySumDb(db - 8, openDb(SOUND, sound, f) + new SlitLeak(slitMm).gainDb(f)));
        }
        return session;
    }

    /** A slit of 0.24 mm past a plug that would take 30 dB off: next to nothing is left below 250 Hz. */
    @Test
    void aWideSlitIsOfNoUseForLowNotes() {
        assertThat(by(new org.ellwand.check.SlitLeak(), leaking(0.24)))
                .singleElement()
                .satisfies(f -> {
                    assertThat(f.consequence()).isEqualTo(Consequence.UNUSABLE);
                    assertThat(f.errs()).isEqualTo(Errs.HIDES_ATTENUATION);
                    assertThat(f.reading()).isEqualTo("device=Skerry, ear=crew-7, insertion=2");
                    assertThat(f.bands()).startsWith(100.0).endsWith(1000.0);
                });
    }

    @Test
    void aNarrowSlitIsNoted() {
        assertThat(by(new org.ellwand.check.SlitLeak(), leaking(0.17)))
                .singleElement()
                .satisfies(f -> assertThat(f.consequence()).isEqualTo(Consequence.NOTED));
    }

    /** A tube pressed together: 10 dB less at 1 kHz and above, in one insertion. */
    @Test
    void aBlockedTubeInventsAttenuation() {
        Session session = Fault.in(
                SOUND,
                r -> r.isInPlace()
                        && where("insertion=3").test(r)
                        && !where("stimulus=hush").test(r),
                (f, db) -> db - 14 * f / (f + 400));
        assertThat(by(new TubeExcess(), session)).hasSize(6).allSatisfy(f -> {
            assertThat(f.consequence()).isEqualTo(Consequence.UNUSABLE);
            assertThat(f.errs()).isEqualTo(Errs.INVENTS_ATTENUATION);
            assertThat(f.reading()).contains("insertion=3");
        });
    }

    /** A tube that passes half of what comes on top of 62 dB. */
    @Test
    void aSqueezedTubeDoesNotFollow() {
        Session session = Fault.in(SOUND, where("insertion=1", "stimulus=pink-94"), (f, db) -> db - 6);
        assertThat(by(new TubeLinearity(), session)).hasSize(2).allSatisfy(f -> {
            assertThat(f.consequence()).isEqualTo(Consequence.UNUSABLE);
            assertThat(f.errs()).isEqualTo(Errs.INVENTS_ATTENUATION);
            assertThat(f.text()).startsWith("rises with the sound by ").contains("more than 3.0 dB");
        });
    }

    /**
     * One of three reads 10 dB high at 94 dB: the median of the two others is their mean, from which each sound one then lacks 5 dB. Of three
     * insertions two sound ones agree, and neither is to answer for the third.
     */
    @Test
    void twoSoundInsertionsDoNotAnswerForAThirdThatReadsHigh() {
        Session session = Fault.in(SOUND, where("insertion=2", "stimulus=pink-94"), (f, db) -> db + 10);
        assertThat(by(new TubeLinearity(), session)).isEmpty();
        Session loose = Fault.in(
                SOUND,
                r -> r.isInPlace()
                        && where("insertion=2").test(r)
                        && !where("stimulus=hush").test(r),
                (f, db) -> db + 20);
        assertThat(by(new TubeExcess(), loose)).isEmpty();
    }

    @Test
    void aCopyIsFound() {
        CurveReading first = SOUND.readings().stream()
                .filter(where("insertion=1", "stimulus=pink-94"))
                .findFirst()
                .orElseThrow();
        Session session = Fault.in(
                SOUND,
                where("insertion=2", "setting=flood", "stimulus=pink-94"),
                (f, db) -> first.spectrum().levels().entrySet().stream()
                        .filter(e -> e.getKey().exactHz() == f)
                        .findFirst()
                        .orElseThrow()
                        .getValue()
                        .levelDb());
        assertThat(by(new Copies(), session)).singleElement().satisfies(f -> {
            assertThat(f.consequence()).isEqualTo(Consequence.UNUSABLE);
            assertThat(f.text())
                    .isEqualTo("the same in all 21 bands as the reading at " + first.place()
                            + "; so many as 10 are no chance");
        });
    }

    /** A curve in place under the names of two heads; the open ear of one head may serve two of its sessions. */
    @Test
    void aCopyBetweenSessionsIsFoundInBoth() {
        CurveReading first = SOUND.readings().stream()
                .filter(where("insertion=1", "stimulus=pink-94"))
                .findFirst()
                .orElseThrow();
        Session other = Fault.in(
                SoundSittings.of("8"),
                where("insertion=2", "setting=flood", "stimulus=pink-94"),
                (f, db) -> first.spectrum().levels().entrySet().stream()
                        .filter(e -> e.getKey().exactHz() == f)
                        .findFirst()
                        .orElseThrow()
                        .getValue()
                        .levelDb());
        assertThat(Inspecting.by(new Copies(), List.of(SOUND, other)))
                .singleElement()
                .satisfies(f -> {
                    assertThat(f.consequence()).isEqualTo(Consequence.UNUSABLE);
                    assertThat(f.reading()).contains("insertion=1");
                    assertThat(f.text()).contains("in session sitting-8; so many as 10 are no chance");
                });
        assertThat(Inspecting.by(new Copies(), List.of(other, SOUND)))
                .singleElement()
                .satisfies(f -> assertThat(f.reading()).contains("insertion=2"));
        assertThat(Inspecting.by(new Copies(), List.of(SOUND, SoundSittings.of("8"))))
                .isEmpty();
    }

    /** 7.5 dB typed as 75: one band, one reading. */
    @Test
    void aLostDecimalPointIsFound() {
        Session session = Fault.in(
                SOUND, where("insertion=2", "setting=flood", "stimulus=pink-76"), (f, db) -> f == 1000 ? db / 10 : db);
        assertThat(by(new DecimalShift(), session)).singleElement().satisfies(f -> {
            assertThat(f.consequence()).isEqualTo(Consequence.UNUSABLE);
            assertThat(f.bands()).containsExactly(1000.0);
        });
    }

    /** A howl of 40 dB stands in every insertion in quiet, and is what the product does. */
    @Test
    void aHowlIsNoSlipOfThePen() {
        Session session = Fault.in(SOUND, where("device=Skerry", "stimulus=hush"), (f, db) -> f == 1000 ? db + 40 : db);
        assertThat(by(new DecimalShift(), session)).isEmpty();
    }
}
