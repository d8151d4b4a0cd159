package org.ellwand.sound;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Resolution;
import org.ellwand.acoustics.Weighting;
import org.ellwand.input.InputException;

/** Measures parts of recordings, or remembers what was measured. Levels are in dB re full scale. */
public final class RecordedSounds {
    private final ResultCache cache;

    /**
     * Measures with a memory.
     *
     * @param cache what remembers
     */
    public RecordedSounds(ResultCache cache) {
        this.cache = cache;
    }

    /**
     * A level-time trace.
     *
     * @param timeS in s of the part
     * @param levelDb at each time
     * @param faults of the part's samples
     */
    public record RecordedTrace(List<Double> timeS, List<Double> levelDb, SampleFaults faults) {}

    /**
     * {@return band levels and weighted levels}
     *
     * @param part of a recording
     * @param analysis what is measured
     * @throws IOException where the file cannot be read
     * @throws InputException where the samples cannot be used
     */
    public SoundLevels levels(RecordedPart part, SoundAnalysis analysis) throws IOException, InputException {
        SortedMap<String, double[]> numbers = cache.get(
                part.file(),
                asked("levels", part) + analysis,
                () -> numbers(SoundMeter.measure(part, analysis, LevelListener.NONE)));
        return levels(numbers, analysis.resolution());
    }

    /**
     * {@return a time-weighted level against time}
     *
     * @param part of a recording
     * @param weighting frequency weighting
     * @param timeConstantS of the time weighting, in s
     * @param everyS distance of the times, in s
     * @throws IOException where the file cannot be read
     * @throws InputException where the samples cannot be used
     */
    public RecordedTrace trace(RecordedPart part, Weighting weighting, double timeConstantS, double everyS)
            throws IOException, InputException {
        // One band, for there has to be one; the trace is what is wanted.
        SoundAnalysis analysis = new SoundAnalysis(Resolution.OCTAVE, 900, 1100, timeConstantS, everyS, weighting);
        SortedMap<String, double[]> numbers =
                cache.get(part.file(), asked("trace that goes on", part) + analysis, () -> traced(part, analysis));
        return new RecordedTrace(list(numbers, "time"), list(numbers, "level"), faults(row(numbers, "faults")));
    }

    private static SortedMap<String, double[]> traced(RecordedPart part, SoundAnalysis analysis)
            throws IOException, InputException {
        int most = (int) Math.min(1 << 26, part.durationS() / analysis.everyS() + 2);
        double[][] rows = new double[2][most];
        int[] count = {0};
        SoundLevels levels = SoundMeter.measure(part, analysis, (timeS, levelDb) -> {
            if (count[0] < most && Double.isFinite(levelDb)) {
                rows[0][count[0]] = timeS;
                rows[1][count[0]++] = levelDb;
            }
        });
        SortedMap<String, double[]> numbers = new TreeMap<>();
        numbers.put("time", Arrays.copyOf(rows[0], count[0]));
        numbers.put("level", Arrays.copyOf(rows[1], count[0]));
        numbers.put("faults", row(levels.check()));
        return numbers;
    }

    /**
     * {@return what a recorded calibrator says of full scale}
     *
     * @param whole channel of the calibrator's recording
     * @param levelDb of the calibrator, in dB re 20 µPa
     * @throws IOException where the file cannot be read
     * @throws InputException where there is no steady tone of a second
     */
    public Calibration calibration(RecordedPart whole, double levelDb) throws IOException, InputException {
        double[] row = row(
                cache.get(whole.file(), asked("calibration", whole), () -> {
                    Calibration c = Calibration.of(whole.file(), whole.channel(), 0);
                    SortedMap<String, double[]> numbers = new TreeMap<>();
                    double[] own = {c.fullScaleDb(), c.frequencyHz(), c.spreadDb(), c.steadyS(), c.restDb(), c.jumps()};
                    numbers.put("calibration", concat(own, row(c.faults())));
                    return numbers;
                }),
                "calibration");
        SampleFaults faults = faults(Arrays.copyOfRange(row, 6, row.length));
        return new Calibration(row[0] + levelDb, row[1], row[2], row[3], row[4], (int) row[5], faults);
    }

    /**
     * {@return when the sync mark begins, in s of the file; empty where it is not heard}
     *
     * @param whole channel of a recording
     * @throws IOException where the file cannot be read
     * @throws InputException where the samples cannot be used
     */
    public Optional<Double> markS(RecordedPart whole) throws IOException, InputException {
        double[] row = row(
                cache.get(whole.file(), asked("mark", whole), () -> {
                    SortedMap<String, double[]> numbers = new TreeMap<>();
                    Optional<Long> found = SyncMark.find(whole.file(), whole.channel());
                    numbers.put(
                            "mark",
                            found.map(frame -> new double[] {
                                        (double) frame / whole.file().rateHz()
                                    })
                                    .orElse(new double[] {Double.NaN}));
                    return numbers;
                }),
                "mark");
        return row.length == 1 && Double.isFinite(row[0]) ? Optional.of(row[0]) : Optional.empty();
    }

