package org.ellwand.sound;

import java.util.List;

/**
 * A sound at its own sampling rate, or twice that below 88 kHz, and at halves of it, block by block. Step 0 is the top.
 * Every step runs late by a few samples; silence fed behind the sound brings the rest out.
 */
final class Ladder {
    /** A filter up to this share of the sampling rate keeps the shape of its analog model. */
    static final double HIGHEST_SHARE = 0.26;

    private static final double DOUBLED_BELOW_HZ = 88_000;
    /** What the doubling passes, as a share of the rate before it. */
    private static final double DOUBLED_SHARE = 0.4665;

    private final double topRateHz;
    private final List<Doubler> doubler;
    private final Halver[] halvers;
    private final double[][] samples;
    private final int[] counts;

    /**
     * @param rateHz of the sound
     * @param steps from 1 on
     * @param mostSamples longest block that is fed
     */
    Ladder(double rateHz, int steps, int mostSamples) {
        boolean doubled = rateHz < DOUBLED_BELOW_HZ;
        this.topRateHz = topRateHz(rateHz);
        this.doubler = doubled ? List.of(new Doubler(mostSamples)) : List.of();
        this.halvers = new Halver[steps - 1];
        this.samples = new double[steps][];
        this.counts = new int[steps];
        // A late sample more may come out of any step.
        int length = (doubled ? 2 * mostSamples : mostSamples) + 2;
        for (int step = 0; step < steps; step++) {
            samples[step] = new double[length];
            if (step < halvers.length) {
                halvers[step] = new Halver(length);
            }
            length = length / 2 + 2;
        }
    }

    static double topRateHz(double rateHz) {
        return rateHz < DOUBLED_BELOW_HZ ? 2 * rateHz : rateHz;
    }

    /** Highest frequency of which bands are measured at a sampling rate, in Hz. */
    static double highestHz(double rateHz) {
        return rateHz * (rateHz < DOUBLED_BELOW_HZ ? DOUBLED_SHARE : HIGHEST_SHARE);
    }

    /** The lowest step at which a frequency below {@link #highestHz} is well below half the rate. */
    static int stepFor(double frequencyHz, double rateHz) {
        int step = 0;
        double stepRateHz = topRateHz(rateHz) / 2;
        while (frequencyHz <= HIGHEST_SHARE * stepRateHz) {
            stepRateHz /= 2;
            step++;
        }
        return step;
    }

    /** How many samples of silence bring the last of the sound out at step 0. */
    int lateness() {
        return doubler.isEmpty() ? 0 : Doubler.REACH;
    }

    double rateHz(int step) {
        return Math.scalb(topRateHz, -step);
    }

    void feed(double[] input, int count) {
        if (doubler.isEmpty()) {
            System.arraycopy(input, 0, samples[0], 0, count);
            counts[0] = count;
        } else {
            counts[0] = doubler.get(0).twice(input, count, samples[0]);
        }
        for (int step = 0; step < halvers.length; step++) {
            counts[step + 1] = halvers[step].halve(samples[step], counts[step], samples[step + 1]);
        }
    }

    /** How many samples the last block made at a step. */
    int count(int step) {
        return counts[step];
    }

    double[] samples(int step) {
        return samples[step];
    }
}
