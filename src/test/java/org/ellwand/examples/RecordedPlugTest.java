package org.ellwand.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import org.ellwand.audit.Audit;
import org.ellwand.audit.CellResult;
import org.ellwand.audit.ClaimAudit;
import org.ellwand.audit.FolderContents;
import org.ellwand.audit.Point;
import org.ellwand.audit.Scope;
import org.ellwand.audit.Verdict;
import org.ellwand.input.InputException;
import org.ellwand.sound.Programme;
import org.ellwand.sound.SampleFormat;
import org.ellwand.sound.SampleReader;
import org.ellwand.sound.Stimuli;
import org.ellwand.sound.WavFile;
import org.ellwand.sound.WavWriter;
import org.ellwand.statistics.NormalStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/**
 * From six WAV files to an audit. The plug is invented: a low-pass of first order at 1 kHz behind 15 dB, whose gain falls
 * by half a dB for every dB above 75 dB SPL, within 20 ms, and comes back within 80 ms (time constants). So its
 * attenuation at 90 dB SPL is 15 + 7.5 + 10 lg(1 + (tan(π f/fs) / tan(π 1000/fs))²) dB, its onset (2 dB) 79 dB SPL, its attack and
 * release to within 3 dB 20 and 80 ms times ln(7.5/3).
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class RecordedPlugTest {
    private static final int RATE_HZ = 48_000;
    /** Level of full scale, as of a calibrator of 94 dB SPL that is recorded at −26 dB. */
    private static final double FULL_SCALE_DB = 120;

    private static final List<Double> SERIES_DB = List.of(65.0, 70.0, 75.0, 80.0, 85.0, 90.0);
    private static final double FLOOR = 1e-5;

    @TempDir
    static Path folder;

    private final List<Audit> audits = new ArrayList<>();

    private static double amplitude(double db) {
        return Math.pow(10, db / 20);
    }

    private static double staticGainDb(double levelDb) {
        return -0.5 * Math.max(0, levelDb - 75);
    }

    /** The samples of a programme, after some silence of its own length. */
    private double[] played(Programme programme, int lateFrames) throws IOException, InputException {
        Path path = Files.write(folder.resolve("played.wav"), programme.wav());
        WavFile file = WavFile.read(path, "played.wav");
        double[] samples = new double[(int) file.frames()];
        try (SampleReader reader = file.open(1)) {
            reader.read(samples);
        }
        double[] late = new double[samples.length + lateFrames];
        System.arraycopy(samples, 0, late, lateFrames, samples.length);
        Files.delete(path);
        return late;
    }

    /** What the plug lets through; its gain in dB is given at each time in s of the recording. */
    private static double[] through(double[] samples, DoubleUnaryOperator gainDb) {
        double w = Math.tan(Math.PI * 1000 / RATE_HZ);
        double pole = (1 - w) / (1 + w);
        double gain = w / (1 + w);
        double[] out = new double[samples.length];
        double before = 0;
        double last = 0;
        for (int i = 0; i < samples.length; i++) {
            last = gain * (samples[i] + before) + pole * last;
            before = samples[i];
            out[i] = last * amplitude(-15 + gainDb.applyAsDouble((double) i / RATE_HZ));
        }
        return out;
    }

    private static double attenuationDb(double hz) {
        double ratio = Math.tan(Math.PI * hz / RATE_HZ) / Math.tan(Math.PI * 1000 / RATE_HZ);
        return 15 - staticGainDb(90) + 10 * Math.log10(1 + ratio * ratio);
    }

    private void record(String name, double[] samples, long seed) throws IOException {
        NormalStream noise = new NormalStream(seed);
        double[] noisy = samples.clone();
        for (int i = 0; i < noisy.length; i++) {
            noisy[i] += FLOOR * noise.next();
        }
        Files.write(folder.resolve("measurements").resolve(name), WavWriter.bytes(SampleFormat.PCM_24, RATE_HZ, noisy));
    }

    @BeforeAll
    void recordAndAudit() throws Exception {
        Files.createDirectories(folder.resolve("measurements"));
        Files.createDirectories(folder.resolve("claims"));
        double[] tone = new double[5 * RATE_HZ];
        for (int i = 0; i < tone.length; i++) {
            tone[i] = Math.sqrt(2) * amplitude(94 - FULL_SCALE_DB) * Math.sin(2 * Math.PI * 1000 * i / RATE_HZ);
        }
        record("cal.wav", tone, 1);

        Programme loud = Stimuli.pink(RATE_HZ, List.of(90 - FULL_SCALE_DB), 12, 10, "test");
        record("open.wav", played(loud, 5_000), 2);
        record("flood.wav", through(played(loud, 31_111), t -> staticGainDb(90)), 3);

        Programme series = Stimuli.pink(
                RATE_HZ, SERIES_DB.stream().map(db -> db - FULL_SCALE_DB).toList(), 12, 5, "test");
        double[] stepped = played(series, 0);
        record("open-series.wav", stepped, 4);
        record("flood-series.wav", through(stepped, t -> staticGainDb(playing(series, t))), 5);

        Programme step = Stimuli.step(RATE_HZ, 2000, 55 - FULL_SCALE_DB, 90 - FULL_SCALE_DB, 2);
        double firstS = 0.5 + step.parts().get(0).fromS() - 1;
        record("step.wav", through(played(step, 0), t -> steppedGainDb(t - firstS - 2)), 6);

        Files.writeString(folder.resolve("measurements/yard.yaml"), session(loud, series, step));
        Files.writeString(folder.resolve("claims/skerry.yaml"), CLAIMS);
        audits.add(FolderContents.read(folder).judged(Scope.all(), 20_000));
    }

    /** The level of the series at a time of the recording; low where none plays. */
    private static double playing(Programme series, double timeS) {
        for (int i = 0; i < SERIES_DB.size(); i++) {
            Programme.Part part = series.parts().get(i);
            if (timeS - 0.5 < part.toS()) {
                return SERIES_DB.get(i);
            }
        }
        return 0;
    }

    /** Gain in dB at a time after the step up; 2 s later it steps down again. */
    private static double steppedGainDb(double timeS) {
        double held = staticGainDb(90);
        if (timeS < 0) {
            return 0;
        }
        return timeS < 2 ? held * -Math.expm1(-timeS / 0.020) : held * Math.exp(-(timeS - 2) / 0.080);
    }

    private static String session(Programme loud, Programme series, Programme step) {
        StringBuilder text = new StringBuilder("""
                # Invented: made by a model, not measured.
                session: yard
                product: Skerry
                ear: crew-01-left
                setting: flood
                insertion: 1
                resolution: third-octave
                levels in: dB SPL
                stimuli:
                """);
        SERIES_DB.forEach(db -> text.append(
                String.format(Locale.ROOT, "  pink-%1$.0f: {kind: pink noise, level: %1$.0f dB SPL}%n", db)));
        text.append("  loud: {kind: steady noise, level: 90 dB SPL}\n");
        text.append("""
                uncertainty:
                  - {cause: reading, size: 0.15 dB, shared by: reading, across bands: independent}
                  - {cause: timing, size: 2 ms, shared by: reading}
                  - {cause: insertion, size: 0.1 dB, shared by: insertion}
                  - {cause: insertion in time, size: 0.5 ms, shared by: insertion}
                calibrator: {file: cal.wav, level: 94 dB SPL}
                recordings:
                """);
        String entry = "  - {file: %s, times from: sync mark, from: %.3f s, to: %.3f s, %s}%n";
        Programme.Part part = loud.parts().get(0);
        text.append(String.format(
                Locale.ROOT, entry, "open.wav", part.fromS(), part.toS(), "device: open ear, stimulus: loud"));
        text.append(String.format(Locale.ROOT, entry, "flood.wav", part.fromS(), part.toS(), "stimulus: loud"));
        for (int i = 0; i < SERIES_DB.size(); i++) {
            Programme.Part each = series.parts().get(i);
            String stimulus = "stimulus: pink-" + Math.round(SERIES_DB.get(i));
            text.append(String.format(
                    Locale.ROOT, entry, "open-series.wav", each.fromS(), each.toS(), "device: open ear, " + stimulus));
            text.append(String.format(Locale.ROOT, entry, "flood-series.wav", each.fromS(), each.toS(), stimulus));
        }
        Programme.Part up = step.parts().get(0);
        Programme.Part down = step.parts().get(1);
        String trace = "gives: trace, time constant: 2 ms, step: {at: 1 s, from: %d dB SPL, to: %d dB SPL}";
        text.append(String.format(
                Locale.ROOT, entry, "step.wav", up.fromS(), up.toS(), String.format(Locale.ROOT, trace, 55, 90)));
        text.append(String.format(
                Locale.ROOT, entry, "step.wav", down.fromS(), down.toS(), String.format(Locale.ROOT, trace, 90, 55)));
        return text.toString();
    }

    private static final String CLAIMS = """
            # Invented from end to end.
            product: Skerry
            maker: Brackwater Instruments
            about: Level-dependent earplug (invented)
            decision: {confidence: 95 %}
            samples: [{unit: BW-0001, obtained: "invented"}]
            disclosure: Invented.
            editions: [{id: box, source: Box, dated: 2026-05}]
            claims:
              - id: attenuation
                edition: box
                quote: "Invented."
                stated: {quantity: attenuation, setting: flood, stimulus: steady noise, level: 90 dB SPL, bands: 125 Hz to 8 kHz, statistic: every band, limit: at least 20 dB}
              - id: onset
                edition: box
                quote: "Invented."
                stated: {quantity: onset level, setting: flood, stimulus: pink noise, drop: 2 dB, bands: 125 Hz to 8 kHz, statistic: mean, limit: 79 dB SPL ± 2 dB}
              - {id: attack, edition: box, quote: "Invented.", stated: {quantity: attack time, setting: flood, limit: at most 30 ms, within: 3 dB}}
              - {id: release, edition: box, quote: "Invented.", stated: {quantity: release time, setting: flood, limit: at most 60 ms, within: 3 dB}}
            """;

    private ClaimAudit claim(String id) {
        return audits.get(0).products().get(0).claims().stream()
                .filter(claim -> claim.claim().id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private CellResult only(String id) {
        List<CellResult> cells = claim(id).plain().orElseThrow().cells();
        assertThat(cells).hasSize(1);
        return cells.get(0);
    }

    @Test
    void theAttenuationOfEveryBandIsFound() {
        List<Point> bands = only("attenuation").bands();
        assertThat(bands).hasSize(19);
        for (Point band : bands) {
            double hz = 1000 * Math.pow(10, Math.round(10 * Math.log10(band.hz().orElseThrow() / 1000)) / 10.0);
            double expandedDb = 2 * band.standardUncertainty().orElseThrow();
            assertThat(expandedDb).isLessThan(0.5);
            assertThat(band.value()).as(hz + " Hz").isCloseTo(attenuationDb(hz), offset(expandedDb));
        }
        assertThat(claim("attenuation").verdict()).isEqualTo(Verdict.PASS);
    }

    @Test
    void theOnsetIsFound() {
        CellResult cell = only("onset");
        double expandedDb = 2 * cell.standardUncertainty().orElseThrow();
        assertThat(expandedDb).isLessThan(1);
        assertThat(cell.value()).isCloseTo(79, offset(expandedDb));
        assertThat(claim("onset").verdict()).isEqualTo(Verdict.PASS);
    }

    /** In the unit of the limit. */
    @Test
    void attackAndReleaseAreFound() {
        CellResult attack = only("attack");
        CellResult release = only("release");
        assertThat(attack.value())
                .isCloseTo(
                        20 * Math.log(2.5),
                        offset(2 * attack.standardUncertainty().orElseThrow()));
        assertThat(release.value())
                .isCloseTo(
                        80 * Math.log(2.5),
                        offset(2 * release.standardUncertainty().orElseThrow()));
        assertThat(claim("attack").verdict()).isEqualTo(Verdict.PASS);
        assertThat(claim("release").verdict()).isEqualTo(Verdict.FAIL);
    }

    @Test
    void theRecordingsAreAmongTheInputs() throws IOException, InputException {
        assertThat(FolderContents.read(folder).sessions().get(0).dataFiles())
                .containsExactly(
                        "measurements/cal.wav",
                        "measurements/open.wav",
                        "measurements/flood.wav",
                        "measurements/open-series.wav",
                        "measurements/flood-series.wav",
                        "measurements/step.wav");
    }
}
