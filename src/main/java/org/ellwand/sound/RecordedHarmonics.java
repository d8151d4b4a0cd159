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
 * @param faults of the part's samples
 */
public record RecordedHarmonics(double frequencyHz, List<Double> levelDb, SampleFaults faults) {
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
        return new RecordedHarmonics(hz, List.copyOf(levels), check.result());
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
