package org.ellwand.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.ellwand.check.Fault.where;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.ellwand.amount.Amount;
import org.ellwand.amount.Unit;
import org.ellwand.check.Finding.Consequence;
import org.ellwand.check.Finding.Errs;
import org.ellwand.measurement.Chain;
import org.ellwand.measurement.Reading;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.SharedBy;
import org.junit.jupiter.api.Test;

/** Faults of the ear, the sound and the chain, made by models and put into a sound sitting. */
class SoundChecksTest {
    private static final Session SOUND = SoundSittings.of("11");

    private static List<Finding> by(DataCheck check, Session session) {
        return Inspecting.by(check, List.of(session));
    }

    private static Finding one(DataCheck check, Session session) {
        assertThat(by(check, session)).hasSize(1);
        return by(check, session).get(0);
    }

    /** 20 lg |cos(2πfd/c)|: a tip 14 mm out has its notch at 350/(4·0.014) = 6250 Hz. */
    private static Session tipAway(double mm) {
        return Fault.in(
                SOUND,
                where("device=open ear", "stimulus=pink-94"),
                (f, db) -> db + 20 * Math.log10(Math.max(0.05, Math.abs(Math.cos(2 * Math.PI * f * mm / 1000 / 350)))));
    }

    @Test
    void theNotchTellsHowFarTheTipIs() {
        List<Finding> findings = by(new StandingWave(), tipAway(14));
        assertThat(findings).hasSize(2);
        assertThat(findings.get(1).about()).isEqualTo(Finding.About.ABSOLUTE_LEVELS);
        assertThat(findings.get(1).bands()).startsWith(3150.0, 4000.0);
        Finding finding = findings.get(0);
        assertThat(finding.consequence()).isEqualTo(Consequence.UNUSABLE);
        assertThat(finding.errs()).isEqualTo(Errs.EITHER);
        assertThat(finding.bands()).containsExactly(5000.0, 6300.0, 8000.0);
        assertThat(finding.text()).endsWith("as of a tip 14 mm from the eardrum");
    }

    /** 12 mm: the notch of 7.3 kHz lies between two bands, and both are low (13 and 16 dB by the formula). */
    @Test
    void aNotchBetweenTwoBandsIsFound() {
        assertThat(by(new StandingWave(), tipAway(12)))
                .anySatisfy(f -> assertThat(f.consequence()).isEqualTo(Consequence.UNUSABLE));
    }

    @Test
    void pinkNoiseNeedsNoFieldMicrophone() {
        Session session = without("device=field microphone", tipAway(14));
        assertThat(by(new StandingWave(), session))
                .anySatisfy(f -> assertThat(f.text()).endsWith("as of a tip 14 mm from the eardrum"));
        assertThat(by(new StandingWave(), without("device=field microphone", SOUND)))
                .isEmpty();
    }

    private static Session without(String condition, Session session) {
        return session.withReadings(
                session.readings().stream().filter(where(condition).negate()).toList());
    }

    /** Published guidance: within 6 mm. */
    @Test
    void aTipThatIsNearEnoughHasNoNotch() {
        assertThat(by(new StandingWave(), tipAway(5))).isEmpty();
    }

    @Test
    void anEarWithoutAPeakWasNotMeasuredInTheCanal() {
        Session session = Fault.in(SOUND, where("device=open ear", "stimulus=pink-94"), (f, db) -> 80.8);
        Finding finding = one(new OpenEarResonance(), session);
        assertThat(finding.consequence()).isEqualTo(Consequence.UNUSABLE);
        assertThat(finding.text()).startsWith("raises the field by ").endsWith("adult ears do by 10 to 24 dB");
    }

    @Test
    void aWrongLevelOfTheOpenEarShowsAtLowFrequencies() {
        Session session = Fault.in(SOUND, where("device=open ear", "stimulus=pink-76"), (f, db) -> db + 6);
        Finding finding = one(new OpenEarResonance(), session);
        assertThat(finding.consequence()).isEqualTo(Consequence.UNUSABLE);
        assertThat(finding.measure().orElseThrow().figure()).isCloseTo(6.5, within(1.0));
    }

