package org.ellwand.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Resolution;
import org.ellwand.check.Finding.Consequence;
import org.ellwand.measurement.Reading;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.SharedBy;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Levels of octaves at the centres of third octaves, told by a stated level or by another session; both are invented. */
class OctaveLevelsTest {
    /** 21 third octaves that are all as loud lie 10 lg 21 = 13.2 dB below their sum. */
    private static final double THIRDS_DB = 10 * Math.log10(21);

    private static final double WIDER_DB = 10 * Math.log10(3);

    private static MadeSession session(String id, double softDb, double loudDb) {
        return new MadeSession(id)
                .pink(62)
                .pink(94)
                .reading("device=field microphone, stimulus=pink-62", f -> 62 - THIRDS_DB + softDb)
                .reading("device=field microphone, stimulus=pink-94, take=1", f -> 94 - THIRDS_DB + loudDb)
                .reading("device=field microphone, stimulus=pink-94, take=2", f -> 94 - THIRDS_DB);
    }

    private static List<Finding> found(Session... sessions) {
        return Inspecting.by(new BandWidths(), List.of(sessions));
    }

    @Test
    void theSumOfOctaveLevelsIsNotTheStatedOne() {
        assertThat(found(session("yard", WIDER_DB, WIDER_DB).session()))
                .singleElement()
                .satisfies(f -> {
                    assertThat(f.consequence()).isEqualTo(Consequence.NOTED);
                    assertThat(f.reading()).isEqualTo("device=field microphone, ear=crew-01-left");
                    assertThat(f.measure().orElseThrow().figure()).isCloseTo(4.77, within(0.01));
                    assertThat(f.text())
                            .isEqualTo(
                                    "the third octaves outside, summed, come to 4.8 dB more than the stated level under"
                                            + " every sound: levels of octaves at these centres would be 4.8 dB too high; or the"
                                            + " sounds were louder than stated");
                });
    }

    /** One sound that is louder than stated is no other width of the bands; nor is a sum that is off by less, or by more. */
    @ParameterizedTest
    @CsvSource({"4.8, 0, 0", "0, 4.8, 0", "3.2, 3.2, 0", "6.4, 6.4, 0", "-4.8, -4.8, 0", "3.4, 6.2, 1"})
    void everySoundIsToBeTooLoudByThat(double softDb, double loudDb, int findings) {
        assertThat(found(session("yard", softDb, loudDb).session())).hasSize(findings);
    }

    /** 4.5 standard deviations of 1.4 dB are 6.3 dB. */
    @ParameterizedTest
    @CsvSource({"0.5, 1", "1.4, 0"})
    void aCalibrationThatMayBeSoFarOffTellsNothing(double calibrationDb, int findings) {
        Session session = session("yard", WIDER_DB, WIDER_DB)
                .cause("calibration", calibrationDb, SharedBy.SESSION)
                .session();
        assertThat(found(session)).hasSize(findings);
    }

    /** Low notes of 88.8 dB, and 84.2 dB(A): a level misnamed by 4.6 dB. */
    @Test
    void aMisnamedLevelIsNoWidth() {
        DoubleUnaryOperator low = f -> f < 300 ? 80 : 72;
        Session session = new MadeSession("yard")
                .sound("hum", "hum", 84.2)
                .reading("device=field microphone, stimulus=hum", low)
                .session();
        assertThat(Inspecting.by(new StatedLevel(), List.of(session))).isNotEmpty();
        assertThat(found(session)).isEmpty();
    }

    private static Session octaves(double bandDb) {
        List<Band> octaves = IntStream.rangeClosed(-3, 3)
                .mapToObj(i -> new Band(Resolution.OCTAVE, i))
                .toList();
        return new MadeSession("quay")
                .pink(70)
                .reading("device=field microphone, stimulus=pink-70", Reading.Values.LEVELS, octaves, f -> bandDb)
                .session();
    }

    /** A part of a sound, so that its sum lies far below the stated level: 50 dB in each third are 54.8 dB in each octave. */
    @ParameterizedTest
    @CsvSource({"50, 0", "54.77, 1", "58, 0"})
    void theOctavesOfAnotherSessionTellItToo(double thirdDb, int findings) {
        Session thirds = new MadeSession("yard")
                .pink(70)
                .reading("device=field microphone, stimulus=pink-70", f -> thirdDb)
                .session();
        List<Finding> found = found(thirds, octaves(50 + WIDER_DB));
        assertThat(found).hasSize(findings);
        assertThat(Stream.ofNullable(found.isEmpty() ? null : found.get(0).text()))
                .allMatch(text -> text.startsWith(
                        "the third octaves outside, summed to octaves, lie 4.8 dB above the octaves of session quay"));
    }
}
