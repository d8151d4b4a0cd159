package org.ellwand.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ellwand.measurement.Session;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Every check says in its class how often it accuses what is sound: fewer than 1 in 1000 sessions, where nothing else stands. */
class SoundSessionsTest {
    private static final int SESSIONS = 1000;

    /** 1 in 1000 of 1000; 5 or more would come of such a rate less than once in 250 times. */
    private static final int MOST = 4;

    /** What every plug without electronics has in quiet, and no fault: it makes no noise. */
    private static final String SILENT = "noise-not-told-apart";

    @TestFactory
    Stream<DynamicTest> soundSessionsAreNotAccused() {
        Map<String, Integer> accused = new TreeMap<>();
        IntStream.range(0, SESSIONS).forEach(i -> {
            Session session = SoundSittings.of(Integer.toString(i));
            for (DataCheck check : Checks.ALL) {
                boolean found = Inspecting.by(check, List.of(session)).stream()
                        .anyMatch(finding -> !finding.remark().key().equals(SILENT));
                accused.merge(check.name(), found ? 1 : 0, Integer::sum);
            }
        });
        List<String> exercised = List.of(
                new CalibrationCheck().name(),
                new ShortAverage().name(),
                new FieldDrift().name(),
                new SignReversed().name(),
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