    /** The tube slipped out by 6 mm, from 5 to 11 mm, before the second take. */
    @Test
    void aTubeThatMovedShowsInTheSecondTake() {
        Session session = Fault.in(
                SOUND,
                where("device=open ear", "stimulus=pink-94", "take=2"),
                (f, db) -> db + 20 * Math.log10(Math.abs(Math.cos(2 * Math.PI * f * 0.011 / 350))));
        List<Finding> findings = by(new ReturnCheck(), session);
        assertThat(findings).extracting(Finding::consequence).contains(Consequence.UNUSABLE);
        assertThat(findings.get(0).bands()).contains(8000.0).doesNotContain(1000.0);
        assertThat(findings.get(0).reading()).contains("take=2");
    }

    @Test
    void aSecondInsertionTellsMoreThanOne() {
        Session session = new MadeSession("yard")
                .pink(94)
                .reading("device=Skerry, stimulus=pink-94, insertion=1", f -> 60)
                .session();
        assertThat(one(new FewInsertions(), session).text()).isEqualTo("1 insertion; 3 show how much a fit scatters");
    }

    @Test
    void anOddInsertionIsFlaggedAndStays() {
        Session session = Fault.in(SOUND, where("insertion=2", "setting=ebb", "stimulus=pink-94"), (f, db) -> db + 12);
        Finding finding = one(new OddInsertion(), session);
        assertThat(finding.consequence()).isEqualTo(Consequence.NOTED);
        assertThat(finding.reading()).contains("insertion=2").contains("setting=ebb");
    }

    private static Session fields(double laterDb, double tilt) {
        return new MadeSession("yard")
                .cause("reading", 0.1, SharedBy.READING)
                .pink(94)
                .reading("device=field microphone, stimulus=pink-94, take=1", f -> 80)
                .reading(
                        "device=field microphone, stimulus=pink-94, take=2",
                        f -> 80 + laterDb + tilt * Math.log(f / 1000) / Math.log(2))
                .session();
    }

    @Test
    void aSoundThatGrewLouderIsFound() {
        assertThat(by(new FieldDrift(), fields(0.4, 0))).isEmpty();
        assertThat(one(new FieldDrift(), fields(1, 0)).consequence()).isEqualTo(Consequence.NOTED);
        Finding finding = one(new FieldDrift(), fields(2, 0));
        assertThat(finding.consequence()).isEqualTo(Consequence.UNUSABLE);
        assertThat(finding.text())
                .isEqualTo("the level outside changed by 2.0 dB between two readings, more than 1.5 dB");
        assertThat(finding.reading()).isEqualTo("ear=crew-01-left, stimulus=pink-94");
    }

    @Test
    void aSoundOfAnotherShapeIsFound() {
        assertThat(by(new FieldDrift(), fields(0, 0.6)))
                .anySatisfy(f -> assertThat(f.text()).startsWith("the shape of the sound outside changed by 1.2 dB"));
    }

    @Test
    void musicPlayedLiveDoesNotRepeat() {
        Session session = Fault.in(
                SOUND, where("device=open ear", "stimulus=reel-90", "take=2"), (f, db) -> db + 3 * Math.sin(f / 100));
        assertThat(one(new MusicRepeat(), session).consequence()).isEqualTo(Consequence.UNUSABLE);
    }

    /** An amplifier that gives 8 dB for each 10 dB above 76 dB SPL. */
    @Test
    void aChainThatCompressesShowsInTheOpenEar() {
        Session session = Fault.in(SOUND, where("device=open ear", "stimulus=pink-94"), (f, db) -> db - 3.6);
        Finding finding = one(new Overload(), session);
        assertThat(finding.consequence()).isEqualTo(Consequence.UNUSABLE);
        assertThat(finding.errs()).isEqualTo(Errs.HIDES_ATTENUATION);
        assertThat(finding.measure().orElseThrow().figure()).isCloseTo(1 - 3.6 / 32, within(0.01));
    }

