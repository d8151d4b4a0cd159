package org.ellwand.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.ellwand.check.Fault.where;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Resolution;
import org.ellwand.demo.Bands;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Reading;
import org.ellwand.measurement.Session;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** One fault has one explanation: what other checks see of it is not told beside it. */
class EchoesTest {
    private static final Session LEFT = SoundSittings.of("monday", "crew-31-left");
    private static final Session RIGHT = SoundSittings.of("tuesday", "crew-31-right");

    private static final Predicate<CurveReading> IN_PLACE = reading -> reading.isInPlace()
            && !reading.get("stimulus").equals(Optional.of("hush"))
            && reading.values() == Reading.Values.LEVELS;

    /** The checks that say more than they say of the sound sittings. */
    private static Set<String> told(List<Session> sessions) {
        List<Finding> more =
                new ArrayList<>(Inspection.of(sessions).against(List.of()).findings());
        more.removeAll(Inspection.of(List.of(LEFT, RIGHT)).findings());
        more.removeIf(f -> f.check().equals(BackgroundFloor.NAME));
        return more.stream().map(Finding::check).collect(Collectors.toSet());
    }

    private static DynamicTest fault(String name, String check, Function<Session, Session> put) {
        return DynamicTest.dynamicTest(
                name, () -> assertThat(told(List.of(put.apply(LEFT), RIGHT))).containsExactly(check));
    }

    @TestFactory
    Stream<DynamicTest> oneFaultIsToldOnce() {
        return Stream.of(
                fault(
                        "the sound outside rose by 2 dB between the takes",
                        "level drift",
                        s -> Fault.in(
                                s,
                                where("take=2").and(r -> !r.get("stimulus").equals(Optional.of("reel-90"))),
                                (f, db) -> db + 2)),
                fault(
                        "the tube moved from 3 to 9 mm between the takes",
                        "return to the open ear",
                        s -> Fault.in(s, where("device=open ear", "take=2"), (f, db) -> db + standingWaveDb(f, 0.009))),
                fault(
                        "music was played live",
                        "music that repeats",
                        s -> Fault.in(
                                s,
                                where("device=open ear", "take=2", "stimulus=reel-90"),
                                (f, db) -> db + (f < 900 ? 1.7 : -1.7))),
                fault(
                        "a level lost its decimal point",
                        "misplaced decimal point",
                        s -> Fault.in(
                                s,
                                where("setting=flood", "insertion=2", "stimulus=pink-94"),
                                (f, db) -> isThird(f, 1000) ? 10 * db : db)),
                fault(
                        "a digit of a level is wrong",
                        "misplaced decimal point",
                        s -> Fault.in(
                                s,
                                where("setting=flood", "insertion=2", "stimulus=pink-94"),
                                (f, db) -> isThird(f, 1000) ? db + 20 : db)),
                fault(
                        "an insertion howls",
                        "feedback tone",
                        s -> Fault.in(
                                s,
                                where("setting=flood", "insertion=2"),
                                (f, db) -> isThird(f, 3150) ? Bands.energySumDb(db, 78) : db)));
    }

    /** The sign is told where it is plain, under a loud sound; under softer ones the order of the settings keeps its finding. */
    @Test
    void aReversedSignTurnsTheOrderUnderItsSound() {
        List<Session> sessions = List.of(reversed(LEFT), RIGHT);
        assertThat(told(sessions)).containsExactlyInAnyOrder("sign reversed", "order of settings");
        assertThat(Inspection.of(sessions).findings())
                .filteredOn(f -> f.check().equals("order of settings"))
                .allMatch(f -> f.session().equals("monday"))
                .noneMatch(f -> f.reading().contains("stimulus=pink-94"));
    }

    private static boolean isThird(double frequencyHz, double nominalHz) {
        return Band.nearest(Resolution.THIRD_OCTAVE, frequencyHz).nominalHz() == nominalHz;
    }

    /** 20 lg |cos(2πfd/c)|, c = 350 m/s, held off its zero. */
    private static double standingWaveDb(double frequencyHz, double awayM) {
        return 20 * Math.log10(Math.abs(Math.cos(2 * Math.PI * frequencyHz * awayM / 350)) + 0.05);
    }

    /** Every level in place as far above its open ear as it lay below. */
    private static Session reversed(Session session) {
        List<CurveReading> open =
                session.readings().stream().filter(CurveReading::isOpenEar).toList();
        Session changed = session;
        for (CurveReading ear : open) {
            String stimulus = ear.get("stimulus").orElse("");
            if (ear.get("take").equals(Optional.of("1"))) {
                changed = Fault.in(
                        changed,
                        IN_PLACE.and(where("stimulus=" + stimulus)),
                        (f, db) -> 2 * Sheets.curve(ear).levelOr(Band.nearest(Resolution.THIRD_OCTAVE, f), db) - db);
            }
        }
        return changed;
    }

    /** The session whose settings are turned round is told, and not the one beside it that is in order. */
    @Test
    void aSessionInOrderIsNotAccused() {
        Session turned = Fault.in(LEFT, IN_PLACE, (f, db) -> db)
                .withReadings(LEFT.readings().stream().map(EchoesTest::renamed).toList());
        List<Finding> findings = Inspection.of(List.of(turned, RIGHT)).findings().stream()
                .filter(f -> f.check().equals(new SettingOrder().name()))
                .toList();
        assertThat(findings).isNotEmpty().allMatch(f -> f.session().equals("monday"));
        assertThat(findings).allMatch(f -> f.remark().key().equals(SettingOrder.OUT_OF_ORDER));
    }

    private static CurveReading renamed(CurveReading reading) {
        return reading.get("setting")
                .map(setting -> new CurveReading(
                        reading.conditions().with("setting", setting.equals("flood") ? "ebb" : "flood"),
                        reading.values(),
                        reading.spectrum(),
                        reading.place()))
                .orElse(reading);
    }
}
