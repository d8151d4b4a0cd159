package org.ellwand.sound;

/**
 * A tone followed through a recording: its amplitude and phase in blocks of 100 ms, each the Fourier sum at one frequency
 * under Hann's window, which keeps other sounds two block widths (20 Hz) away out.
 */
final class ToneBlocks {
    static final double BLOCK_S = 0.1;
    /** In radians. */
    private static final double JUMP = 0.06;

    private static final int MOST_BLOCKS = 36_000;

    private final double frequencyHz;
    private final double rateHz;
    private final double[] window;
    private final double[] meanSquare = new double[MOST_BLOCKS];
    private final double[] total = new double[MOST_BLOCKS];
    private final double[] phase = new double[MOST_BLOCKS];
    private double cosine;
    private double sine;
    private double square;
    private double sum;
    private int inBlock;
    private int blocks;

    ToneBlocks(double frequencyHz, double rateHz) {
        this.frequencyHz = frequencyHz;
        this.rateHz = rateHz;
        this.window = Spectra.hann((int) Math.round(BLOCK_S * rateHz));
    }

    /** Takes more samples; what is longer than an hour is left out. */
    void feed(double[] samples, int count) {
        for (int i = 0; i < count && blocks < MOST_BLOCKS; i++) {
            double angle = 2 * Math.PI * frequencyHz * inBlock / rateHz;
            double x = samples[i] * window[inBlock];
            cosine += x * Math.cos(angle);
            sine -= x * Math.sin(angle);
            square += samples[i] * x;
            sum += x;
            if (++inBlock == window.length) {
                endBlock();
            }
        }
    }

    private void endBlock() {
        // The window sums to half its length; a tone of amplitude a gives a/2 of that, and has the mean square a²/2.
        double half = window.length / 2.0;
        meanSquare[blocks] = 2 * (cosine * cosine + sine * sine) / (half * half);
        total[blocks] = square / half - sum * sum / (half * half);
        phase[blocks] = Math.atan2(sine, cosine);
        blocks++;
        cosine = 0;
        sine = 0;
        square = 0;
        sum = 0;
        inBlock = 0;
    }

    /** Samples of a block. */
    int blockFrames() {
        return window.length;
    }

    int size() {
        return blocks;
    }

    /** Mean square of the tone in a block. */
    double meanSquare(int block) {
        return meanSquare[block];
    }

    double levelDb(int block) {
        return 10 * Math.log10(meanSquare[block]);
    }

    /** Mean square of everything in a block but its offset. */
    double total(int block) {
        return total[block];
    }

    /** Frequency from the phase's progress from one block to the next, in Hz; right within ±5 Hz of that looked for. */
    double frequencyHz(int from, int to) {
        double perBlock = 2 * Math.PI * frequencyHz * window.length / rateHz;
        double sum = 0;
        for (int i = from; i + 1 < to; i++) {
            sum += Math.IEEEremainder(phase[i + 1] - phase[i] - perBlock, 2 * Math.PI);
        }
        double meanS = sum / (to - from - 1) / (window.length / rateHz);
        return frequencyHz + meanS / (2 * Math.PI);
    }

    /**
     * How often the phase jumps between two blocks: by more than a tone of steady frequency lets it, as where samples were left
     * out or put in. One sample of 48 000 moves a tone of 1 kHz by 0.13.
     */
    int jumps(int from, int to) {
        int jumps = 0;
        for (int i = from + 1; i + 1 < to; i++) {
            double bend = Math.IEEEremainder(phase[i + 1] - 2 * phase[i] + phase[i - 1], 2 * Math.PI);
            if (Math.abs(bend) > JUMP) {
                jumps++;
                // The next bend is the same jump, seen from its other side; with the block that holds it that makes
                // three.
                i += 2;
            }
        }
        return jumps;
    }
}