    @Test
    void aPeakAboveTheStatedOverloadClips() {
        Session session = new MadeSession("yard")
                .peak("reel-97", 97, 131)
                .chain(new Chain(Optional.empty(), Optional.empty(), Optional.of(new Amount(130, Unit.DB_SPL, 0))))
                .reading("device=open ear, stimulus=reel-97", f -> 84)
                .session();
        assertThat(one(new Overload(), session).text())
                .isEqualTo("a peak of 131.0 dB, and the chain follows up to 130.0 dB");
    }

    /** 4.34 / √(28.9 Hz · 1 s) = 0.81 dB at 125 Hz; trade notes print 0.8 dB. */
    @Test
    void aSecondIsTooShortForLowNotes() {
        Session session = new MadeSession("yard")
                .cause("reading", 0.3, SharedBy.READING)
                .pink(94)
                .chain(new Chain(Optional.empty(), Optional.of(new Amount(1, Unit.SECOND, 0)), Optional.empty()))
                .reading(
                        "device=open ear, stimulus=pink-94",
                        Reading.Values.LEVELS,
                        MadeSession.THIRDS.subList(1, 21),
                        f -> 80)
                .session();
        Finding finding = one(new ShortAverage(), session);
        assertThat(finding.measure().orElseThrow().figure()).isCloseTo(0.81, within(0.005));
        assertThat(finding.bands()).containsExactly(125.0, 160.0, 200.0, 250.0, 315.0, 400.0, 500.0);
    }

    @Test
    void aHowlInQuietIsFound() {
        Session session = Fault.in(
                SOUND,
                where("device=Skerry", "stimulus=hush", "insertion=1", "setting=flood"),
                (f, db) -> f == 1000 ? db + 25 : db);
        Finding finding = one(new FeedbackTone(), session);
        assertThat(finding.bands()).containsExactly(1000.0);
        assertThat(finding.consequence()).isEqualTo(Consequence.UNUSABLE);
        assertThat(finding.errs()).isEqualTo(Errs.HIDES_ATTENUATION);
    }

    /** Noise that falls by 6 dB an octave: 98.3 dB SPL, and far less in dB(A), which is what was stated. */
    @Test
    void aWeightedLevelIsNotOneInDbSpl() {
        Session session = new MadeSession("yard")
                .sound("rumble", "noise", 87.2)
                .reading("device=field microphone, stimulus=rumble", f -> 80 - 6 * Math.log(f / 500) / Math.log(2))
                .session();
        assertThat(one(new StatedLevel(), session).text())
                .isEqualTo("stated as 87.2 dB SPL; the bands come to 98.3 dB, and to 87.2 dB with the weighting A");
    }

    private static Session soundOf(String kind, double statedDb, DoubleUnaryOperator levelDb) {
        return new MadeSession("yard")
                .sound("reel", kind, statedDb)
                .reading("device=field microphone, stimulus=reel", levelDb)
                .session();
    }

    /**
     * 21 third octaves from 100 Hz to 10 kHz of 67.2 dB each come to 67.2 + 10 lg 21 = 80.4 dB. Pink noise of 31 such bands, 20 Hz to 20 kHz, comes to 82.1 dB:
     * 82 dB may well have been played, and 90 dB cannot. The bands miss 10 lg(29.9/21) = 1.5 dB of it, with 3 log2(20000/20) = 29.9.
     */
    @Test
    void aSoundSofterThanStated() {
        Finding finding = one(new SofterThanStated(), soundOf("pink noise", 90, f -> 67.2));
        assertThat(finding.consequence()).isEqualTo(Consequence.UNUSABLE);
        assertThat(finding.measure().orElseThrow().figure()).isCloseTo(90 - 80.42, within(0.01));
        assertThat(finding.text())
                .startsWith(
                        "stated as 90.0 dB SPL, and the bands come to 80.4 dB: what lies outside of them could hold 1.5");
        assertThat(one(new SofterThanStated(), soundOf("pink noise", 84, f -> 67.2))
                        .consequence())
                .isEqualTo(Consequence.UNUSABLE);
        for (double stated : new double[] {74, 80, 82}) {
            assertThat(Inspecting.by(new SofterThanStated(), List.of(soundOf("pink noise", stated, f -> 67.2))))
                    .isEmpty();
        }
    }

