package org.ellwand.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.ellwand.check.Fault.where;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Resolution;
import org.ellwand.acoustics.Weighting;
import org.ellwand.check.Finding.Consequence;
import org.ellwand.check.Finding.Errs;
import org.ellwand.demo.Bands;
import org.ellwand.demo.Ear;
import org.ellwand.measurement.Chain;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Reading;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.SharedBy;
import org.ellwand.measurement.Uncertainty;
import org.ellwand.statistics.NormalStream;
import org.ellwand.statistics.Seeds;
import org.junit.jupiter.api.Test;

/** What was taken for something else: an ear, a setting, a band, a reference, a background. Each fault is made by a model. */
class MixUpChecksTest {
    private static final Session SOUND = SoundSittings.of("21");

    private static Finding one(DataCheck check, Session... sessions) {
        List<Finding> findings = Inspecting.by(check, List.of(sessions));
        assertThat(findings).hasSize(1);
        return findings.get(0);
    }

    /** Nothing comes through the tube of the third insertion: under a sound it reads what it reads in quiet. */
    @Test
    void aBlockedTubeReadsItsBackground() {
        Session session = Fault.in(
                SOUND,
                where("insertion=3", "device=Skerry"),
                (f, db) -> SOUND.readings().stream()
                        .filter(where("insertion=3", "setting=flood", "stimulus=hush"))
                        .findFirst()
                        .orElseThrow()
                        .spectrum()
                        .at(Band.nearest(Resolution.THIRD_OCTAVE, f))
                        .orElseThrow()
                        .levelDb());
        List<Finding> findings = Inspecting.by(new TubeAtBackground(), List.of(session));
        assertThat(findings).hasSize(6).allSatisfy(f -> {
            assertThat(f.reading()).contains("insertion=3");
            assertThat(f.errs()).isEqualTo(Errs.INVENTS_ATTENUATION);
            assertThat(f.consequence()).isEqualTo(Consequence.UNUSABLE);
        });
    }

    /** With one insertion only there is bone to hold it against. */
    @Test
    void noPlugTakesMoreOffThanBoneLetsThrough() {
        Session session = new MadeSession("yard")
                .pink(94)
                .quiet()
                .reading("device=open ear, stimulus=pink-94", f -> 82)
                .reading("device=Skerry, stimulus=pink-94, insertion=1", f -> 15)
                .reading("device=Skerry, stimulus=hush, insertion=1", f -> 14)
                .session();
        assertThat(one(new TubeAtBackground(), session).text())
                .startsWith("no louder than in quiet over 21 neighbouring");
        Session softer = Fault.in(session, where("device=open ear"), (f, db) -> 60);
        assertThat(Inspecting.by(new TubeAtBackground(), List.of(softer))).isEmpty();
    }

    private static Session bothEars(String id, Ear left, Ear right) {
        NormalStream draw = new NormalStream(Seeds.of("both ears", id));
        MadeSession made = new MadeSession(id).cause("reading", 0.3, SharedBy.READING);
        for (double level : new double[] {62, 94}) {
            made.pink(level);
            Map.of("crew-01-left", left, "crew-01-right", right)
                    .forEach((name, ear) -> made.reading(
                            "device=open ear, ear=" + name + ", stimulus=pink-" + Math.round(level),
                            f -> level - 13 + ear.openGainDb(f) + 0.3 * draw.next()));
        }
        return made.session();
    }

    private static final Ear LEFT = new Ear("left", "crew-01", 17, 2500, 0.1, 0);
    private static final Ear RIGHT = new Ear("right", "crew-01", 14, 3200, 0.1, 0);

    @Test
    void anEarIsKnownAgain() {
        Session first = bothEars("monday", LEFT, RIGHT);
        assertThat(Inspecting.by(new EarSwap(), List.of(bothEars("tuesday", LEFT, RIGHT), first)))
                .isEmpty();
        List<Finding> swapped = Inspecting.by(new EarSwap(), List.of(bothEars("tuesday", RIGHT, LEFT), first));
        assertThat(swapped).hasSize(4).allSatisfy(f -> {
            assertThat(f.consequence()).isEqualTo(Consequence.UNUSABLE);
            assertThat(f.reading()).startsWith("ear=crew-01-");
            assertThat(f.text()).endsWith("were left and right swapped?");
        });
    }

    @Test
    void earsThatAreAlikeAreLeftAlone() {
        for (int i = 0; i < 300; i++) {
            Session first = bothEars("first-" + i, LEFT, LEFT);
            assertThat(Inspecting.by(new EarSwap(), List.of(bothEars("second-" + i, LEFT, LEFT), first)))
                    .isEmpty();
        }
    }

