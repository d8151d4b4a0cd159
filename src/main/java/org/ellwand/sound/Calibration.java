package org.ellwand.sound;

import java.io.IOException;
import java.util.Arrays;
import org.ellwand.input.InputException;
import org.ellwand.input.Place;

/**
 * What a recorded calibration tone says: the sound pressure level of full scale, and how far to trust it.
 *
 * <p>The tone is looked for in the spectrum of the recording's loudest second, then followed in blocks of 100 ms. Its steady part is
 * the longest stretch of blocks within 1 dB of the level that nine tenths of the blocks do not exceed, without the block
 * at either end. A calibrator of class 1 keeps its level within 0.1 dB and its frequency within 1 % (IEC 60942, from memory).
 *
 * @param fullScaleDb level in dB re 20 µPa of a mean square of 1
 * @param frequencyHz as measured
 * @param spreadDb highest less lowest level of the steady part's blocks
 * @param steadyS how long the steady part lasts
 * @param restDb level of everything else re the tone
 * @param jumps how often the phase of the tone jumps: samples were left out or put in
 * @param faults of the steady part's samples
 */
public record Calibration(
        double fullScaleDb,
        double frequencyHz,
        double spreadDb,
        double steadyS,
        double restDb,
        int jumps,
        SampleFaults faults) {
    /** More than this between the blocks of the steady part is not steady, in dB. */
    public static final double STEADY_DB = 0.2;

    /** A tone further than this share from its frequency is not at it. */
    public static final double FREQUENCY_SHARE = 0.01;

    /** Everything else should lie this far below the tone, in dB. */
    public static final double CLEAN_DB = -20;

    private static final double ALIKE_DB = 1;
    private static final int LEAST_BLOCKS = 10;

    /**
     * Measures a calibration tone.
     *
     * @param file the recording of the calibrator
     * @param channel from 1 on
     * @param levelDb of the tone, re 20 µPa
     * @return the level of full scale, and how far to trust it
     * @throws InputException where there is no steady tone of a second
     * @throws IOException where the file cannot be read
     */
    public static Calibration of(WavFile file, int channel, double levelDb) throws IOException, InputException {
        double nearHz = LoudestTone.of(file, channel);
        ToneBlocks tone = new ToneBlocks(nearHz, file.rateHz());
        double[] block = new double[SoundMeter.BLOCK];
        try (SampleReader reader = file.open(channel)) {
            for (int count = reader.read(block); count > 0; count = reader.read(block)) {
                tone.feed(block, count);
            }
        }
        int[] steady = steady(tone);
        if (steady[1] - steady[0] < LEAST_BLOCKS) {
            throw new InputException(
                    Place.ofFile(file.name()),
                    "holds no tone that stays within 1 dB for a second; record the calibrator for some seconds");
        }
        long first = (long) steady[0] * tone.blockFrames();
        long count = (long) (steady[1] - steady[0]) * tone.blockFrames();
        return of(tone, steady[0], steady[1], levelDb, faults(new RecordedPart(file, channel, first, count)));
    }

    /** Of the steady part alone: before and after it there may be anything. */
    private static SampleFaults faults(RecordedPart steady) throws IOException, InputException {
        SoundCheck check = new SoundCheck(steady.file().format(), steady.file().rateHz());
        double[] block = new double[SoundMeter.BLOCK];
        try (SampleReader reader = steady.open()) {
            for (int count = reader.read(block); count > 0; count = reader.read(block)) {
                check.feed(block, count);
            }
        }
        return check.result();
    }

    private static Calibration of(ToneBlocks tone, int from, int to, double levelDb, SampleFaults faults) {
        double sum = 0;
        double all = 0;
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (int i = from; i < to; i++) {
            sum += tone.meanSquare(i);
            all += tone.total(i);
            least = Math.min(least, tone.levelDb(i));
            most = Math.max(most, tone.levelDb(i));
        }
        double meanSquare = sum / (to - from);
        return new Calibration(
                levelDb - 10 * Math.log10(meanSquare),
                tone.frequencyHz(from, to),
                most - least,
                (to - from) * ToneBlocks.BLOCK_S,
                10 * Math.log10(Math.max(1e-12, all / sum - 1)),
                tone.jumps(from, to),
                faults);
    }

    /** First block of the steady part, and the first behind it. */
    private static int[] steady(ToneBlocks tone) {
        double[] levels = new double[tone.size()];
        for (int i = 0; i < levels.length; i++) {
            levels[i] = tone.levelDb(i);
        }
        double[] sorted = levels.clone();
        Arrays.sort(sorted);
        double high = sorted.length == 0 ? 0 : sorted[(int) (0.9 * (sorted.length - 1))];
        int best = 0;
        int bestLength = 0;
        int length = 0;
        for (int i = 0; i < levels.length; i++) {
            length = Math.abs(levels[i] - high) <= ALIKE_DB ? length + 1 : 0;
            if (length > bestLength) {
                bestLength = length;
                best = i + 1 - length;
            }
        }
        return bestLength < 3 ? new int[] {0, 0} : new int[] {best + 1, best + bestLength - 1};
    }
}
