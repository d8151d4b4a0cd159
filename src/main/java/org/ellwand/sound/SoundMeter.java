package org.ellwand.sound;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Weighting;
import org.ellwand.input.InputException;

/**
 * Measures a sound block by block: band levels, weighted levels, and what is wrong with it as a recording.
 *
 * <p>For the bands, the first and last 10 ms are faded in and out, so that the cut does not sound in other bands; their
 * energy is divided by that of the fade. Afterwards the filters are given the time to ring out: what they still hold belongs
 * to the sound. So a steady sound has its level however short it is, and noise the scatter that its length must give it.
 */
public final class SoundMeter {
    static final int BLOCK = 1 << 15;
    private static final double FADE_S = 0.010;
    /** So many time constants before a part its trace is followed, where the recording has them: it had not begun there. */
    private static final double RUN_IN = 10;

    private static final double BAND_COST = 1;
    private static final double WEIGHTING_COST = 4;

    private final int rateHz;
    private final long frames;
    private final Ladder ladder;
    private final Ladder plain;
    private final List<BandMeter> bands;
    private final List<WeightedMeter> weightings;
    private final Lanes bandsOnly;
    private final Lanes all;
    private final SoundCheck check;
    private final double[] centred = new double[BLOCK];
    private final double[] unfaded = new double[BLOCK];
    private int unfadedCount;
    private final int fade;
    private double faded;
    private double offset;
    private long seen;

    /**
     * @param file of the sound
     * @param frames how long it is
     * @param listener is told the levels of {@code analysis.traced()}, from another thread, in order
     */
    SoundMeter(WavFile file, long frames, SoundAnalysis analysis, LevelListener listener) {
        this.rateHz = file.rateHz();
        this.frames = frames;
        this.fade = (int) Math.min(FADE_S * rateHz, frames / 10.0);
        this.check = new SoundCheck(file.format(), rateHz);
        this.bands = bands(analysis).stream()
                .map(band -> new BandMeter(band, rateHz))
                .toList();
        this.ladder = new Ladder(
                rateHz, bands.stream().mapToInt(BandMeter::step).max().orElse(0) + 1, BLOCK);
        this.plain = new Ladder(rateHz, 1, BLOCK);
        this.weightings = weightings(analysis, listener);
        List<Lanes.Piece> pieces = new ArrayList<>(bands.stream()
                .map(band -> new Lanes.Piece(Math.scalb(BAND_COST, -band.step()), () -> band.feed(ladder)))
                .toList());
        int lanes = Runtime.getRuntime().availableProcessors();
        this.bandsOnly = new Lanes(pieces, lanes);
        weightings.forEach(meter -> pieces.add(new Lanes.Piece(WEIGHTING_COST, () -> feed(meter))));
        this.all = new Lanes(pieces, lanes);
    }

    /**
     * Measures a part of a recording, in dB re full scale.
     *
     * @param part of a recording
     * @param analysis what is measured
     * @param listener is told the levels of {@code analysis.traced()}, in order, not always by the calling thread
     * @return the levels, and what the samples say of the recording
     * @throws InputException where the samples cannot be used
     * @throws IOException where the file cannot be read
     */
    public static SoundLevels measure(RecordedPart part, SoundAnalysis analysis, LevelListener listener)
            throws IOException, InputException {
        SoundMeter meter = new SoundMeter(part.file(), part.frames(), analysis, listener);
        long before = Math.min(part.firstFrame(), (long) (RUN_IN * analysis.timeConstantS() * meter.rateHz));
        if (before > 0) {
            RecordedPart runIn = new RecordedPart(part.file(), part.channel(), part.firstFrame() - before, before);
            SoundMeter ofRunIn = new SoundMeter(part.file(), before, analysis, LevelListener.NONE);
            ofRunIn.feed(runIn);
            meter.of(analysis.traced()).startFrom(ofRunIn.of(analysis.traced()));
        }
        meter.feed(part);
        return meter.finish();
    }