    private static Session renamed(Session session, java.util.function.Predicate<CurveReading> which) {
        Map<String, String> other = Map.of("flood", "ebb", "ebb", "flood");
        return session.withReadings(session.readings().stream()
                .map(r -> which.test(r) && r.get("setting").isPresent() ? renamed(r, other) : r)
                .toList());
    }

    private static CurveReading renamed(CurveReading r, Map<String, String> other) {
        Conditions conditions = r.conditions()
                .with("setting", other.getOrDefault(r.get("setting").orElse(""), ""));
        return new CurveReading(conditions, r.values(), r.spectrum(), r.place());
    }

    @Test
    void twoSettingsSwappedInOneInsertion() {
        Session session = renamed(SOUND, where("insertion=2", "stimulus=pink-76"));
        Finding finding = one(new SettingOrder(), session);
        assertThat(finding.consequence()).isEqualTo(Consequence.UNUSABLE);
        assertThat(finding.reading())
                .contains("insertion=2")
                .contains("stimulus=pink-76")
                .doesNotContain("setting");
        assertThat(finding.text()).endsWith("were the two swapped?");
    }

    /** Both settings of the insertion lie 10 dB from the others: a squeezed tube or a bad fit to whoever knows nothing of the swap. */
    @Test
    void aSwapIsNoFurtherFault() {
        Session session = renamed(SOUND, where("insertion=2", "stimulus=pink-76"));
        assertThat(Inspecting.by(new OddInsertion(), List.of(session))).isNotEmpty();
        List<Finding> more = new ArrayList<>(Inspection.of(List.of(session)).findings());
        more.removeAll(Inspection.of(List.of(SOUND)).findings());
        assertThat(more).extracting(Finding::check).containsExactly(new SettingOrder().name());
    }

    @Test
    void twoSettingsSwappedInASession() {
        Session swapped = renamed(chained(SoundSittings.of("22"), List.of()), r -> true);
        List<Finding> findings = Inspecting.by(new SettingOrder(), List.of(swapped, SOUND));
        assertThat(findings)
                .hasSize(3)
                .allSatisfy(f ->
                        assertThat(f.text()).endsWith("in session sitting-21: were the two swapped in one of them?"));
        assertThat(Inspecting.by(new SettingOrder(), List.of(SoundSittings.of("22"), SOUND)))
                .isEmpty();
    }

    @Test
    void theOrderThatTheSessionStatesIsHeldAgainstTheReadings() {
        Session right = chained(SOUND, List.of("ebb", "flood"));
        assertThat(Inspecting.by(new SettingOrder(), List.of(right))).isEmpty();
        List<Finding> findings = Inspecting.by(new SettingOrder(), List.of(chained(SOUND, List.of("flood", "ebb"))));
        assertThat(findings).hasSize(3).allSatisfy(f -> {
            assertThat(f.remark().key()).isEqualTo("settings-out-of-order");
            assertThat(f.text()).startsWith("flood, which is to be the weaker setting, takes ");
        });
    }

    private static Session chained(Session s, List<String> order) {
        Chain chain = new Chain(Optional.empty(), Optional.empty(), Optional.empty(), order, false, List.of());
        return s.withChain(chain);
    }

    @Test
    void octavesUnderTheNameOfThirdOctaves() {
        List<Band> octaves = IntStream.rangeClosed(-3, 3)
                .mapToObj(i -> new Band(Resolution.THIRD_OCTAVE, 3 * i))
                .toList();
        Session session = new MadeSession("yard")
                .pink(94)
                .reading("device=open ear, stimulus=pink-94", Reading.Values.LEVELS, octaves, f -> 85)
                .session();
        assertThat(one(new BandWidths(), session).text())
                .isEqualTo(
                        "called third octaves, and all 7 bands are an octave apart: are these octaves? Their levels would"
                                + " be 4.8 dB higher");
    }

    /** Seven octaves of pink noise of 94 dB SPL over ten octaves are 84 dB each; a third of an octave is 79.2 dB. */
    @Test
    void thirdOctavesUnderTheNameOfOctaves() {
        assertThat(Inspecting.by(new BandWidths(), List.of(octaves(84)))).isEmpty();
        assertThat(Inspecting.by(new BandWidths(), List.of(octaves(85.5)))).isEmpty();
        assertThat(one(new BandWidths(), octaves(79.2)).remark().key()).isEqualTo("thirds-as-octaves");
    }

    private static Session octaves(double bandDb) {
        List<Band> octaves = IntStream.rangeClosed(-3, 3)
                .mapToObj(i -> new Band(Resolution.OCTAVE, i))
                .toList();
        return new MadeSession("yard")
                .pink(94)
                .reading("device=field microphone, stimulus=pink-94", Reading.Values.LEVELS, octaves, f -> bandDb)
                .session();
    }

