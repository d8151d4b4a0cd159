package org.ellwand.measurement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.HarmonicDistortion;
import org.ellwand.acoustics.Resolution;
import org.ellwand.acoustics.SettlingTime;
import org.ellwand.input.InputException;
import org.ellwand.sound.RecordingNote;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RecordingReaderTest {
    /** The calibrator of 94 dB has an amplitude of 0.1. */
    private static final String SESSION = """
            session: yard
            product: Skerry
            ear: crew-01-left
            resolution: third-octave
            levels in: dB SPL
            stimuli: {sound: {kind: pure tone, level: 90 dB SPL}}
            uncertainty: unknown
            calibrator: {file: cal.wav, level: 94 dB SPL}
            recordings:
              - {file: ear.wav, %s}
            """;

    @TempDir
    Path path;

    private Folder folder(String entry, double[]... channels) throws IOException {
        return new Folder(path)
                .with("measurements/yard.yaml", SESSION.formatted(entry))
                .with("measurements/cal.wav", Wavs.bytes(Wavs.tone(1000, 0.1, 3)))
                .with("measurements/ear.wav", Wavs.bytes(channels));
    }

    @Test
    void aRecordingGivesTheLevelsOfItsBands() throws IOException, InputException {
        Session session = folder("device: open ear, stimulus: sound, from: 1 s", Wavs.tone(500, 0.2, 12))
                .only();
        CurveReading reading = session.readings().get(0);
        assertThat(reading.isOpenEar()).isTrue();
        assertThat(reading.place()).hasToString("measurements/yard.yaml:10:5");
        assertThat(reading.spectrum()
                        .levels()
                        .get(Band.nearest(Resolution.THIRD_OCTAVE, 500))
                        .levelDb())
                .isCloseTo(100.02, offset(0.02));
        assertThat(session.dataFiles()).containsExactly("measurements/cal.wav", "measurements/ear.wav");
    }

    /** Two harmonics of 1 % and 0.5 %. */
    @Test
    void aToneGivesItsHarmonics() throws IOException, InputException {
        double[] samples = Wavs.tone(500.2, 0.1, 4);
        double[] second = Wavs.tone(1000.4, 0.001, 4);
        double[] third = Wavs.tone(1500.6, 0.0005, 4);
        for (int i = 0; i < samples.length; i++) {
            samples[i] += second[i] + third[i];
        }
        Session session = folder("gives: harmonics, fundamental: 500 Hz, setting: flood", samples)
                .only();
        HarmonicReading reading = session.harmonics().get(0);
        assertThat(reading.levelDbByOrder()).hasSize(10);
        assertThat(reading.levelDbByOrder().get(1)).isCloseTo(94, offset(0.01));
        assertThat(reading.levelDbByOrder().get(2)).isCloseTo(54, offset(0.05));
        assertThat(HarmonicDistortion.percent(reading.levelDbByOrder(), 2, 5))
                .hasValueCloseTo(Math.hypot(1, 0.5), org.assertj.core.data.Offset.offset(0.01));
    }

    /** Of a tone of 500 Hz with 1 % at 1 kHz that is silent before {@code fromS} and between the next two times. */
    private java.util.List<RecordingNote.Kind> kindsOf(String fundamental, double fromS, double gapS, double againS)
            throws IOException, InputException {
        double[] samples = Wavs.tone(500, 0.1, 8);
        double[] second = Wavs.tone(1000, 0.001, 8);
        for (int i = 0; i < samples.length; i++) {
            double t = (double) i / Wavs.RATE_HZ;
            boolean sounds = t >= fromS && (t < gapS || t >= againS);
            samples[i] = sounds ? samples[i] + second[i] : 1e-5 * Math.sin(1.7 * i * i);
        }
        return folder("gives: harmonics, setting: flood, fundamental: " + fundamental, samples)
                .only()
                .chain()
                .recorded()
                .stream()
                .map(note -> note.note().kind())
                .toList();
    }

    /** A tone that lasts is told nothing of; one that begins an eighth of the part late lacks in the first eighth. */
    @ParameterizedTest
    @CsvSource({"0, 9, 9", "1, 9, 9", "4, 9, 9", "0, 3.2, 4.8"})
    void aToneLastsThroughThePartOfWhichItsHarmonicsAreRead(double fromS, double gapS, double againS)
            throws IOException, InputException {
        boolean lasts = fromS == 0 && gapS > 8;
        assertThat(kindsOf("500 Hz", fromS, gapS, againS).contains(RecordingNote.Kind.UNLASTING))
                .isEqualTo(!lasts);
        assertThat(RecordingNote.Kind.UNLASTING.spoils()).isTrue();
    }

    /** 500 Hz was played, and neither 700 Hz nor 510 Hz nor its second harmonic. */
    @ParameterizedTest
    @CsvSource({"500 Hz, false", "502 Hz, false", "700 Hz, true", "510 Hz, true", "1 kHz, true", "250 Hz, true"})
    void theToneOfWhichHarmonicsAreReadIsTheStrongest(String fundamental, boolean another)
            throws IOException, InputException {
        assertThat(kindsOf(fundamental, 0, 9, 9).contains(RecordingNote.Kind.ANOTHER_TONE))
                .isEqualTo(another);
        assertThat(RecordingNote.Kind.ANOTHER_TONE.spoils()).isTrue();
    }

    /** After a step of −20 dB a mean square with time constant τ settles within 3 dB of the end after τ ln(99 / (10^0.3 − 1)). */
    @Test
    void aTraceGivesTheTimeItTakes() throws IOException, InputException {
        double[] samples = Wavs.tone(2000, 0.1, 4);
        for (int i = 2 * Wavs.RATE_HZ; i < samples.length; i++) {
            samples[i] *= 0.1;
        }
        Session session = folder(
                        "gives: trace, time constant: 20 ms, setting: flood, from: 1 s,"
                                + " step: {at: 1 s, from: 94 dB SPL, to: 74 dB SPL}",
                        samples)
                .only();
        Trace trace = session.traces().get(0);
        assertThat(trace.levelDb().get(200)).isCloseTo(94, offset(0.02));
        double seconds = SettlingTime.seconds(trace.levels(), 1, 3).value().orElseThrow();
        assertThat(seconds).isCloseTo(0.020 * Math.log(99 / (Math.pow(10, 0.3) - 1)), offset(0.0005));
    }

    @Test
    void whatIsWrongWithItGoesWithTheSession() throws IOException, InputException {
        double[] samples = Wavs.tone(500, 0.2, 12);
        for (int i = 0; i < samples.length; i++) {
            samples[i] = Math.max(-0.15, Math.min(0.15, samples[i]));
        }
        Session session = folder("device: open ear, stimulus: sound", samples).only();
        assertThat(session.chain().recorded())
                .extracting(note -> note.note().kind())
                .containsExactly(RecordingNote.Kind.CLIPPED, RecordingNote.Kind.SHORT);
        assertThat(session.chain().recorded().get(0).conditions().get("device")).isEqualTo(Optional.of("open ear"));
    }

    @Test
    void aTakeThatDoesNotFollowItsStimulusIsNoted() throws IOException, InputException {
        double[] played = Wavs.noise(12);
        double[] heard = played.clone();
        double[] hum = Wavs.tone(250, 0.2, 12);
        for (int i = 0; i < heard.length; i++) {
            heard[i] += hum[i];
        }
        Session session = folder(
                        "stimulus: sound, insertion: 1, setting: ebb, times from: sync mark, from: 1.2 s,"
                                + " stimulus file: played.wav",
                        Wavs.marked(heard))
                .with("measurements/played.wav", Wavs.bytes(Wavs.marked(played)))
                .only();
        assertThat(session.chain().recorded().stream()
                        .filter(note -> note.note().kind() == RecordingNote.Kind.INCOHERENT)
                        .map(note -> note.note().of("reading.wav").text())
                        .findFirst()
                        .orElse(session.chain().recorded().toString()))
                .startsWith(
                        "reading.wav: in 1 of 21 third octaves less than 0.80 of the sound follows the stimulus (coherence), least at"
                                + " 250 Hz with 0.");
        assertThat(session.dataFiles()).contains("measurements/played.wav");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    device: open ear                                   | yard.yaml:10:5: no stimulus: a level says nothing without the sound it was measured under
                    stimulus: sound, from: 4 s                         | ear.wav: lasts 3.000 s; from 4.000 s to 3.000 s is no part of it
                    stimulus: sound, channel: 2                        | ear.wav: has no channel 2; there are 1 to 1
                    stimulus: sound, fundamental: 500 Hz               | yard.yaml:10:38: 'fundamental' is no key of a recording
                    gives: harmonics                                   | yard.yaml:10:5: 'fundamental' is missing: give the tone's frequency, as 'fundamental: 500 Hz'
                    gives: trace                                       | yard.yaml:10:5: 'time constant' is missing: the time weighting
                    gives: trace, time constant: quick                 | yard.yaml:10:50: 'time constant': 'quick' is not a number with a unit
                    gives: traces                                      | yard.yaml:10:28: 'gives: traces' is not accepted (did you mean 'trace'?); accepted are bands, trace, harmonics
                    """)
    void aWrongEntryIsRefusedWithItsPlace(String entry, String message) throws IOException {
        Folder folder = folder(entry, Wavs.tone(500, 0.2, 3));
        assertThatThrownBy(folder::only)
                .isInstanceOf(InputException.class)
                .hasMessageStartingWith("measurements/" + message);
    }

    @Test
    void withoutACalibratorThereAreNoLevels() throws IOException {
        Folder folder = folder("device: open ear, stimulus: sound", Wavs.tone(500, 0.2, 3))
                .with(
                        "measurements/yard.yaml",
                        SESSION.formatted("stimulus: sound").replaceAll("calibrator.*\n", ""));
        assertThatThrownBy(folder::only)
                .hasMessage(
                        "measurements/yard.yaml:1:1: 'calibrator' is missing: recordings have a level only by a recorded"
                                + " calibrator, as 'calibrator: {file: cal.wav, level: 94 dB SPL}'");
    }
}
