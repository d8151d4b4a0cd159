package org.ellwand.sound;

/**
 * Doubles a sampling rate, so that filters near half of it keep their shape. What lies below 0.4664 of the old rate (22.4 kHz
 * of 48 kHz) passes within 0.001 dB, its images above are 80 dB lower; sample 2i of the new rate is sample i of the old one.
 */
final class Doubler {
    private static final double[] SIDE = HalfBand.side(0.0336, 80);
    /** Samples that have to come after one before it goes out. */
    static final int REACH = SIDE.length;

    private final double[] work;
    private int filled = REACH - 1;

    /** @param mostSamples longest block that is fed */
    Doubler(int mostSamples) {
        work = new double[mostSamples + 2 * REACH + 2];
    }

    /** Takes the first {@code count} samples, writes those of twice the rate and says how many they are. */
    int twice(double[] input, int count, double[] output) {
        System.arraycopy(input, 0, work, filled, count);
        filled += count;
        int done = 0;
        int at = REACH - 1;
        for (; at + REACH < filled; at++) {
            double even = 0;
            double odd = 0;
            for (int k = 0; k + 1 < REACH; k += 2) {
                even += SIDE[k] * (work[at - k] + work[at + 1 + k]);
                odd += SIDE[k + 1] * (work[at - k - 1] + work[at + 2 + k]);
            }
            if ((REACH & 1) == 1) {
                int k = REACH - 1;
                even += SIDE[k] * (work[at - k] + work[at + 1 + k]);
            }
            output[done++] = work[at];
            output[done++] = 2 * (even + odd);
        }
        int first = at - REACH + 1;
        filled -= first;
        System.arraycopy(work, first, work, 0, filled);
        return done;
    }
}