    private void feed(RecordedPart part) throws IOException, InputException {
        double[] block = new double[BLOCK];
        try (SampleReader reader = part.open()) {
            for (int count = reader.read(block); count > 0; count = reader.read(block)) {
                feed(block, count);
            }
        }
    }

    private WeightedMeter of(Weighting weighting) {
        return weightings.stream()
                .filter(meter -> meter.weighting() == weighting)
                .findFirst()
                .orElseThrow();
    }

    private List<WeightedMeter> weightings(SoundAnalysis analysis, LevelListener listener) {
        List<WeightedMeter> meters = new ArrayList<>();
        for (Weighting weighting : Weighting.values()) {
            meters.add(new WeightedMeter(
                    weighting,
                    weighting == Weighting.Z ? rateHz : plain.rateHz(0),
                    weighting == Weighting.Z ? 0 : plain.lateness(),
                    analysis.timeConstantS(),
                    analysis.everyS(),
                    2 * BLOCK + 2,
                    weighting == analysis.traced() ? listener : LevelListener.NONE));
        }
        return meters;
    }

    /** What is not weighted needs no doubled rate, and keeps all there is below half the rate. */
    private void feed(WeightedMeter meter) {
        if (meter.weighting() == Weighting.Z) {
            meter.feed(unfaded, unfadedCount);
        } else {
            meter.feed(plain.samples(0), plain.count(0));
        }
    }

    /** The bands that the sampling rate lets be measured, lowest first. */
    private List<Band> bands(SoundAnalysis analysis) {
        List<Band> all = new ArrayList<>();
        Band band = Band.nearest(analysis.resolution(), analysis.lowestHz());
        if (band.exactHz() < analysis.lowestHz()) {
            band = new Band(band.resolution(), band.index() + 1);
        }
        while (band.exactHz() <= analysis.highestHz() && band.upperEdgeHz() <= Ladder.highestHz(rateHz)) {
            all.add(band);
            band = new Band(band.resolution(), band.index() + 1);
        }
        return all;
    }

    /** Takes the next samples. */
    void feed(double[] samples, int count) {
        if (count > BLOCK) {
            throw new IllegalArgumentException(count + " samples at once; at most " + BLOCK);
        }
        if (seen == 0) {
            offset = mean(samples, count);
        }
        check.feed(samples, count);
        for (int i = 0; i < count; i++) {
            centred[i] = samples[i] - offset;
        }
        System.arraycopy(centred, 0, unfaded, 0, count);
        unfadedCount = count;
        plain.feed(centred, count);
        fade(count);
        ladder.feed(centred, count);
        seen += count;
        all.run();
    }

    private static double mean(double[] samples, int count) {
        double sum = 0;
        for (int i = 0; i < count; i++) {
            sum += samples[i];
        }
        return count == 0 ? 0 : sum / count;
    }

    private void fade(int count) {
        if (seen >= fade && seen + count < frames - fade) {
            faded += count;
            return;
        }
        for (int i = 0; i < count; i++) {
            long fromEnd = Math.min(seen + i, frames - 1 - seen - i);
            double weight = fromEnd >= fade ? 1 : Math.pow(Math.sin(Math.PI / 2 * (fromEnd + 0.5) / fade), 2);
            centred[i] *= weight;
            faded += weight * weight;
        }
    }

    /** What was measured, once everything was fed. */
    SoundLevels finish() {
        double ringsS = bands.stream().mapToDouble(BandMeter::ringsS).max().orElse(0);
        double[] silence = new double[BLOCK];
        plain.feed(silence, plain.lateness());
        unfadedCount = 0;
        weightings.forEach(this::feed);
        for (long left = (long) (ringsS * rateHz); left > 0; left -= BLOCK) {
            ladder.feed(silence, BLOCK);
            bandsOnly.run();
        }
        List<Double> levelsDb = bands.stream()
                .map(band -> 10 * Math.log10(band.energy() * rateHz / faded))
                .toList();
        return new SoundLevels(
                (double) seen / rateHz,
                bands.stream().map(BandMeter::band).toList(),
                levelsDb,
                weightings.stream().map(WeightedMeter::levels).toList(),
                check.result());
    }
}