    /** A plug of 20 dB in every band; what its gain reads over the field holds the resonance of the ear. */
    @Test
    void aGainOverTheFieldHoldsTheEarsResonance() {
        DoubleUnaryOperator wrong = f -> -20 + Ear.CREW_01.openGainDb(f) + 0.4 * Math.sin(7 * f);
        Session session = new MadeSession("yard")
                .pink(94)
                .reading("device=Skerry, stimulus=pink-94", Reading.Values.INSERTION_GAIN, MadeSession.THIRDS, wrong)
                .session();
        Finding finding = one(new ReferenceMixUp(), session);
        assertThat(finding.consequence()).isEqualTo(Consequence.NOTED);
        assertThat(finding.text()).endsWith("was it taken over the field, and not over the open ear?");
    }

    @Test
    void differencesAreNoLevels() {
        Session session = new MadeSession("yard")
                .pink(94)
                .reading("device=Skerry, stimulus=pink-94", f -> -20)
                .session();
        Finding finding = one(new ReferenceMixUp(), session);
        assertThat(finding.consequence()).isEqualTo(Consequence.UNUSABLE);
        assertThat(finding.remark().key()).isEqualTo("no-levels");
    }

    @Test
    void pinkNoiseThatFallsIsNone() {
        assertThat(one(new PinkShape(), field(f -> 80 - 0.6 * Bands.octaves(f, 1000)))
                        .text())
                .isEqualTo("the pink noise slopes by \u22120.60 dB per octave, more than 0.5");
        assertThat(one(new PinkShape(), field(f -> f < 140 ? 76 : 80)).bands()).containsExactly(125.0);
        assertThat(Inspecting.by(new PinkShape(), List.of(field(f -> 80 - 0.4 * Bands.octaves(f, 1000)))))
                .isEmpty();
    }

    private static Session field(DoubleUnaryOperator db) {
        return new MadeSession("yard")
                .cause("reading", 0.1, SharedBy.READING)
                .pink(94)
                .reading("device=field microphone, stimulus=pink-94", db)
                .session();
    }

    /** Each band of the open ear with the weighting of IEC 61672-1 on it. */
    @Test
    void weightedBandsBetrayThemselves() {
        Session session =
                Fault.in(SOUND, where("device=open ear", "stimulus=pink-94"), (f, db) -> db + Weighting.A.atDb(f));
        Finding finding = one(new WeightedBands(), session);
        assertThat(finding.consequence()).isEqualTo(Consequence.UNUSABLE);
        assertThat(finding.bands()).startsWith(100.0, 125.0).doesNotContain(1000.0);
    }

    /** A product that hisses at 36 dB in every band, under pink noise of 49 dB a band and a plug of 6 dB. */
    @Test
    void whatIsLimitedByItsOwnNoise() {
        Session session = new MadeSession("yard")
                .pink(62)
                .quiet()
                .reading("device=open ear, stimulus=hush", f -> 15)
                .reading("device=Skerry, setting=flood, stimulus=hush", f -> 36)
                .reading("device=Skerry, setting=flood, stimulus=pink-62", f -> Bands.energySumDb(43, 36))
                .session();
        Finding finding = one(new OwnNoise(), session);
        assertThat(finding.consequence()).isEqualTo(Consequence.WIDENED);
        assertThat(finding.text()).startsWith("as little as 7.8 dB above the noise that the product makes itself");
    }

    /** A room of 35 dB in every band: whatever the plug makes itself is drowned in it. */
    @Test
    void aNoiseThatIsNotToldFromTheRoomIsABound() {
        Session session = new MadeSession("yard")
                .quiet()
                .reading("device=open ear, stimulus=hush", f -> 35)
                .reading("device=Skerry, setting=flood, stimulus=hush", f -> 34)
                .session();
        assertThat(one(new OwnNoise(), session).consequence()).isEqualTo(Consequence.BOUNDED);
    }

    /** It amplifies by 20 dB, and so it does the room: 20 dB above the open ear, and no noise of its own. */
    @Test
    void anAmplifiedRoomIsNoNoiseOfTheProducts() {
        MadeSession made = new MadeSession("yard")
                .pink(62)
                .quiet()
                .reading("device=open ear, stimulus=pink-62", f -> 49)
                .reading("device=Skerry, setting=flood, stimulus=pink-62", f -> 69)
                .reading("device=open ear, stimulus=hush", f -> 25)
                .reading("device=Skerry, setting=flood, stimulus=hush", f -> 45.5);
        assertThat(one(new OwnNoise(), made.session()).remark().key()).isEqualTo("noise-not-told-apart");
        made.reading("device=Skerry, setting=ebb, stimulus=pink-62", f -> 69)
                .reading("device=Skerry, setting=ebb, stimulus=hush", f -> 52);
        assertThat(one(new OwnNoise(), made.session()).reading()).contains("setting=flood");
    }

