package org.ellwand.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ellwand.measurement.Session;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every check says in its class how often it accuses what is sound: fewer than 1 in 1000 sessions, where nothing else stands. */
class SoundSessionsTest {
    private static final int SESSIONS = 1000;

    /** 1 in 1000 of 1000; 5 or more would come of such a rate less than once in 250 times. */
    private static final int MOST = 4;

    /** Says of a product without electronics that its noise, of which there is none, cannot be told from the room. */
    private static final String SILENT = "noise-not-told-apart";

    private static boolean isSilent(Finding finding) {
        return finding.remark().key().equals(SILENT);
    }

    /** Every plug of the sound sittings is without electronics: each is silent, and nothing else is said of its noise. */
    @Test
    void aPlugWithoutElectronicsIsAlwaysSilent() {
        for (int i = 0; i < SESSIONS; i++) {
            Session session = SoundSittings.of(Integer.toString(i));
            assertThat(Inspecting.by(new OwnNoise(), List.of(session)))
                    .as(session.id())
                    .hasSize(1)
                    .allMatch(SoundSessionsTest::isSilent)
                    .allMatch(finding -> finding.consequence() == Finding.Consequence.BOUNDED);
        }
    }

    /** The same plugs with a noise that stands 5 dB above room and probe in every band. */
    @Test
    void aNoiseAboveTheRoomIsToldApart() {
        int silent = 0;
        for (int i = 0; i < SESSIONS; i++) {
            Session noisy = Fault.in(
                    SoundSittings.of(Integer.toString(i)),
                    reading -> reading.isInPlace()
                            && reading.get("stimulus").filter("hush"::equals).isPresent(),
                    (f, level) -> level + 5);
            silent += Inspecting.by(new OwnNoise(), List.of(noisy)).stream().anyMatch(SoundSessionsTest::isSilent)
                    ? 1
                    : 0;
        }
        assertThat(silent).isLessThanOrEqualTo(MOST);
    }

    @TestFactory
    Stream<DynamicTest> soundSessionsAreNotAccused() {
        Map<String, Integer> accused = new TreeMap<>();
        IntStream.range(0, SESSIONS).forEach(i -> {
            Session session = SoundSittings.of(Integer.toString(i));
            for (DataCheck check : Checks.ALL) {
                boolean found = Inspecting.by(check, List.of(session)).stream().anyMatch(finding -> !isSilent(finding));
                accused.merge(check.name(), found ? 1 : 0, Integer::sum);
            }
        });
        List<String> exercised = List.of(
                new CalibrationCheck().name(),
                new ShortAverage().name(),
                new FieldDrift().name(),
                new SignReversed().name(),
                new TraceStart().name(),
                new TraceEnd().name(),
                new TraceSampling().name(),
                new TraceOverload().name(),
                new HarmonicFloor().name(),
                new SettingOrder().name());
        Session one = SoundSittings.of("0");
        assertThat(Checks.ALL)
                .filteredOn(check -> exercised.contains(check.name()))
                .allSatisfy(check -> assertThat(
                                Inspecting.checked(check, List.of(one)).made())
                        .isTrue());
        return accused.entrySet().stream()
                .map(e -> DynamicTest.dynamicTest(
                        e.getKey(), () -> assertThat(e.getValue()).isLessThanOrEqualTo(MOST)));
    }
}