    /**
     * {@return what became of a sound: delay, gain and coherence}
     *
     * @param reference the sound as it was
     * @param response the same stretch of it, behind what is measured
     * @throws IOException where a file cannot be read
     * @throws InputException where the two have different rates, are too short, or their samples cannot be used
     */
    public Transfer transfer(RecordedPart reference, RecordedPart response) throws IOException, InputException {
        String asked = asked("transfer", response)
                + asked("of", reference)
                + cache.content(reference.file().path());
        SortedMap<String, double[]> numbers = cache.get(response.file(), asked, () -> {
            Transfer transfer = Transfer.of(reference, response);
            SortedMap<String, double[]> rows = new TreeMap<>();
            rows.put("delay", new double[] {transfer.delayS()});
            rows.put("drift", new double[] {transfer.drift()});
            rows.put("bands", transfer.bands().stream().mapToDouble(Band::index).toArray());
            rows.put("gain", transfer.gainDb().stream().mapToDouble(d -> d).toArray());
            rows.put(
                    "coherence",
                    transfer.coherence().stream().mapToDouble(d -> d).toArray());
            return rows;
        });
        return new Transfer(
                row(numbers, "delay")[0],
                row(numbers, "drift")[0],
                bands(numbers, Resolution.THIRD_OCTAVE),
                list(numbers, "gain"),
                list(numbers, "coherence"));
    }

    private static List<Band> bands(SortedMap<String, double[]> numbers, Resolution resolution) {
        return Arrays.stream(row(numbers, "bands"))
                .mapToObj(index -> new Band(resolution, (int) index))
                .toList();
    }

    private static String asked(String what, RecordedPart part) {
        return what + " " + part.channel() + " " + part.firstFrame() + " " + part.frames() + " ";
    }

    private static SortedMap<String, double[]> numbers(SoundLevels levels) {
        SortedMap<String, double[]> numbers = new TreeMap<>();
        numbers.put("duration", new double[] {levels.durationS()});
        numbers.put("bands", levels.bands().stream().mapToDouble(Band::index).toArray());
        numbers.put("levels", levels.levelDb().stream().mapToDouble(d -> d).toArray());
        levels.weighted()
                .forEach(w -> numbers.put(w.weighting().name(), new double[] {
                    w.equivalentDb(),
                    w.maximumDb(),
                    w.peakDb(),
                    w.exceeded5Db(),
                    w.exceeded10Db(),
                    w.exceeded50Db(),
                    w.exceeded90Db(),
                    w.exceeded95Db()
                }));
        numbers.put("faults", row(levels.check()));
        return numbers;
    }

    private static SoundLevels levels(SortedMap<String, double[]> numbers, Resolution resolution) {
        return new SoundLevels(
                row(numbers, "duration")[0],
                bands(numbers, resolution),
                list(numbers, "levels"),
                Arrays.stream(Weighting.values())
                        .map(weighting -> weighted(weighting, row(numbers, weighting.name())))
                        .toList(),
                faults(row(numbers, "faults")));
    }

    private static WeightedLevels weighted(Weighting weighting, double[] w) {
        return new WeightedLevels(weighting, w[0], w[1], w[2], w[3], w[4], w[5], w[6], w[7]);
    }

    private static double[] row(SampleFaults f) {
        return new double[] {
            f.clipped(),
            f.clippedS(),
            f.clippedAt(),
            f.dropped(),
            f.droppedS(),
            f.longestDropS(),
            f.offset(),
            f.peak(),
            f.meanSquare()
        };
    }

    private static SampleFaults faults(double[] f) {
        return new SampleFaults((int) f[0], f[1], f[2], (int) f[3], f[4], f[5], f[6], f[7], f[8]);
    }

    private static double[] row(SortedMap<String, double[]> numbers, String name) {
        return numbers.getOrDefault(name, new double[0]);
    }

    private static List<Double> list(SortedMap<String, double[]> numbers, String name) {
        return Arrays.stream(row(numbers, name)).boxed().toList();
    }

    private static double[] concat(double[] first, double[] second) {
        return IntStream.range(0, first.length + second.length)
                .mapToDouble(i -> i < first.length ? first[i] : second[i - first.length])
                .toArray();
    }

    /**
     * {@return the levels of a tone and its harmonics, first the tone itself}
     *
     * @param part of a recording, with the tone in it
     * @param fundamentalHz frequency of the tone as it was played, in Hz
     * @throws IOException where the file cannot be read
     * @throws InputException where the samples cannot be used
     */
    public RecordedHarmonics harmonics(RecordedPart part, double fundamentalHz) throws IOException, InputException {
        SortedMap<String, double[]> numbers =
                cache.get(part.file(), asked("harmonics of a tone", part) + fundamentalHz, () -> {
                    RecordedHarmonics found = RecordedHarmonics.of(part, fundamentalHz);
                    SortedMap<String, double[]> rows = new TreeMap<>();
                    rows.put(
                            "levels",
                            found.levelDb().stream().mapToDouble(d -> d).toArray());
                    rows.put("tone", new double[] {
                        found.frequencyHz(), found.spreadDb(), found.strongestHz(), found.strongerDb()
                    });
                    rows.put("faults", row(found.faults()));
                    return rows;
                });
        double[] tone = row(numbers, "tone");
        return new RecordedHarmonics(
                tone[0], list(numbers, "levels"), tone[1], tone[2], tone[3], faults(row(numbers, "faults")));
    }
}