    /**
     * White noise from 20 Hz to 20 kHz of 90 dB has 90 − 10 lg 19980 = 47.0 dB in a hertz: 10 lg(11220 − 89) + 47.0 = 87.5 dB between the edges of 100 Hz and
     * 10 kHz. Of music much may lie in the bass; of a tone the band may be missing.
     */
    @Test
    void whatLiesOutsideOfTheBandsIsAllowedFor() {
        DoubleUnaryOperator white = f -> 47.0 + 10 * Math.log10(f * (Math.pow(10, 0.05) - Math.pow(10, -0.05)));
        assertThat(Inspecting.by(
                        new SofterThanStated(),
                        List.of(
                                soundOf("white noise", 90, white),
                                soundOf("music", 90, f -> 68),
                                soundOf("pure tone", 90, f -> 30))))
                .isEmpty();
        assertThat(one(new SofterThanStated(), soundOf("white noise", 92, white))
                        .measure()
                        .orElseThrow()
                        .figure())
                .isCloseTo(92 - 87.46, within(0.02));
        assertThat(one(new SofterThanStated(), soundOf("music", 92, f -> 67.2)).errs())
                .isEqualTo(Errs.EITHER);
    }

    @Test
    void gainsUnderTheNameOfAttenuation() {
        Session session = new MadeSession("yard")
                .pink(94)
                .reading("device=Skerry, stimulus=pink-94", Reading.Values.ATTENUATION, MadeSession.THIRDS, f -> -18)
                .session();
        assertThat(one(new SignReversed(), session).text())
                .isEqualTo("a mean attenuation of \u221218.0 dB, below \u22123 dB: are these gains?");
    }

    private static Session calibrated(double after, String dated) {
        Chain.Calibration calibration = new Chain.Calibration(
                Optional.of(new Amount(94, Unit.DB_SPL, 1)),
                Optional.of(new Amount(after, Unit.DB_SPL, 1)),
                Optional.of(dated));
        return new MadeSession("yard")
                .chain(new Chain(Optional.of(calibration), Optional.empty(), Optional.empty()))
                .session();
    }

    @Test
    void aCalibratorThatReadsOtherwiseAfterwards() {
        CalibrationCheck check = new CalibrationCheck();
        assertThat(by(check, calibrated(94.5, "2026-02-03"))).isEmpty();
        assertThat(one(check, calibrated(93.4, "2026-02-03")).consequence()).isEqualTo(Consequence.NOTED);
        assertThat(one(check, calibrated(95.2, "2026-02-03")).text())
                .isEqualTo("the calibrator read 1.2 dB otherwise after the session, more than 1.0 dB");
        assertThat(one(check, calibrated(94, "2025-04-01")).text())
                .isEqualTo("the calibration was 14 months old, more than 12");
    }

    @Test
    void whatIsMissingIsNotChecked() {
        Session empty = new MadeSession("yard").session();
        assertThat(Checks.ALL)
                // A session of sheets lacks no recordings.
                .filteredOn(c -> !(c instanceof RecordingCheck))
                .allSatisfy(c ->
                        assertThat(Inspecting.checked(c, List.of(empty)).made()).isFalse());
        assertThat(Inspection.of(List.of(empty)).notChecked())
                .contains(new NotChecked("slit leak", "yard", "needs attenuation at 125, 250 and 1000 Hz"));
    }
}
