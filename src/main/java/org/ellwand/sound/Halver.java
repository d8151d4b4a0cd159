package org.ellwand.sound;

/**
 * Halves a sampling rate. What lies below 0.26 of the new rate passes within 0.001 dB, what would fold down upon it is
 * 90 dB lower; sample i of the new rate is that at 2i of the old one, without delay.
 */
final class Halver {
    private static final double[] SIDE = HalfBand.side(0.24, 90);
    private static final int REACH = 2 * SIDE.length - 1;

    private final double[] work;
    private int filled = REACH;

    /** @param mostSamples longest block that is fed */
    Halver(int mostSamples) {
        work = new double[mostSamples + 2 * REACH + 2];
    }

    /** Takes the first {@code count} samples, writes those of half the rate and says how many they are. */
    int halve(double[] input, int count, double[] output) {
        System.arraycopy(input, 0, work, filled, count);
        filled += count;
        int done = 0;
        int middle = REACH;
        for (; middle + REACH < filled; middle += 2) {
            double sum = 0.5 * work[middle];
            for (int k = 0; k < SIDE.length; k++) {
                sum += SIDE[k] * (work[middle - 2 * k - 1] + work[middle + 2 * k + 1]);
            }
            output[done++] = sum;
        }
        int first = middle - REACH;
        filled -= first;
        System.arraycopy(work, first, work, 0, filled);
        return done;
    }
}
