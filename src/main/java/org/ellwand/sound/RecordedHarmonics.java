package org.ellwand.sound;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.ellwand.input.InputException;

/**
 * A recorded tone and its harmonics: Fourier sums over the whole part under Hann's window, at whole multiples of the
 * frequency that the tone turns out to have. The longer the part, the less noise each of them holds: 1.5 divided by the
 * time, in Hz.
 *
 * @param frequencyHz as measured
 * @param levelDb by order, from 1 on
 * @param spreadDb of the tone's levels in up to {@link #STRETCHES} equal stretches of the part, the highest less the lowest
 * @param strongestHz the strongest tone of the loudest second
 * @param strongerDb by how much that is stronger than the tone; 0 where it is the tone
 * @param faults of the part's samples
 */
public record RecordedHarmonics(
        double frequencyHz,
        List<Double> levelDb,
        double spreadDb,
        double strongestHz,
        double strongerDb,
        SampleFaults faults) {
    /** Into so many stretches a part is parted, to see whether its tone lasts. */
    public static final int STRETCHES = 8;

    private static final int MOST_ORDERS = 10;
    /** Highest harmonic as a share of the sampling rate. */
    private static final double HIGHEST_SHARE = 0.45;

    static RecordedHarmonics of(RecordedPart part, double fundamentalHz) throws IOException, InputException {
        double rateHz = part.file().rateHz();
        ToneBlocks tone = new ToneBlocks(fundamentalHz, rateHz);
        SoundCheck check = new SoundCheck(part.file().format(), rateHz);
        double[] block = new double[SoundMeter.BLOCK];
        try (SampleReader reader = part.open()) {
            for (int count = reader.read(block); count > 0; count = reader.read(block)) {
                check.feed(block, count);
                tone.feed(block, count);
            }
        }
        double hz = tone.size() < 3 ? fundamentalHz : tone.frequencyHz(0, tone.size());
        int orders = (int) Math.min(MOST_ORDERS, HIGHEST_SHARE * rateHz / hz);
        List<Double> levels = new ArrayList<>();
        for (int order = 1; order <= orders; order++) {
            levels.add(levelDb(part, order * hz));
        }
        LoudestTone.Beside loudest = LoudestTone.beside(part, hz);
        return new RecordedHarmonics(
                hz, List.copyOf(levels), spreadDb(tone), loudest.frequencyHz(), loudest.aboveDb(), check.result());
    }

    private static double spreadDb(ToneBlocks tone) {
        int stretches = Math.min(STRETCHES, tone.size());
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        for (int s = 0; s < stretches; s++) {
            int from = s * tone.size() / stretches;
            int to = (s + 1) * tone.size() / stretches;
            double sum = 0;
            for (int block = from; block < to; block++) {
                sum += tone.meanSquare(block);
            }
            least = Math.min(least, sum / (to - from));
            most = Math.max(most, sum / (to - from));
        }
        return most > 0 ? 10 * Math.log10(most / Math.max(least, Double.MIN_NORMAL)) : 0;
    }

    /** Level of the tone at one frequency. */
    private static double levelDb(RecordedPart part, double frequencyHz) throws IOException, InputException {
        double turn = 2 * Math.PI * frequencyHz / part.file().rateHz();
        double frames = part.frames();
        double real = 0;
        double imaginary = 0;
        long at = 0;
        double[] block = new double[SoundMeter.BLOCK];
        try (SampleReader reader = part.open()) {
            for (int count = reader.read(block); count > 0; count = reader.read(block)) {
                for (int i = 0; i < count; i++, at++) {
                    double edge = Math.sin(Math.PI * (at + 0.5) / frames);
                    double x = block[i] * edge * edge;
                    real += x * Math.cos(turn * at);
                    imaginary -= x * Math.sin(turn * at);
                }
            }
        }
        double half = frames / 2;
        return 10 * Math.log10(2 * (real * real + imaginary * imaginary) / (half * half));
    }
}