    private static final List<Band> TWELFTHS = IntStream.rangeClosed(-40, 40)
            .mapToObj(i -> new Band(Resolution.TWELFTH_OCTAVE, i))
            .toList();

    /** 20 lg |1 + a e^(−j2πfτ)|. */
    private static double combDb(double f, double a, double ms) {
        double phase = 2 * Math.PI * f * ms / 1000;
        return 10 * Math.log10(1 + a * a + 2 * a * Math.cos(phase));
    }

    /** A leak 10 dB below what the electronics pass 1 ms later: +2.4 and −3.3 dB, every 1000 Hz. */
    @Test
    void twoPathsLeaveARippleInTheAttenuation() {
        Session session = twelfths(f -> combDb(f, Math.pow(10, -0.5), 1));
        Finding finding = one(new CombRipple(), session);
        assertThat(finding.measure().orElseThrow().figure()).isCloseTo(5.7, within(1.2));
        assertThat((Double) finding.remark().figures().get("delay")).isCloseTo(1, within(0.1));
        assertThat(Inspecting.by(new CombRipple(), List.of(twelfths(f -> 0)))).isEmpty();
    }

    private static Session twelfths(DoubleUnaryOperator moreDb) {
        NormalStream draw = new NormalStream(Seeds.of("twelfths", "1"));
        return new MadeSession("yard")
                .pink(94)
                .reading(
                        "device=open ear, stimulus=pink-94",
                        Reading.Values.LEVELS,
                        TWELFTHS,
                        f -> 76 + Ear.CREW_01.openGainDb(f) + 0.3 * draw.next())
                .reading(
                        "device=Skerry, stimulus=pink-94",
                        Reading.Values.LEVELS,
                        TWELFTHS,
                        f -> 60 + Ear.CREW_01.openGainDb(f) + moreDb.applyAsDouble(f) + 0.3 * draw.next())
                .session();
    }

    @Test
    void aReflectionLeavesARippleOutside() {
        Session session = new MadeSession("yard")
                .pink(94)
                .reading(
                        "device=field microphone, stimulus=pink-94",
                        Reading.Values.LEVELS,
                        TWELFTHS,
                        f -> 80 + combDb(f, 0.35, 1.5))
                .session();
        assertThat(one(new RoomReflection(), session).text()).startsWith("a ripple of ");
    }

    @Test
    void aHowlStandsOutOfTheGain() {
        Session session = Fault.in(
                SOUND,
                where("device=Skerry", "insertion=1", "setting=flood", "stimulus=pink-62"),
                (f, db) -> f == 1000 ? db + 14 : db);
        Finding finding = one(new FeedbackTone(), session);
        assertThat(finding.bands()).containsExactly(1000.0);
        assertThat(finding.remark().key()).isEqualTo("howl-in-gain");
    }

    @Test
    void anAttenuationUnderTheNameOfAGain() {
        Session session = new MadeSession("yard")
                .pink(94)
                .reading("device=Skerry, stimulus=pink-94", Reading.Values.INSERTION_GAIN, MadeSession.THIRDS, f -> 18)
                .session();
        assertThat(one(new SignReversed(), session).consequence()).isEqualTo(Consequence.UNUSABLE);
    }

    @Test
    void briefAveragingWidensWhatItLacks() {
        Chain brief = new Chain(
                Optional.empty(),
                Optional.of(new org.ellwand.amount.Amount(1, org.ellwand.amount.Unit.SECOND, 0)),
                Optional.empty());
        Session session = new MadeSession("yard")
                .cause("reading", 0.3, SharedBy.READING)
                .pink(94)
                .chain(brief)
                .reading("device=open ear, stimulus=pink-94", f -> 80)
                .session();
        Uncertainty widened = Inspection.of(List.of(session)).sessions().get(0).uncertainty();
        double at125 = ((Uncertainty.Declared) widened).causes().get(1).sizeAt(125);
        // 0.808 dB of noise less 0.3 dB that is declared already, in squares.
        assertThat(at125).isCloseTo(Math.sqrt(0.808 * 0.808 - 0.09), within(0.005));
        assertThat(((Uncertainty.Declared) widened).causes().get(1).sizeAt(1000))
                .isZero();
    }

    @Test
    void aDecimalPointLostAtTheEndOfASheetOfDifferences() {
        Map<Double, Double> db = new TreeMap<>(Map.of(10000.0, 250.0));
        Session session = new MadeSession("yard")
                .pink(94)
                .reading(
                        "device=Skerry, stimulus=pink-94",
                        Reading.Values.ATTENUATION,
                        MadeSession.THIRDS,
                        f -> db.getOrDefault((double) Math.round(f), 25.0))
                .session();
        assertThat(one(new DecimalShift(), session).bands()).containsExactly(10000.0);
    }
}
