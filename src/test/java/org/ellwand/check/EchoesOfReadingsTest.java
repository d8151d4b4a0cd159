package org.ellwand.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.ellwand.check.Fault.where;

import java.util.List;
import java.util.Map;
import org.ellwand.check.Finding.Consequence;
import org.ellwand.check.Finding.Errs;
import org.ellwand.measurement.Session;
import org.ellwand.words.Remark;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A finding is the shadow of another only where both are about the same take, insertion or state; sessions are invented. */
class EchoesOfReadingsTest {
    private static final Session SOUND = SoundSittings.of("monday", "crew-31-left");

    private static Finding finding(
            DataCheck check, String reading, List<Double> bands, Consequence follows, Remark of) {
        return new Finding(check.name(), "monday", reading, bands, of, Errs.EITHER, follows);
    }

    private static boolean isLeftOut(Finding finding, Finding fault) {
        return !new Echoes(List.of(finding, fault)).leftOut(List.of(finding)).contains(finding);
    }

    private static Finding swapped(int take) {
        return finding(
                new EarSwap(),
                "device=open ear, ear=left, stimulus=pink-94, take=" + take,
                List.of(),
                Consequence.UNUSABLE,
                Remark.of(SwappedTakes.KEY));
    }

    @ParameterizedTest
    @CsvSource({"left, 2, true", "left, 3, false", "right, 2, false"})
    void aTubeThatMovedInAnotherTakeIsTold(String ear, int take, boolean leftOut) {
        Finding moved = finding(
                new ReturnCheck(),
                "device=open ear, ear=" + ear + ", stimulus=pink-62, take=" + take,
                List.of(8000.0),
                Consequence.NOTED,
                Remark.of("tube-moved"));
        assertThat(isLeftOut(moved, swapped(2))).isEqualTo(leftOut);
    }

    /** Its reading is that of all takes, and its take stands among its figures. */
    @ParameterizedTest
    @CsvSource({"2, true", "3, false"})
    void musicThatDiffersInAnotherTakeIsTold(int take, boolean leftOut) {
        Session session = Fault.in(
                SOUND, where("device=open ear", "stimulus=reel-90", "take=2"), (f, db) -> db + 3 * Math.sin(f / 100));
        Finding music = Inspecting.by(new MusicRepeat(), List.of(session)).get(0);
        assertThat(music.remark().figures()).containsEntry("take", "2");
        assertThat(music.text()).startsWith("take 2 of the open ear differs from the first by ");
        Finding ofLeft = finding(
                new MusicRepeat(),
                "device=open ear, ear=left, stimulus=reel-90",
                List.of(),
                music.consequence(),
                music.remark().with("take", String.valueOf(take)));
        assertThat(isLeftOut(ofLeft, swapped(2))).isEqualTo(leftOut);
    }

    /** What the product makes itself in one setting is no howl of another, nor of another ear. */
    @ParameterizedTest
    @CsvSource({
        "left, flood, 3150, true",
        "left, flood, 4000, false",
        "left, ebb, 3150, false",
        "right, flood, 3150, false"
    })
    void noiseOfAnotherSettingIsTold(String ear, String setting, double hz, boolean leftOut) {
        Finding howl = finding(
                new FeedbackTone(),
                "device=Skerry, ear=left, insertion=2, setting=flood, stimulus=hush",
                List.of(3150.0),
                Consequence.UNUSABLE,
                Remark.of("howl-in-quiet"));
        Finding limited = finding(
                new OwnNoise(),
                "device=Skerry, ear=" + ear + ", setting=" + setting + ", stimulus=pink-62",
                List.of(hz),
                Consequence.WIDENED,
                Remark.of(OwnNoise.LIMITED));
        assertThat(isLeftOut(limited, howl)).isEqualTo(leftOut);
    }

    /** Low notes of an insertion fall by so many dB, and highs where its tube is pressed together. */
    private static Session sealed(Map<Integer, Double> lowDb, int blocked) {
        Session session = SOUND;
        for (Map.Entry<Integer, Double> one : lowDb.entrySet()) {
            session = Fault.in(
                    session,
                    r -> r.isInPlace()
                            && where("insertion=" + one.getKey()).test(r)
                            && !where("stimulus=hush").test(r),
                    (f, db) -> f < 900
                            ? db - one.getValue()
                            : one.getKey() == blocked ? db - 14 * f / (f + 400) - one.getValue() : db);
        }
        return session;
    }

    private static List<Finding> leaks(Session session) {
        return Inspection.of(List.of(session)).findings().stream()
                .filter(f -> f.remark().key().equals(SlitLeak.LESS_THAN_BEST))
                .toList();
    }

    @Test
    void besideABlockedTubeOthersSeemToLeak() {
        Session session = sealed(Map.of(3, 10.0), 3);
        assertThat(Inspecting.by(new SlitLeak(), List.of(session)))
                .hasSize(2)
                .allSatisfy(f -> assertThat(SlitLeak.better(f))
                        .singleElement()
                        .asString()
                        .contains("insertion=3"));
        assertThat(leaks(session)).isEmpty();
    }

    /** Insertion 1, whose tube is open, is sealed better than 2 as well. */
    @Test
    void besideASoundInsertionALeakIsTold() {
        assertThat(leaks(sealed(Map.of(2, -10.0, 3, 0.0), 3))).singleElement().satisfies(f -> {
            assertThat(f.reading()).contains("insertion=2");
            assertThat(SlitLeak.better(f)).hasSize(2);
        });
    }
}
